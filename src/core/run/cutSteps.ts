import { plainStep } from './plainStep';
import type { RunCase } from './runCase';
import type { RunStep } from './types';

/** The slot of a bridge that was glued as a blank. */
const SLOT: readonly RunStep[] = [
  plainStep('cut', 'find-line', 'Break points marked on the glued bridge', {
    doing: ['By rule from the nut or the 12th fret, treble and bass: where it lies now, not where it was meant to.'],
  }),
  plainStep('cut', 'fence', 'Fence set by its figures, tried in waste', {
    doing: ['Draw, under Saddle slot, gives the fence for this cutter and base; the slot card prints it.'],
  }),
  plainStep('cut', 'cut-slot', 'Slot cut, in shallow passes', {
    doing: ['Stops at both ends. Against the fence all the way, depth by the height card.'],
    cautions: [
      'A router takes fingers and tops: fence clamped, both hands on the base, eyes and ears shielded. Dust: draw it off and wear a respirator.',
    ],
  }),
];

/** Slot, where it is cut now, and strings. */
export const cutSteps = ({ slotAfter, pins }: RunCase): readonly RunStep[] => [
  ...(slotAfter ? SLOT : []),
  plainStep(
    slotAfter ? 'cut' : 'glue',
    'string',
    pins ? 'Holes reamed, strung, read, recorded' : 'Strung, read, recorded',
    {
      doing: ['Action, relief and the cents of each string, on Record: the next bridge learns from them.'],
    },
  ),
];
