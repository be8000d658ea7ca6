import type { Pins } from '../document/types';
import type { WholeDesign } from './designed';
import { type Finding, setOne } from './finding';
import { mouthOf, reamed, wallsAmong, wallToEdge } from './mouths';
import { slotFrame } from './slotFrame';
import type { Mend } from './types';
import { downward, upward } from './upward';
import { placedWall, thinnest, type Wall } from './wallCheck';

const FROM = 'bridge.pins.from';
const PUT_ROW = 'Slot to pin row {0}';
const FROM_FRONT = 'bridge.slot.fromFront';
const SPREAD = 'bridge.pins.spread';
const PUT_SPREAD = 'Pin spacing, outer {0}';

/** More pins than this stand in two rows: common practice. */
const MOST_IN_ONE_ROW = 8;

/**
 * How far a second row stands behind the first for every two pins to be `apart`, mm: neighbours of both rows lie one pitch
 * apart along a row that is turned by `angle`. Null when the pins of one row are too near one another as it is.
 */
const secondRow = (pitch: number, apart: number, angle: number): number | null => {
  if (2 * pitch < apart) return null;
  const across = pitch * Math.cos(angle);
  return pitch * Math.abs(Math.sin(angle)) + Math.sqrt(Math.max(0, apart ** 2 - across ** 2));
};

const apartTries = (pins: Pins, count: number, slope: number, least: number): readonly Mend[] => {
  const apart = mouthOf(pins) + least;
  const wide = setOne(SPREAD, upward(apart * (count - 1)), PUT_SPREAD);
  if (count <= MOST_IN_ONE_ROW) return [wide];
  const angle = pins.row === 'square' ? 0 : Math.atan(slope);
  const behind = secondRow(pins.spread / (count - 1), apart, angle);
  return behind === null ? [wide] : [setOne('bridge.pins.stagger', upward(behind), 'Two pin rows, {0} apart'), wide];
};

const edgeTries = (pins: Pins, fromFront: number, short: number, aside: boolean, stretch: number): readonly Mend[] => {
  const nearer = setOne(FROM, downward(pins.from - short), PUT_ROW);
  const forward = setOne(FROM_FRONT, downward(fromFront - short), 'Front edge to slot {0}');
  const narrow = setOne(SPREAD, downward(pins.spread - 2 * short * stretch), PUT_SPREAD);
  return aside ? [narrow, nearer, forward] : [nearer, forward, narrow];
};

/**
 * Least wood between the pin holes, as they are reamed: among themselves, to the slot, and to the edge of the bridge. Many
 * pins that would run into one another in a single row are no mistake yet: two rows are proposed.
 */
export const pinWalls = ({ project, saddle, slot, bridge, limits }: WholeDesign): readonly Finding[] => {
  const { pins, slot: design } = project.bridge;
  if (pins === null || bridge.pins.length === 0) return [];
  const holes = reamed(pins, bridge.pins);
  const { outside } = slotFrame(design, slot);
  const [between, around] = [limits.wallBetweenHoles, limits.wallAroundPins];
  const stretch = Math.hypot(1, saddle.slope);
  const none: Wall = { wall: Number.POSITIVE_INFINITY, at: [] };
  const apart = thinnest(wallsAmong(holes));
  const toSlot =
    thinnest(holes.map(({ centre, diameter }) => ({ wall: outside(centre) - diameter / 2, at: [centre] }))) ?? none;
  const toEdge = thinnest(holes.map((hole) => wallToEdge(bridge.footprint.outline, hole))) ?? none;
  const outer = toEdge.at[0] === holes[0]?.centre || toEdge.at[0] === holes.at(-1)?.centre;
  const found: Finding[] = [];
  if (apart !== null) {
    const check = placedWall('pins-apart', 'Pin holes clear one another', apart, ['wallBetweenHoles', between]);
    const tries = apartTries(pins, holes.length, saddle.slope, between.value);
    const rows = check.verdict === 'wrong' && pins.stagger === 0 && holes.length > MOST_IN_ONE_ROW;
    found.push(
      rows
        ? {
            ...check,
            verdict: 'look',
            message: `${holes.length} pin holes in one row would overlap by {0}: they take two rows.`,
            tries,
          }
        : { ...check, tries },
    );
  }
  found.push({
    ...placedWall('pins-slot', 'Pins clear the slot', toSlot, ['wallAroundPins', around]),
    tries: [setOne(FROM, upward(pins.from + (around.value - toSlot.wall) * stretch), PUT_ROW)],
  });
  found.push({
    ...placedWall('pins-edge', 'Pins clear the edge of the bridge', toEdge, ['wallAroundPins', around]),
    tries: edgeTries(pins, design.fromFront, around.value - toEdge.wall, outer, stretch),
  });
  return found;
};
