import type { ExpectedTemplate } from './templates-expected';

const MM = {
  figures: [
    ['Break point, centre', '653.2', '328.2'],
    ['Break point, treble E', '653.2', '328.2'],
    ['Break point, bass E', '653.2', '328.2'],
    ['Slot centre', '653.2', '328.2'],
    ['Slot front, centre', '652.0', '327.0'],
    ['Bridge front, centre', '646.0', '321.0'],
    ['Octave line', '650.0', '325.0'],
  ],
  squareLine: ['630.0 mm', 'from the nut', '305.0 mm', 'from the 12th fret'],
};

/**
 * Classical, scale 650, left hand, no pins. From the nut, along the centreline, and to each side of it:
 *
 * slot          front wall 650 + 2 = 652, square across; width 2.4: back wall 654.4, middle and break point 653.2; ends 40
 * locating pins half a slot width in from the ends: 40 − 1.2 = 38.8, at 653.2
 * bridge        front 652 − 6 = 646, back 646 + 28 = 674; real corners 95 to the side; tie block from 40 to 40
 * octave line   650, from 3 beyond the slot, 43, to 6 inside the wing tip, 95 − 6 = 89
 * square line   646 − 15 = 631: 630; 6 beyond the wing tip, 101 to each side
 *
 * 2 · 101 = 202 is wider than A4 or Letter upright leaves, so the pages lie on their side, and square and drawing do not
 * fit on one. Middle of the room: A4 (20 + 287) / 2 = 153.5, Letter (20 + 269.4) / 2 = 144.7; treble to the left.
 * 12th fret: 650 / 2 = 325.
 */
export const CLASSICAL_TEMPLATES: readonly ExpectedTemplate[] = [
  {
    instrument: 'classical',
    paper: 'a4',
    ...MM,
    unit: 'mm',
    width: 297,
    height: 210,
    pages: [
      {
        points: [
          ['slot, front wall, treble end', 113.5, 59],
          ['slot, back wall, treble end', 113.5, 61.4],
          ['slot, back wall, bass end', 193.5, 61.4],
          ['slot, front wall, bass end', 193.5, 59],
          ['front corner, treble', 58.5, 53],
          ['front corner, bass', 248.5, 53],
          ['back corner, treble', 58.5, 81],
          ['back corner, bass', 248.5, 81],
          ['tie block, back, treble', 113.5, 81],
          ['octave line, treble, inner end', 110.5, 57],
          ['octave line, treble, outer end', 64.5, 57],
          ['octave line, bass, inner end', 196.5, 57],
          ['octave line, bass, outer end', 242.5, 57],
          ['square line, left end', 52.5, 37],
          ['square line, right end', 254.5, 37],
          ['long line across, left end', 20, 190.4],
          ['long line across, right end', 280, 190.4],
          ['long line along, upper end', 14.6, 10],
          ['long line along, lower end', 14.6, 170],
        ],
        holes: [
          ['locating pin, treble', 114.7, 60.2, 0.75],
          ['locating pin, bass', 192.3, 60.2, 0.75],
        ],
      },
      {
        points: [
          ['square, top left', 20, 10],
          ['square, top right', 120, 10],
          ['square, foot right', 120, 110],
          ['square, foot left', 20, 110],
          ['long line across, left end', 20, 190.4],
          ['long line across, right end', 280, 190.4],
          ['long line along, upper end', 14.6, 10],
          ['long line along, lower end', 14.6, 170],
        ],
        holes: [],
      },
    ],
  },
  {
    instrument: 'classical',
    paper: 'letter',
    ...MM,
    unit: 'mm',
    width: 279.4,
    height: 215.9,
    pages: [
      {
        points: [
          ['slot, front wall, treble end', 104.7, 59],
          ['slot, back wall, treble end', 104.7, 61.4],
          ['slot, back wall, bass end', 184.7, 61.4],
          ['slot, front wall, bass end', 184.7, 59],
          ['front corner, treble', 49.7, 53],
          ['front corner, bass', 239.7, 53],
          ['back corner, treble', 49.7, 81],
          ['back corner, bass', 239.7, 81],
          ['tie block, back, treble', 104.7, 81],
          ['octave line, treble, inner end', 101.7, 57],
          ['octave line, treble, outer end', 55.7, 57],
          ['octave line, bass, inner end', 187.7, 57],
          ['octave line, bass, outer end', 233.7, 57],
          ['square line, left end', 43.7, 37],
          ['square line, right end', 245.7, 37],
          ['long line across, left end', 20, 196.3],
          ['long line across, right end', 260, 196.3],
          ['long line along, upper end', 14.6, 10],
          ['long line along, lower end', 14.6, 170],
        ],
        holes: [
          ['locating pin, treble', 105.9, 60.2, 0.75],
          ['locating pin, bass', 183.5, 60.2, 0.75],
        ],
      },
      {
        points: [
          ['square, top left', 20, 10],
          ['square, top right', 120, 10],
          ['square, foot right', 120, 110],
          ['square, foot left', 20, 110],
          ['long line across, left end', 20, 196.3],
          ['long line across, right end', 260, 196.3],
          ['long line along, upper end', 14.6, 10],
          ['long line along, lower end', 14.6, 170],
        ],
        holes: [],
      },
    ],
  },
];
