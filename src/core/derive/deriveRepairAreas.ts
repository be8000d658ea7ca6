import { distanceToPath } from '../geom/distanceToPath';
import { type PathsLeft, pathsWithout } from '../geom/offset/pathsWithout';
import { pathArea } from '../geom/pathArea';
import { leastOnPath } from '../geom/snap/leastOnPath';
import type { Path, Point } from '../geom/types';
import type { FormerPlace } from '../repair/types';
import { ok, type Result } from '../result';

/** How the new slot lies to the filled one. */
export interface SlotFill {
  /** mm² of the new slot that is cut into the fill, and that is cut into old wood. */
  readonly shared: number;
  readonly beside: number;
  readonly lies: 'inside' | 'partly' | 'clear';
  /** Least wood between the two when they are clear of one another, else 0. mm */
  readonly wall: number;
  /** On the new slot, where that wood is thinnest. */
  readonly at: readonly Point[];
}

/** What the repair takes the offset library for. Areas in mm². */
export interface RepairAreas {
  /** The old footprint, and what of it the new bridge covers. */
  readonly former: number;
  readonly covered: number;
  /** Old footprint left showing, and new bridge beyond it: finish to clear. */
  readonly showing: PathsLeft;
  readonly beyond: PathsLeft;
  /** Null without a slot to be filled. */
  readonly fill: SlotFill | null;
}

/** Less than this is not there, mm²: what flattening curves may cost. */
const NOTHING_MM2 = 0.02;

const fillOf = async (old: Path, slot: Path): Promise<Result<SlotFill>> => {
  const outside = await pathsWithout([slot], [old]);
  if (!outside.ok) return outside;
  const beside = outside.value.area;
  const shared = Math.max(0, pathArea(slot) - beside);
  const lies = shared < NOTHING_MM2 ? 'clear' : beside < NOTHING_MM2 ? 'inside' : 'partly';
  if (lies !== 'clear') return ok({ shared, beside, lies, wall: 0, at: [] });
  const { value: wall, at } = leastOnPath(slot, (point) => distanceToPath(old, point));
  return ok({ shared, beside, lies, wall, at: [at] });
};

/**
 * Old bridge against new, whose outline and slot are given: instrument frame. The offset library is loaded here, apart from
 * the drawing. Codes: those of offsetPath on the outlines, and offset.notLoaded.
 */
export const deriveRepairAreas = async (
  former: FormerPlace,
  footprint: Path,
  slot: Path,
): Promise<Result<RepairAreas>> => {
  const showing = await pathsWithout([former.outline], [footprint]);
  if (!showing.ok) return showing;
  const beyond = await pathsWithout([footprint], [former.outline]);
  if (!beyond.ok) return beyond;
  const fill = former.slot === null ? ok(null) : await fillOf(former.slot.outline, slot);
  if (!fill.ok) return fill;
  const all = pathArea(former.outline);
  return ok({
    former: all,
    covered: Math.max(0, all - showing.value.area),
    showing: showing.value,
    beyond: beyond.value,
    fill: fill.value,
  });
};
