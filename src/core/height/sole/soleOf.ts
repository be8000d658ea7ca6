import type { BridgePlace } from '../../bridge/types';
import type { Project } from '../../document/types';
import { pathBounds } from '../../geom/pathBounds';
import { fail, type Result } from '../../result';
import { footprintReach } from './footprintReach';
import { soleFit } from './soleFit';
import type { SoleFit } from './soleTypes';

/** How the sole of this bridge lies on the top; null while nothing was said of it. Codes: those of soleFit, sole.width. */
export const soleOf = ({ sole, thickness, slot }: Project['bridge'], place: BridgePlace): Result<SoleFit> | null => {
  if (sole === null) return null;
  const { outline } = place.footprint;
  const { minX, maxX } = pathBounds(outline);
  const reach = footprintReach(outline, 0);
  if (reach === null || !(minX < 0 && maxX > 0))
    return fail('bridge.outline', 'sole.width', 'The bridge does not reach over the centreline.');
  const width = reach.back - reach.front;
  return soleFit(sole, { bassTip: minX, trebleTip: maxX, width, thickness, slotDepth: slot.depth });
};
