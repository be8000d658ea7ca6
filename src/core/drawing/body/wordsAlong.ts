import { add, between, distance, scale, subtract } from '../../geom/points';
import type { Bounds, Point } from '../../geom/types';

/** Where words stand along a line: their middle, and the angle at which they are read, radians. */
export interface WordsAlong {
  readonly at: Point;
  readonly angle: number;
}

/** Places are tried this far from one another, mm. */
const STEP = 4;
/** Air between the words and what they keep clear of, mm. */
const CLEAR = 4;
/** Words ahead of the bridge are in sight for longer than those behind it: as good as this much nearer, mm. */
const AHEAD = 60;

const outside = ({ x, y }: Point, { minX, maxX, minY, maxY }: Bounds): number =>
  Math.hypot(Math.max(minX - x, x - maxX, 0), Math.max(minY - y, y - maxY, 0));

/** The same direction, read upright from below or from the right: more than −90°, at most +90°. */
const upright = (angle: number): number => {
  const turn = angle <= -Math.PI / 2 ? angle + Math.PI : angle > Math.PI / 2 ? angle - Math.PI : angle;
  return turn + 0;
};

/**
 * The place for words of this length along the line, as near to `clear` (the bridge) as can be without lying over it, ahead
 * of it if there is room; the middle of the line when there is no such place. mm
 */
export const wordsAlong = (from: Point, to: Point, length: number, clear: Bounds): WordsAlong => {
  const whole = distance(from, to);
  const way = scale(subtract(to, from), 1 / whole);
  const angle = upright(Math.atan2(way.y, way.x));
  const half = scale(way, length / 2);
  const middle = between(from, to, 0.5);
  const steps = Math.max(0, Math.floor((whole - length) / STEP));
  const places = Array.from({ length: steps + 1 }, (_, step) => add(from, scale(way, length / 2 + step * STEP)));
  const cost = (at: Point): number => {
    const gaps = [subtract(at, half), at, add(at, half)].map((point) => outside(point, clear));
    if (Math.min(...gaps) < CLEAR) return Number.POSITIVE_INFINITY;
    return outside(at, clear) + (at.y > clear.minY ? AHEAD : 0);
  };
  const best = places.reduce((least, at) => (cost(at) < cost(least) ? at : least), middle);
  return { at: best, angle };
};
