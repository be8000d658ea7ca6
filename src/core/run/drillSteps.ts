import { plainStep } from './plainStep';
import type { RunCase } from './runCase';
import type { RunStep } from './types';

/** Locating-pin holes, finish, dry run. */
export const drillSteps = ({ holes }: RunCase): readonly RunStep[] => [
  plainStep('drill', 'first-hole', 'First locating hole, through the bridge itself', {
    doing: ['Drill tried in waste first, with a stop for the depth.'],
    cautions: [
      'Braces found first. Back up the plate with a block, never with a hand inside. Drill slowly, square to the top. Dust: draw it off and wear a respirator.',
    ],
  }),
  plainStep('drill', 'other-holes', `Pin in, read again, then the next: ${holes} in all`, {
    doing: ['The first pin holds it while you read; turn the bridge about it, then drill the next.'],
    round: 'taped',
  }),
  plainStep('drill', 'finish', 'Finish scored and cleared', {
    doing: ['Score round the pinned bridge, take it off, and clear to bare wood as far as the line.'],
    cautions: [
      'Through the film, not the wood: light passes, cut away from the holding hand. A cut into the top starts a crack. Solvents and strippers burn and attack film: labels and local rules.',
    ],
  }),
  plainStep('drill', 'dry-run', 'Dry run: pins, cauls, every clamp, by the clock', {
    doing: [
      'All but the glue, in the order of the glue card, against the times on the label. What does not go in time dry will not go wet.',
    ],
    cautions: ['Clamps snug and even: too tight dents the top, starves the joint and cracks braces.'],
  }),
];
