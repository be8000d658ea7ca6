import type { Outline } from '../document/outlineTypes';
import type { Slot } from '../document/types';
import { lineCrossings } from '../geom/lineCrossings';
import { rotate } from '../geom/points';
import { transformPath } from '../geom/transformPath';
import type { Path, Point } from '../geom/types';
import { fail, ok, type Result } from '../result';
import { footprintOf } from './footprintOf';
import type { SaddlePlace, SlotPlace } from './types';

/** A closed path through two walls, the front wall first, from bass to treble and back. */
const around = (walls: readonly (readonly [Point, Point])[], round: boolean): Path => {
  const [[start, topRight], [bottomLeft, bottomRight]] = walls as readonly [[Point, Point], [Point, Point]];
  const end = (from: Point, to: Point) =>
    round
      ? ({ kind: 'arc', to, centre: { x: from.x, y: (from.y + to.y) / 2 }, clockwise: true } as const)
      : ({ kind: 'line', to } as const);
  return {
    start,
    segments: [
      { kind: 'line', to: topRight },
      end(topRight, bottomRight),
      { kind: 'line', to: bottomLeft },
      end(bottomLeft, start),
    ],
    closed: true,
  };
};

/** A slot of this length and width about the origin, along x, ends included. */
const stopped = (length: number, width: number, ends: Slot['ends']): Path => {
  const half = width / 2;
  const x = ends === 'round' ? length / 2 - half : length / 2;
  const wall = (y: number): readonly [Point, Point] => [
    { x: -x, y },
    { x, y },
  ];
  return around([wall(-half), wall(half)], ends === 'round');
};

/** From bass to treble where a wall so far behind the slot's middle leaves the footprint; null when it misses it. */
const reach = (footprint: Path, middle: Point, angle: number, behind: number): readonly [Point, Point] | null => {
  const off = rotate({ x: 0, y: behind }, angle);
  const direction = rotate({ x: 1, y: 0 }, angle);
  const origin = { x: middle.x + off.x, y: middle.y + off.y };
  const [bass, ...others] = lineCrossings(footprint, origin, direction);
  const treble = others.at(-1);
  if (bass === undefined || treble === undefined) return null;
  const at = (far: number): Point => ({ x: origin.x + direction.x * far, y: origin.y + direction.y * far });
  return [at(bass), at(treble)];
};

/**
 * The slot under its saddle line: parallel to it, so that the strings break `crown` of the way from its front wall to its
 * back wall; its middle on the centreline. An open slot runs out of both ends of `bridge`, whatever its length.
 * Codes: slot.short, slot.outside, those of footprintOf.
 */
export const slotPlace = (slot: Slot, saddle: SaddlePlace, bridge?: Outline): Result<SlotPlace> => {
  const { length, width } = slot;
  const stretch = Math.hypot(1, saddle.slope);
  const front = saddle.centre - slot.crown * width * stretch;
  const middle = front + (width * stretch) / 2;
  const angle = Math.atan(saddle.slope);
  const place = { front, middle, back: front + width * stretch };
  if (slot.run === 'open' && bridge !== undefined) {
    const shape = footprintOf(bridge);
    if (!shape.ok) return shape;
    const behindEdge = slot.fromFront + middle - front;
    const walls = [-width / 2, width / 2, 0].map((behind) =>
      reach(shape.value.outline, { x: 0, y: behindEdge }, angle, behind),
    );
    const [ahead, behind, along] = walls;
    if (!ahead || !behind || !along)
      return fail('bridge.slot.fromFront', 'slot.outside', 'An open slot has to run through the bridge.');
    const shift = { x: 0, y: middle - behindEdge };
    const [bass, treble] = along.map(({ x, y }) => ({ x, y: y + shift.y })) as [Point, Point];
    return ok({ ...place, outline: transformPath(around([ahead, behind], false), 0, shift), ends: { treble, bass } });
  }
  if (length <= width) return fail('bridge.slot.length', 'slot.short', 'The slot is longer than it is wide.');
  const half = rotate({ x: length / 2, y: 0 }, angle);
  return ok({
    ...place,
    outline: transformPath(stopped(length, width, slot.ends), angle, { x: 0, y: middle }),
    ends: { treble: { x: half.x, y: middle + half.y }, bass: { x: -half.x, y: middle - half.y } },
  });
};
