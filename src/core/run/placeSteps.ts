import { plainStep } from './plainStep';
import type { RunStep } from './types';

/** The bridge to its place. */
export const placeSteps = (): readonly RunStep[] => [
  plainStep('place', 'square-line', 'Square line set by steel rule, alike at both ends', {
    doing: [
      'Rule on the frets, from the nut or from the 12th fret. A small square on the line drops the reading to the top.',
    ],
  }),
  plainStep('place', 'sideways', 'Set sideways by the strings, not by the seam', {
    doing: ['Straightedge down both edges of the board: margins at the last fret as given.'],
    round: 'dry',
  }),
  plainStep('place', 'read-taped', 'Bridge taped, and read again', {
    doing: ['Type what you read: Place says which way to move it. Move, tape, read again, until the place is good.'],
    round: 'taped',
  }),
];
