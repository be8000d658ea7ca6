import type { Locating, Slot, TrebleBassPoints } from '../document/types';
import { lineCrossings } from '../geom/lineCrossings';
import { pathBounds } from '../geom/pathBounds';
import { add, rotate, subtract } from '../geom/points';
import type { Path, Point } from '../geom/types';
import { fail, ok, type Result } from '../result';
import type { Hole, SaddlePlace, SlotPlace } from './types';

/** In an open slot, how far the holes lie in from the ends of the bridge, mm: common practice, no source. */
const IN_FROM_OPEN_ENDS = 6;

/** How far out toward the ends of the bridge free locating pins stand to begin with: well inside the wings. */
const SHARE_OUT = 0.8;

const pair = (locating: Locating, treble: Point, bass: Point): readonly Hole[] => [
  { id: 'locating-treble', label: 'locating pin, treble', centre: treble, diameter: locating.drill },
  { id: 'locating-bass', label: 'locating pin, bass', centre: bass, diameter: locating.drill },
];

/** Free places to begin with, footprint frame: out in the wings, midway between the front and back edges there. */
export const freeLocatingPoints = (footprint: Path): TrebleBassPoints => {
  const { minX, maxX } = pathBounds(footprint);
  const midway = (x: number): Point => {
    const edges = lineCrossings(footprint, { x, y: 0 }, { x: 0, y: 1 });
    return { x, y: ((edges[0] ?? 0) + (edges.at(-1) ?? 0)) / 2 };
  };
  return { treble: midway(SHARE_OUT * maxX), bass: midway(SHARE_OUT * minX) };
};

/**
 * The two holes that register the bridge, treble first. In the slot ends they lie half a slot width in from the end, which
 * is the centre of a round end, and 6 mm in where the slot is open; or they are the outer pin holes, or two free points of
 * the footprint, whose front edge crosses the centreline at `front`. Instrument frame. Codes: locating.pins.
 */
export const locatingHoles = (
  locating: Locating,
  slot: Slot,
  slotAt: SlotPlace,
  saddle: SaddlePlace,
  pins: readonly Hole[],
  footprint: Path,
  front: number,
): Result<readonly Hole[]> => {
  if (locating.site === 'free') {
    const { treble, bass } = locating.points ?? freeLocatingPoints(footprint);
    return ok(pair(locating, add(treble, { x: 0, y: front }), add(bass, { x: 0, y: front })));
  }
  if (locating.site === 'outer-pin-holes') {
    const treble = pins[0];
    const bass = pins.at(-1);
    if (treble === undefined || bass === undefined || treble === bass)
      return fail('bridge.locating.site', 'locating.pins', 'This bridge has no outer pin holes; use the slot ends.');
    return ok(pair(locating, treble.centre, bass.centre));
  }
  const { treble, bass } = slotAt.ends;
  const inset = rotate({ x: slot.run === 'open' ? IN_FROM_OPEN_ENDS : slot.width / 2, y: 0 }, Math.atan(saddle.slope));
  return ok(pair(locating, subtract(treble, inset), add(bass, inset)));
};
