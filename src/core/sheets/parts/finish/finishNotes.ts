import { showLength } from '../../../units/showLength';
import type { SheetContext } from '../types';
import { showArea } from './showArea';

/**
 * Films that do not bear tape: moonlightluthiers.com, bridge attachment, says that some do not; which: from memory. Cutting
 * through film and not wood, low-tack tape: baileyguitars.co.uk and guitar-maker.blogspot.com, December 2015.
 */
const TAPE =
  'Tape: low-tack, tried first where it does not show. Shellac, young or old lacquer and oil may not bear it.';

const lineWords = (rim: number): string =>
  rim === 0 ? 'the wide line, the footprint itself' : 'the line of long and short dashes, inside the footprint';

/** What to do with the mask. */
export const maskNotes = ({ project }: SheetContext): readonly string[] => [
  `1. Cut the mask on ${lineWords(project.bridge.rim)}, on the bench. It keeps the glue area bare while the finish is sprayed.`,
  '2. Set it by its locating-pin holes and centreline, or in the window sheet, nut side to the nut. Press its edges down.',
  '3. Score round it through the film, not the wood, before it is lifted; lift it as soon as the label allows.',
  TAPE,
  'Spray: eyes and lungs covered, air drawn off, no flame; follow the label and local rules.',
];

/** What the rim costs: from the areas, or none told while they are not known. */
const costWords = ({ project, areas, style }: SheetContext): readonly string[] => {
  const { rim } = project.bridge;
  if (areas === null) return [];
  const glue = `Glue area ${showArea(areas.glue, style.unit)}`;
  if (rim === 0) return [`${glue}: no finish is left under the rim.`];
  const lost = `${showArea(areas.underRim, style.unit)}, ${(areas.shareLost * 100).toFixed(1)} %`;
  return [
    `${glue}. A rim of ${showLength(rim, style)} left under the bridge costs ${lost} of what could be glued without it.`,
  ];
};

/** How to clear the finish, and what the rim costs. */
export const clearingNotes = (context: SheetContext): readonly string[] => [
  ...costWords(context),
  `1. Bridge taped and read again: score on ${lineWords(context.project.bridge.rim)}. Through the film, not the wood: light passes, a cut into the top starts a crack.`,
  '2. Clear the hatched area to bare wood, from the line inward; scrape flat, leave no hollow. Glue soon after.',
  TAPE,
  'Lifting an old bridge by heat: a heat shield cut to the footprint, of card faced with foil, covers the finish around; paper alone scorches. Film blisters first at the front edge.',
  'Knife and scraper: cut away from the holding hand. Strippers and solvents attack film and burn: follow labels and local rules.',
];
