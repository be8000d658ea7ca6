import { plainStep } from './plainStep';
import type { RunCase } from './runCase';
import type { RunStep } from './types';

const NECK = plainStep('ready', 'neck', 'Neck angle and height pass', {
  doing: [
    'Straightedge on the frets, read against the bridge at the slot.',
    'A neck that does not pass is set first: that moves the bridge.',
  ],
});
const BRACES = plainStep('ready', 'braces', 'Braces and plate found, by mirror and light', {
  doing: ['Mark them on tape on the top, and enter them on Draw, under Beneath and around.'],
});
const SOLE = plainStep('ready', 'sole', 'Sole fitted: no light under the wings', {
  doing: ['Rather a hair of gap at the centre than at a wing. Wings that need force are not fitted yet.'],
});
const PRINT = plainStep('ready', 'print', 'Print read both ways, and true', {
  doing: ['Steel rule on the square, along, across and corner to corner. Print proves it from what you read.'],
});

const OLD_READ = plainStep('ready', 'old-read', 'Old bridge read while it is still on', {
  doing: [
    'Break points, holes, outline and heights, entered on Draw, under Repair.',
    'If the same bridge goes back: holes through the ends of its slot, now, so that it returns to its place.',
  ],
});
const OLD_OFF = plainStep('ready', 'old-off', 'Old bridge off, old glue gone', {
  doing: ['Warm it, and work a thin blade in with the grain, from both ends. Scrape to bare wood.'],
  cautions: [
    'Heat loosens braces and plate too, and burns finish and hands: shield the top, stay beside it. The blade runs with the grain, away from the holding hand.',
  ],
});
const OLD_WOOD = plainStep('ready', 'old-wood', 'Torn wood mended, old holes plugged where they do not serve', {
  doing: ['Draw, under Repair, says which holes serve. Grain of the plugs along the top’s.'],
});

/** Before any paper is trusted. */
export const readySteps = ({ repair }: RunCase): readonly RunStep[] =>
  repair ? [OLD_READ, NECK, OLD_OFF, BRACES, OLD_WOOD, SOLE, PRINT] : [NECK, BRACES, SOLE, PRINT];
