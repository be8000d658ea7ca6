import { mirrorPath } from '../../src/core/geom/mirrorPath';
import { transformPath } from '../../src/core/geom/transformPath';
import type { Path, Point, Segment } from '../../src/core/geom/types';
import { seededRandom } from '../../src/core/numeric/seededRandom';

/** An outline and how far to offset it, mm. The figures that an offset must meet come from other programs. */
export interface OffsetCase {
  readonly name: string;
  readonly path: Path;
  readonly distance: number;
}

const SEED = 20_26;
const random = seededRandom(SEED);
const within = (low: number, high: number): number => low + (high - low) * random.uniform();

const line = (x: number, y: number): Segment => ({ kind: 'line', to: { x, y } });
const cubic = (x1: number, y1: number, x2: number, y2: number, x: number, y: number): Segment => ({
  kind: 'cubic',
  c1: { x: x1, y: y1 },
  c2: { x: x2, y: y2 },
  to: { x, y },
});
const arc = (cx: number, cy: number, x: number, y: number, clockwise = true): Segment => ({
  kind: 'arc',
  centre: { x: cx, y: cy },
  to: { x, y },
  clockwise,
});
const closed = (x: number, y: number, segments: readonly Segment[]): Path => ({
  start: { x, y },
  segments,
  closed: true,
});

/** A slab with one rounded end, one square end with a rounded corner, and a belly of two S-curves. */
function bellied(): Path {
  const [length, height, belly, r] = [within(50, 80), within(12, 16), within(6, 14), within(2, 5)];
  return closed(-length, -height, [
    line(length, -height),
    arc(length, 0, length, height),
    cubic(length / 2, height, length / 2, height + belly, 0, height + belly),
    cubic(-length / 2, height + belly, -length / 2, height, -length, height),
    line(-length - 10, height),
    line(-length - 10, -height + r),
    arc(-length - 10 + r, -height + r, -length - 10 + r, -height),
  ]);
}

/** Points round about, joined by turns by arcs that bulge out or in, cubics and lines. */
function wavy(size: number): Path {
  const count = 6 + 3 * Math.floor(within(0, 3));
  const points = Array.from({ length: count }, (_, index): Point => {
    const angle = (2 * Math.PI * (index + within(-0.2, 0.2))) / count;
    return { x: 1.6 * size * Math.cos(angle) * within(0.8, 1.2), y: size * Math.sin(angle) * within(0.8, 1.2) };
  });
  const start = points[0] as Point;
  const segments = points.map((from, index): Segment => {
    const to = points[(index + 1) % count] as Point;
    const [dx, dy] = [to.x - from.x, to.y - from.y];
    if (index % 3 === 0) {
      // A centre at least the chord away to one side keeps the arc flat enough not to reach its neighbours.
      const [side, away] = [random.uniform() < 0.5 ? 1 : -1, within(1, 2)];
      const [cx, cy] = [from.x + dx / 2 - side * away * dy, from.y + dy / 2 + side * away * dx];
      return arc(cx, cy, to.x, to.y, side > 0);
    }
    if (index % 3 === 1) return line(to.x, to.y);
    const [a, b] = [within(-0.15, 0.15), within(-0.15, 0.15)];
    return cubic(
      from.x + dx / 3 - a * dy,
      from.y + dy / 3 + a * dx,
      to.x - dx / 3 - b * dy,
      to.y - dy / 3 + b * dx,
      to.x,
      to.y,
    );
  });
  return { start, segments, closed: true };
}

/** A star-shaped polygon: with equal radii convex, else mostly not. */
function polygon(unevenness: number): Path {
  const count = 5 + Math.floor(within(0, 8));
  const [first, ...rest] = Array.from({ length: count }, (_, index): Point => {
    const angle = (2 * Math.PI * index) / count;
    const radius = 40 * (1 + unevenness * within(-1, 1));
    return { x: radius * Math.cos(angle), y: radius * Math.sin(angle) };
  });
  return closed(
    first?.x ?? 0,
    first?.y ?? 0,
    rest.map(({ x, y }) => line(x, y)),
  );
}

/** Two round ends with a waist of two cubics: shrunk by more than half of the waist it falls in two. */
function waisted(waist: number): Path {
  const [half, r] = [within(25, 40), within(10, 14)];
  return closed(-half, -r, [
    cubic(-half / 2, -r, -half / 2, -waist, 0, -waist),
    cubic(half / 2, -waist, half / 2, -r, half, -r),
    arc(half, 0, half, r),
    cubic(half / 2, r, half / 2, waist, 0, waist),
    cubic(-half / 2, waist, -half / 2, r, -half, r),
    arc(-half, 0, -half, -r),
  ]);
}

/** A ring with a gap of twice `gap`: grown by more than the gap it closes round a hole. */
function horseshoe(gap: number): Path {
  const [outer, inner] = [within(28, 34), within(12, 18)];
  const outerX = Math.sqrt(outer ** 2 - gap ** 2);
  const innerX = Math.sqrt(inner ** 2 - gap ** 2);
  return closed(outerX, gap, [arc(0, 0, outerX, -gap), line(innerX, -gap), arc(0, 0, innerX, gap, false)]);
}

/** Turned, moved, and every second one mirrored, so that it runs the other way. */
function placed(path: Path, index: number): Path {
  const moved = transformPath(path, within(-Math.PI, Math.PI), { x: within(-100, 100), y: within(-300, 700) });
  return index % 2 === 0 ? moved : mirrorPath(moved);
}

const made: [string, number, () => [Path, number]][] = [
  ['bellied', 12, () => [bellied(), within(-9, 6)]],
  ['wavy', 14, () => [wavy(35), within(-8, 8)]],
  ['uneven polygon', 6, () => [polygon(0.4), within(-6, 6)]],
  ['even polygon', 4, () => [polygon(0), within(-6, 6)]],
  ['waisted', 6, () => [waisted(within(2, 4)), -within(4.5, 8)]],
  ['horseshoe', 4, () => [horseshoe(within(1, 3)), within(3.5, 6)]],
  ['vanishing', 4, () => [wavy(9), -within(9.8, 10.6)]],
];

/** Fifty outlines from one seed; the same on every run. */
export const OFFSET_CASES: readonly OffsetCase[] = made
  .flatMap(([kind, count, make]) => Array.from({ length: count }, (_, index) => ({ kind, index, make })))
  .map(({ kind, index, make }) => {
    const [path, distance] = make();
    return { name: `${kind} ${index + 1}`, path: placed(path, index), distance };
  });
