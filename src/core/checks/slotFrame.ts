import type { SlotPlace } from '../bridge/types';
import type { Slot } from '../document/types';
import { distance } from '../geom/points';
import type { Point } from '../geom/types';

/** The slot in its own frame: u along it toward the treble, v behind its middle. */
export interface SlotFrame {
  readonly toLocal: (point: Point) => Point;
  readonly toWorld: (local: Point) => Point;
  readonly halfLength: number;
  readonly halfWidth: number;
  /** How far a point lies outside the slot, − inside it; exact. */
  readonly outside: (point: Point) => number;
}

/** The slot of these dimensions in place. */
export const slotFrame = ({ width, ends, run }: Slot, slot: SlotPlace): SlotFrame => {
  const { treble, bass } = slot.ends;
  const length = distance(treble, bass);
  const [cos, sin] = [(treble.x - bass.x) / length, (treble.y - bass.y) / length];
  const middle = { x: (treble.x + bass.x) / 2, y: (treble.y + bass.y) / 2 };
  const toLocal = ({ x, y }: Point): Point => ({
    x: (x - middle.x) * cos + (y - middle.y) * sin,
    y: (y - middle.y) * cos - (x - middle.x) * sin,
  });
  const toWorld = ({ x, y }: Point): Point => ({ x: middle.x + x * cos - y * sin, y: middle.y + x * sin + y * cos });
  const [halfLength, halfWidth] = [length / 2, width / 2];
  const round = ends === 'round' && run === 'stopped';
  const outside = (point: Point): number => {
    const local = toLocal(point);
    if (round) return Math.hypot(Math.max(0, Math.abs(local.x) - halfLength + halfWidth), local.y) - halfWidth;
    const [u, v] = [Math.abs(local.x) - halfLength, Math.abs(local.y) - halfWidth];
    return Math.hypot(Math.max(u, 0), Math.max(v, 0)) + Math.min(Math.max(u, v), 0);
  };
  return { toLocal, toWorld, halfLength, halfWidth, outside };
};
