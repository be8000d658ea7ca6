import type { Point } from '../../geom/types';

/** A straight rule laid on a row of points and pressed at x = 0: where it touches, and how it lies. */
export interface RestingLine {
  /** Height at x = 0 and rise per mm toward + x. */
  readonly height: number;
  readonly slope: number;
  /** The outermost places where it touches, from − to +; the same twice where it rests on one point and rocks. */
  readonly from: number;
  readonly to: number;
}

/** Heights that differ by less than this count as in line, mm: a millionth of a feeler gauge. */
const IN_LINE = 1e-9;

const above = (from: Point, to: Point, point: Point): number =>
  point.y - (from.y + ((to.y - from.y) * (point.x - from.x)) / (to.x - from.x));

const slopeOf = (from: Point, to: Point): number => (to.y - from.y) / (to.x - from.x);

/** The points that a string drawn tight over all of them would touch, those in line with their neighbours left out. */
const upperHull = (points: readonly Point[]): readonly Point[] => {
  const hull: Point[] = [];
  for (const point of points) {
    for (;;) {
      const [before, last] = [hull.at(-2), hull.at(-1)];
      if (before === undefined || last === undefined || above(before, point, last) > IN_LINE) break;
      hull.pop();
    }
    hull.push(point);
  }
  return hull;
};

/**
 * The line that lies on or above every point and lowest at x = 0. Where that is a single point the line can rock: it is
 * held so that the gaps at both ends are alike, as near as it lies on the points.
 * @param points by growing x, from below 0 to above it, y upward
 * @throws RangeError when there is no point on one of the sides
 */
export const restingLine = (points: readonly Point[]): RestingLine => {
  const [first, last] = [points[0], points.at(-1)];
  if (first === undefined || last === undefined || !(first.x < 0 && last.x > 0))
    throw new RangeError('Expected points on both sides of the place that is pressed.');
  const hull = upperHull(points);
  const after = hull.findIndex(({ x }) => x >= 0);
  const [left, right] = [hull[after - 1] ?? first, hull[after] ?? last];
  const beyond = hull[after + 1];
  if (right.x > 0 || beyond === undefined) {
    const slope = slopeOf(left, right);
    return { height: left.y - slope * left.x, slope, from: left.x, to: right.x };
  }
  const [steepest, flattest] = [slopeOf(left, right), slopeOf(right, beyond)];
  const slope = Math.max(flattest, Math.min(steepest, slopeOf(first, last)));
  return { height: right.y, slope, from: right.x, to: right.x };
};
