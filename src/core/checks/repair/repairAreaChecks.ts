import type { AuditLimit } from '../../audit/auditLimits';
import type { Point } from '../../geom/types';
import { repairLimit } from '../../repair/repairLimits';
import type { DesignCheck } from '../types';
import { placedWall } from '../wallCheck';

const SHOWING_SOURCE =
  'an old footprint that showed, painted over: lkoguitargarage.com, guitar repair; 1/16 in larger: shoutout.wix.com';
const MEND = 'A new bridge 1/16 in larger all round covers chipped edges as well; or touch up the finish.';

interface Fill {
  readonly lies: 'inside' | 'partly' | 'clear';
  readonly wall: number;
  /** Where the wood between the slots is thinnest. */
  readonly at: readonly Point[];
}

/** Old footprint left showing. area: mm². */
const showingCheck = (area: number, own: Readonly<Record<string, number>>): DesignCheck => {
  const limit = repairLimit('showing', own);
  const much = area > limit.value;
  return {
    id: 'repair-showing',
    verdict: much ? 'look' : 'good',
    message: much
      ? `The old footprint shows beside the new bridge over ${area.toFixed(0)} mm². ${MEND}`
      : 'The new bridge covers the old footprint.',
    lengths: [],
    source: own.showing === undefined && much ? SHOWING_SOURCE : limit.source,
    limit: 'limits.showing',
  };
};

/** The new slot beside the filled one. */
const fillCheck = (fill: Fill, wall: AuditLimit): DesignCheck => {
  const check = (verdict: DesignCheck['verdict'], message: string): DesignCheck => ({
    id: 'repair-fill',
    verdict,
    message,
    lengths: [],
    source: 'common practice, no source',
  });
  switch (fill.lies) {
    case 'clear':
      return placedWall('repair-fill', 'The new slot clears the filled one', fill, ['wallAroundSlot', wall]);
    case 'inside':
      return check('good', 'The new slot lies in the fill alone, which must be a tight strip of like wood.');
    case 'partly':
      return check(
        'look',
        'The new slot is cut partly into the fill: let its glue cure, and cut in light passes so that the cutter does not follow the joint.',
      );
  }
};

/** What areas say of a repair. showing: mm²; fill: null without a slot to be filled; wall: least wood around a slot. */
export const repairAreaChecks = (
  showing: number,
  fill: Fill | null,
  own: Readonly<Record<string, number>>,
  wall: AuditLimit,
): readonly DesignCheck[] => [showingCheck(showing, own), ...(fill === null ? [] : [fillCheck(fill, wall)])];
