import type { AuditLimit } from '../../audit/auditLimits';
import type { Hole } from '../../bridge/types';
import { distanceToPath } from '../../geom/distanceToPath';
import { pathContains } from '../../geom/pathContains';
import type { Path } from '../../geom/types';
import type { DesignCheck } from '../types';
import { checkPart, placedWall, thinnest, type Wall } from '../wallCheck';

const NAME = 'The new slot clears the old holes';

/**
 * The new slot against the old holes. In a bridge that stays they take wood from its walls; beneath a new one they only ask
 * to be plugged. wall: least wood around a pin hole.
 */
export const slotOverHoles = (
  slot: Path,
  former: readonly Hole[],
  stays: boolean,
  wall: AuditLimit,
): readonly DesignCheck[] => {
  const walls = former.map(({ centre, diameter }): Wall => {
    const away = distanceToPath(slot, centre) * (pathContains(slot, centre) ? -1 : 1);
    return { wall: away - diameter / 2, at: [centre] };
  });
  const least = thinnest(walls);
  if (least === null) return [];
  if (stays) return [placedWall('repair-slot-holes', NAME, least, ['wallAroundPins', wall])];
  if (least.wall >= 0) return [];
  return [
    {
      id: 'repair-slot-holes',
      verdict: 'look',
      message: 'The new slot will stand over an old hole: plug the hole flush before the bridge is glued.',
      lengths: [],
      source: 'common practice, no source',
      at: least.at,
      part: checkPart(NAME),
    },
  ];
};
