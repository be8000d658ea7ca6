import { closedSegments, type StartedSegment } from '../closedSegments';
import type { Path, Point } from '../types';
import { segmentPoint } from './segmentPoint';

/** Places tried on each segment before the best are looked at closely. */
const TRIED = 24;
/** How many of the best are looked at closely. */
const BEST = 3;
/** Each step leaves 0.618 of the stretch: 40 of them bring a segment of 500 mm to 2e-6 mm along, and what is least there far closer. */
const STEPS = 40;
const GOLDEN = (Math.sqrt(5) - 1) / 2;

interface Place {
  readonly side: StartedSegment;
  readonly t: number;
  readonly value: number;
}

/** A least value between t − 1/TRIED and t + 1/TRIED, by golden sections. */
const closer = ({ side, t, value }: Place, measure: (point: Point) => number): { at: Point; value: number } => {
  const at = (share: number): Point => segmentPoint(side.start, side.segment, share);
  let low = Math.max(0, t - 1 / TRIED);
  let high = Math.min(1, t + 1 / TRIED);
  for (let step = 0; step < STEPS; step += 1) {
    const span = (high - low) * GOLDEN;
    if (measure(at(high - span)) < measure(at(low + span))) high = low + span;
    else low = high - span;
  }
  const found = at((low + high) / 2);
  const least = measure(found);
  return least < value ? { at: found, value: least } : { at: at(t), value };
};

/** The point of a path at which a measure of points is least, and that measure; it must vary smoothly along the path. */
export const leastOnPath = (
  path: Path,
  measure: (point: Point) => number,
): { readonly at: Point; readonly value: number } => {
  const places = closedSegments(path).flatMap((side) =>
    Array.from({ length: TRIED + 1 }, (_, index): Place => {
      const t = index / TRIED;
      return { side, t, value: measure(segmentPoint(side.start, side.segment, t)) };
    }),
  );
  const best = places.sort((one, other) => one.value - other.value).slice(0, BEST);
  const found = best.map((place) => closer(place, measure)).sort((one, other) => one.value - other.value);
  return found[0] ?? { at: path.start, value: measure(path.start) };
};
