import type { Slot } from '../document/types';
import { transformPath } from '../geom/transformPath';
import type { Path, Point } from '../geom/types';
import { fail, ok, type Result } from '../result';
import type { SaddlePlace, SlotPlace } from './types';

/** A slot of this length and width about the origin, along x, ends included. */
const slotOutline = (length: number, width: number, ends: Slot['ends']): Path => {
  const half = width / 2;
  const x = ends === 'round' ? length / 2 - half : length / 2;
  const topRight: Point = { x, y: -half };
  const bottomRight: Point = { x, y: half };
  const bottomLeft: Point = { x: -x, y: half };
  const topLeft: Point = { x: -x, y: -half };
  const end = (to: Point, centre: Point) =>
    ends === 'round' ? ({ kind: 'arc', to, centre, clockwise: true } as const) : ({ kind: 'line', to } as const);
  return {
    start: topLeft,
    segments: [
      { kind: 'line', to: topRight },
      end(bottomRight, { x, y: 0 }),
      { kind: 'line', to: bottomLeft },
      end(topLeft, { x: -x, y: 0 }),
    ],
    closed: true,
  };
};

/**
 * The slot under its saddle line: parallel to it, so that the strings break `crown` of the way from its front wall to its
 * back wall; its middle on the centreline.
 */
export const slotPlace = (slot: Slot, saddle: SaddlePlace): Result<SlotPlace> => {
  if (slot.length <= slot.width) return fail('bridge.slot.length', 'slot.short', 'The slot is longer than it is wide.');
  const stretch = Math.hypot(1, saddle.slope);
  const front = saddle.centre - slot.crown * slot.width * stretch;
  const middle = front + (slot.width * stretch) / 2;
  const angle = Math.atan(saddle.slope);
  const along: Point = { x: Math.cos(angle) * (slot.length / 2), y: Math.sin(angle) * (slot.length / 2) };
  return ok({
    outline: transformPath(slotOutline(slot.length, slot.width, slot.ends), angle, { x: 0, y: middle }),
    front,
    middle,
    back: front + slot.width * stretch,
    ends: { treble: { x: along.x, y: middle + along.y }, bass: { x: -along.x, y: middle - along.y } },
  });
};
