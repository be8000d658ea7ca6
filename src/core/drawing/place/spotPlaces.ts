import type { Path, Point } from '../../geom/types';
import { SPOT } from './placeItems';

/** Between two numbers, mm of the picture. */
const APART = 2 * SPOT + 0.6;
/** A number on a line shorter than this would hide it. */
const SHORT = 3 * SPOT;
const SHARES = [0.5, 0.62, 0.38, 0.74, 0.26, 0.86, 0.14, 0.94, 0.06];

const endsOf = ({ start, segments }: Path): readonly [Point, Point] => [start, segments.at(-1)?.to ?? start];

const along = ({ start, segments }: Path, share: number): Point => {
  const points = [start, ...segments.map(({ to }) => to)];
  const lengths = segments.map(({ to }, k) => Math.hypot(to.x - (points[k]?.x ?? 0), to.y - (points[k]?.y ?? 0)));
  let left = share * lengths.reduce((sum, each) => sum + each, 0);
  for (const [k, length] of lengths.entries()) {
    const [from, to] = [points[k] ?? start, points[k + 1] ?? start];
    if (left <= length || k === lengths.length - 1) {
      const part = length === 0 ? 0 : left / length;
      return { x: from.x + (to.x - from.x) * part, y: from.y + (to.y - from.y) * part };
    }
    left -= length;
  }
  return start;
};

/** Places for a number: on its line, the middle first; beside a short one, out past its first end. */
const placesFor = (line: Path, centre: number): readonly Point[] => {
  const [from, to] = endsOf(line);
  if (Math.hypot(to.x - from.x, to.y - from.y) >= SHORT) return SHARES.map((share) => along(line, share));
  const outward = from.x < centre ? -1 : 1;
  return [1, 2, 3, 4].map((step) => ({ x: from.x + outward * (SPOT + 1 + (step - 1) * APART), y: from.y }));
};

/**
 * Where the number of each line stands in the picture, so that no two meet while there is room. lines: each as it is drawn
 * there; centre: x of the centreline; within: the picture.
 */
export const spotPlaces = (
  lines: readonly Path[],
  centre: number,
  within: { readonly width: number; readonly height: number },
): readonly Point[] => {
  const taken: Point[] = [];
  const room = ({ x, y }: Point): number =>
    Math.min(
      ...taken.map((other) => Math.hypot(other.x - x, other.y - y) - APART),
      x - SPOT,
      within.width - SPOT - x,
      y - SPOT,
      within.height - SPOT - y,
    );
  for (const line of lines) {
    const places = placesFor(line, centre);
    const free = places.find((place) => room(place) >= 0);
    // Without room the roomiest will do.
    const best = free ?? places.reduce((one, other) => (room(other) > room(one) ? other : one));
    taken.push(best);
  }
  return taken;
};
