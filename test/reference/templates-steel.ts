import type { ExpectedTemplate } from './templates-expected';

const MM = {
  figures: [
    ['Break point, centre', '647.8', '325.3'],
    ['Break point, treble E', '646.6', '324.1'],
    ['Break point, bass E', '649.0', '326.5'],
    ['Slot centre', '647.8', '325.3'],
    ['Slot front, centre', '646.2', '323.7'],
    ['Bridge front, centre', '638.8', '316.3'],
    ['Pin row, centre', '658.9', '336.4'],
    ['Octave line', '645.0', '322.5'],
  ],
  squareLine: ['620.0 mm', 'from the nut', '297.5 mm', 'from the 12th fret'],
};

const IN = {
  figures: [
    ['Break point, centre', '25 1/2', '12 13/16'],
    ['Break point, treble E', '25 29/64', '12 49/64'],
    ['Break point, bass E', '25 35/64', '12 55/64'],
    ['Slot centre', '25 1/2', '12 13/16'],
    ['Slot front, centre', '25 7/16', '12 3/4'],
    ['Bridge front, centre', '25 5/32', '12 29/64'],
    ['Pin row, centre', '25 15/16', '13 1/4'],
    ['Octave line', '25 25/64', '12 45/64'],
  ],
  squareLine: ['24 1/2″', 'from the nut', '11 51/64″', 'from the 12th fret'],
};

/**
 * Six-string steel, scale 645, right hand. From the nut, along the centreline, and to each side of it:
 *
 * break point   645 + (1.5875 + 3.96875) / 2 = 647.778125 (1/16 in and 5/32 in at strings 54 apart)
 * slant         m = (1.5875 − 3.96875) / 54 = −0.0440972; s = √(1 + m²) = 1.00097181; cos = 1 / s, sin = m / s
 * slot          width 3.2, broken over in the middle: front wall 647.778125 − 1.6 s = 646.176570, back wall 649.379680;
 *               its rounded ends begin 76/2 − 1.6 = 36.4 along: x = ±36.4 cos ± 1.6 sin, y = 647.778125 ± 36.4 sin ± 1.6 cos
 * locating pins at the centres of the rounded ends: x = ±36.4 cos, y = 647.778125 ± 36.4 sin
 * pins          row at 649.379680 + 9.5 = 658.879680, every 55.5 / 5 = 11.1 along the slant: 27.75, 16.65, 5.55 …
 * bridge front  646.176570 − 7.4 = 638.776570; its straight ends 152.4/2 − 2 = 74.2 to the side
 * belly         a reverse curve over a run of 52 and a depth of 34.925 − 25.4 = 9.525: the radii add up to
 *               (52² + 9.525²) / (2 · 9.525) = 146.704757, and the inflection divides the chord as the radii, 40 from the
 *               wing: x = 52 (1 − 40/146.704757) = 37.821864, y = 25.4 + 9.525 · 40/146.704757 = 27.997053 from the front
 * deepest       638.776570 + 34.925
 * octave line   645, from the end of the slot, 38 cos + 3 = 40.963107, to 6 inside the wing tip, 76.2 − 6 = 70.2
 * square line   638.8 − 15 = 623.8: 620, or 24 1/2 in = 622.3; 86 to each side
 *
 * Middle of the room: A4 (20 + 200) / 2 = 110, Letter (20 + 205.9) / 2 = 112.95. Foot of the room: 297 − 30 = 267,
 * 279.4 − 30 = 249.4. Inches for the figures: the same lengths / 25.4, to the nearest 1/64. 12th fret: 645 / 2 = 322.5.
 */
export const STEEL_TEMPLATES: readonly ExpectedTemplate[] = [
  {
    instrument: 'steel',
    paper: 'a4',
    ...MM,
    unit: 'mm',
    width: 210,
    height: 297,
    pages: [
      {
        points: [
          ['square, top left', 20, 167],
          ['square, top right', 120, 167],
          ['square, foot right', 120, 267],
          ['square, foot left', 20, 267],
          ['slot, front wall, treble end', 146.294173, 61.576098],
          ['slot, back wall, treble end', 146.435148, 64.772991],
          ['slot, back wall, bass end', 73.705827, 67.980152],
          ['slot, front wall, bass end', 73.564852, 64.783259],
          ['front edge end, treble', 184.2, 55.77657],
          ['front edge end, bass', 35.8, 55.77657],
          ['belly inflection, treble', 147.821864, 83.773623],
          ['belly inflection, bass', 72.178136, 83.773623],
          ['belly, deepest point', 110, 90.70157],
          ['octave line, treble, inner end', 150.963107, 62],
          ['octave line, treble, outer end', 180.2, 62],
          ['octave line, bass, inner end', 69.036893, 62],
          ['octave line, bass, outer end', 39.8, 62],
          ['square line, left end', 24, 37],
          ['square line, right end', 196, 37],
          ['long line across, left end', 20, 277.4],
          ['long line across, right end', 200, 277.4],
          ['long line along, upper end', 14.6, 10],
          ['long line along, lower end', 14.6, 250],
        ],
        holes: [
          ['pin 1', 137.723058, 74.65717, 2.4],
          ['pin 2', 126.633835, 75.146174, 2.4],
          ['pin 3', 115.544612, 75.635178, 2.4],
          ['pin 4', 104.455388, 76.124182, 2.4],
          ['pin 5', 93.366165, 76.613186, 2.4],
          ['pin 6', 82.276942, 77.10219, 2.4],
          ['locating pin, treble', 146.36466, 63.174544, 0.8],
          ['locating pin, bass', 73.63534, 66.381706, 0.8],
        ],
      },
    ],
  },
  {
    instrument: 'steel',
    paper: 'letter',
    ...MM,
    unit: 'mm',
    width: 215.9,
    height: 279.4,
    pages: [
      {
        points: [
          ['square, top left', 20, 149.4],
          ['square, top right', 120, 149.4],
          ['square, foot right', 120, 249.4],
          ['square, foot left', 20, 249.4],
          ['slot, front wall, treble end', 149.244173, 61.576098],
          ['slot, back wall, treble end', 149.385148, 64.772991],
          ['slot, back wall, bass end', 76.655827, 67.980152],
          ['slot, front wall, bass end', 76.514852, 64.783259],
          ['front edge end, treble', 187.15, 55.77657],
          ['front edge end, bass', 38.75, 55.77657],
          ['belly inflection, treble', 150.771864, 83.773623],
          ['belly inflection, bass', 75.128136, 83.773623],
          ['belly, deepest point', 112.95, 90.70157],
          ['octave line, treble, inner end', 153.913107, 62],
          ['octave line, treble, outer end', 183.15, 62],
          ['octave line, bass, inner end', 71.986893, 62],
          ['octave line, bass, outer end', 42.75, 62],
          ['square line, left end', 26.95, 37],
          ['square line, right end', 198.95, 37],
          ['long line across, left end', 20, 259.8],
          ['long line across, right end', 200, 259.8],
          ['long line along, upper end', 14.6, 10],
          ['long line along, lower end', 14.6, 230],
        ],
        holes: [
          ['pin 1', 140.673058, 74.65717, 2.4],
          ['pin 2', 129.583835, 75.146174, 2.4],
          ['pin 3', 118.494612, 75.635178, 2.4],
          ['pin 4', 107.405388, 76.124182, 2.4],
          ['pin 5', 96.316165, 76.613186, 2.4],
          ['pin 6', 85.226942, 77.10219, 2.4],
          ['locating pin, treble', 149.31466, 63.174544, 0.8],
          ['locating pin, bass', 76.58534, 66.381706, 0.8],
        ],
      },
    ],
  },
  {
    instrument: 'steel',
    paper: 'letter',
    ...IN,
    unit: 'in',
    width: 215.9,
    height: 279.4,
    pages: [
      {
        points: [
          ['square, top left', 20, 147.8],
          ['square, top right', 121.6, 147.8],
          ['square, foot right', 121.6, 249.4],
          ['square, foot left', 20, 249.4],
          ['slot, front wall, treble end', 149.244173, 59.276098],
          ['slot, back wall, treble end', 149.385148, 62.472991],
          ['slot, back wall, bass end', 76.655827, 65.680152],
          ['slot, front wall, bass end', 76.514852, 62.483259],
          ['front edge end, treble', 187.15, 53.47657],
          ['front edge end, bass', 38.75, 53.47657],
          ['belly inflection, treble', 150.771864, 81.473623],
          ['belly inflection, bass', 75.128136, 81.473623],
          ['belly, deepest point', 112.95, 88.40157],
          ['octave line, treble, inner end', 153.913107, 59.7],
          ['octave line, treble, outer end', 183.15, 59.7],
          ['octave line, bass, inner end', 71.986893, 59.7],
          ['octave line, bass, outer end', 42.75, 59.7],
          ['square line, left end', 26.95, 37],
          ['square line, right end', 198.95, 37],
          ['long line across, left end', 20, 259.8],
          ['long line across, right end', 197.8, 259.8],
          ['long line along, upper end', 14.6, 10],
          ['long line along, lower end', 14.6, 238.6],
        ],
        holes: [
          ['pin 1', 140.673058, 72.35717, 2.4],
          ['pin 2', 129.583835, 72.846174, 2.4],
          ['pin 3', 118.494612, 73.335178, 2.4],
          ['pin 4', 107.405388, 73.824182, 2.4],
          ['pin 5', 96.316165, 74.313186, 2.4],
          ['pin 6', 85.226942, 74.80219, 2.4],
          ['locating pin, treble', 149.31466, 60.874544, 0.8],
          ['locating pin, bass', 76.58534, 64.081706, 0.8],
        ],
      },
    ],
  },
];
