import type { ExpectedTemplate } from './templates-expected';

const MM = {
  figures: [
    ['Break point, centre', '434.1', '440.1', '218.1'],
    ['Break point, treble A', '433.7', '439.7', '217.7'],
    ['Break point, bass G', '434.5', '440.5', '218.5'],
    ['Slot centre', '434.1', '440.1', '218.1'],
    ['Slot front, centre', '432.9', '438.9', '216.9'],
    ['Bridge front, centre', '429.4', '435.4', '213.4'],
    ['Pin row, centre', '440.3', '446.3', '224.3'],
    ['Octave line', '432.0', '438.0', '216.0'],
  ],
  squareLine: ['416.0 mm', 'from the nut face', '410.0 mm', 'from the zero fret', '194.0 mm', 'from the 12th fret'],
};

/**
 * Tenor ukulele, scale 432, right hand, zero fret with the nut's face 6 behind it, own compensation figures. From the
 * crown of the zero fret, along the centreline, and to each side of it:
 *
 * strings       42 apart in all, evenly: 21, 7, −7, −21
 * slant         least squares: m = (21 · 1.2 + 7 · 2.1 − 7 · 3.4 − 21 · 1.7) / (2 (21² + 7²)) = −19.6 / 980 = −0.02;
 *               s = √(1 + m²) = 1.00019998; cos = 1 / s, sin = m / s
 * break point   432 + (1.2 + 2.1 + 3.4 + 1.7) / 4 = 434.1
 * slot          width 2.4, broken over in the middle: front wall 434.1 − 1.2 s = 432.899760, back wall 435.300240; its
 *               rounded ends begin 54/2 − 1.2 = 25.8 along: x = ±25.8 cos ± 1.2 sin, y = 434.1 ± 25.8 sin ± 1.2 cos
 * pins          square to the centreline at 435.300240 + 5 = 440.300240; 42 / 3 = 14 apart; locating pins in the outer two
 * bridge front  432.899760 − 3.5 = 429.399760; its straight ends 76/2 − 1.5 = 36.5 to the side
 * back edge     an arc over 76 that rises 3: radius R = (38² + 3²) / 6 = 242.166667 about 19 − R = −223.166667 from the
 *               front. A corner of radius 1.5 inside it has its centre 36.5 to the side and √((R − 1.5)² − 36.5²) behind
 *               that: 14.716066 from the front; it touches on the ray through both centres, R / (R − 1.5) times as far:
 *               x = 36.727493, y = 16.198714 from the front
 * deepest       429.399760 + 19
 * octave line   432, from 27 cos + 3 = 29.994602 to 8 beyond the windows, 38 + 6 + 8 = 52, as less than 8 lies between it and 38 − 6
 * square line   429.4 − 15 = 414.4: 410; 86 to each side
 *
 * Middle of the room: A4 110, Letter 112.95. Foot of the room: 267, 249.4. 12th fret: 432 / 2 = 216.
 */
export const UKULELE_TEMPLATES: readonly ExpectedTemplate[] = [
  {
    instrument: 'ukulele',
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
          ['slot, front wall, treble end', 135.770846, 59.384343],
          ['slot, back wall, treble end', 135.818837, 61.783863],
          ['slot, back wall, bass end', 84.229154, 62.815657],
          ['slot, front wall, bass end', 84.181163, 60.416137],
          ['front edge end, treble', 146.5, 56.39976],
          ['front edge end, bass', 73.5, 56.39976],
          ['back edge end, treble', 146.727493, 72.598475],
          ['back edge end, bass', 73.272507, 72.598475],
          ['back edge, deepest point', 110, 75.39976],
          ['octave line, treble, inner end', 139.994602, 59],
          ['octave line, treble, outer end', 162, 59],
          ['octave line, bass, inner end', 80.005398, 59],
          ['octave line, bass, outer end', 58, 59],
          ['square line, left end', 24, 37],
          ['square line, right end', 196, 37],
          ['long line across, left end', 20, 277.4],
          ['long line across, right end', 200, 277.4],
          ['long line along, upper end', 14.6, 10],
          ['long line along, lower end', 14.6, 250],
        ],
        holes: [
          ['pin 1', 131, 67.30024, 1.5],
          ['pin 2', 117, 67.30024, 1.5],
          ['pin 3', 103, 67.30024, 1.5],
          ['pin 4', 89, 67.30024, 1.5],
          ['locating pin, treble', 131, 67.30024, 0.75],
          ['locating pin, bass', 89, 67.30024, 0.75],
        ],
      },
    ],
  },
  {
    instrument: 'ukulele',
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
          ['slot, front wall, treble end', 138.720846, 59.384343],
          ['slot, back wall, treble end', 138.768837, 61.783863],
          ['slot, back wall, bass end', 87.179154, 62.815657],
          ['slot, front wall, bass end', 87.131163, 60.416137],
          ['front edge end, treble', 149.45, 56.39976],
          ['front edge end, bass', 76.45, 56.39976],
          ['back edge end, treble', 149.677493, 72.598475],
          ['back edge end, bass', 76.222507, 72.598475],
          ['back edge, deepest point', 112.95, 75.39976],
          ['octave line, treble, inner end', 142.944602, 59],
          ['octave line, treble, outer end', 164.95, 59],
          ['octave line, bass, inner end', 82.955398, 59],
          ['octave line, bass, outer end', 60.95, 59],
          ['square line, left end', 26.95, 37],
          ['square line, right end', 198.95, 37],
          ['long line across, left end', 20, 259.8],
          ['long line across, right end', 200, 259.8],
          ['long line along, upper end', 14.6, 10],
          ['long line along, lower end', 14.6, 230],
        ],
        holes: [
          ['pin 1', 133.95, 67.30024, 1.5],
          ['pin 2', 119.95, 67.30024, 1.5],
          ['pin 3', 105.95, 67.30024, 1.5],
          ['pin 4', 91.95, 67.30024, 1.5],
          ['locating pin, treble', 133.95, 67.30024, 0.75],
          ['locating pin, bass', 91.95, 67.30024, 0.75],
        ],
      },
    ],
  },
];
