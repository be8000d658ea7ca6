import { plainStep } from './plainStep';
import type { RunStep } from './types';

/** From the glue to the cured joint. */
export const glueSteps = (): readonly RunStep[] => [
  plainStep('glue', 'glue-on', 'Glue on, waxed pins in, clamps on', {
    doing: [
      'Both faces scraped fresh, within 15 min of the glue by one maker’s rule.',
      'Start the clock as the first glue is spread. Pins in before the first clamp: wet glue lets a bridge slide, and tape does not hold it. Then the clamps in order.',
    ],
    timers: ['open', 'closed'],
  }),
  plainStep('glue', 'read-wet', 'Read again wet, before the glue grabs', {
    doing: ['The few lines that tell most. Move it now or never.'],
    round: 'wet',
  }),
  plainStep('glue', 'pins-out', 'Pins out before the glue grabs', {
    doing: ['Every one of them, counted.'],
    timers: ['clamp'],
  }),
  plainStep('glue', 'squeeze-out', 'Squeeze-out cleaned', {
    doing: [
      'About 15 min after clamping by one maker’s rule: while it peels and does not smear. Inside too, by mirror.',
      'A bead all round says that there was glue enough: look hard where there is none.',
    ],
  }),
  plainStep('glue', 'cure', 'Cured', {
    doing: ['Clamps off when the label says, strings on when the label says. Read its place once more.'],
    cautions: ['Glue, solvents and heat: follow labels and local rules. No heat near a fresh joint.'],
    timers: ['cure'],
    round: 'cured',
  }),
];
