import type { Point } from '../../geom/types';

/** An arc over the chord from the first point to the last. */
export interface ArcOver {
  /** mm; null where a straight line fits as well. */
  readonly radius: number | null;
  /** Farthest that any point lies from it, square to the chord, mm. */
  readonly deviation: number;
  /** Height of the arc at x, mm; beyond its chord too. */
  readonly at: (x: number) => number;
}

/** An arc of less rise than this is a straight line, mm. */
const NO_RISE = 1e-4;
const ROUNDS = 40;
/** Nothing beyond half a circle. */
const FULLEST = 0.999;

/**
 * The circle through the first and the last point that comes nearest to those between, by least squares. Beside the middle
 * of its chord by d it stands (m² − d²)·k/(√(1 − k²d²) + √(1 − k²m²)) over it, k = 1/R and m half the chord: elementary
 * geometry. An arc never sags: points that do are met by the straight line.
 * @param points at least two, by growing x
 * @throws RangeError for fewer, or out of order
 */
export const arcOver = (points: readonly Point[]): ArcOver => {
  const [first, last] = [points[0], points.at(-1)];
  if (first === undefined || last === undefined || !(last.x > first.x))
    throw new RangeError('Expected at least two points by growing x.');
  const chord = Math.hypot(last.x - first.x, last.y - first.y);
  const [cos, sin, half] = [(last.x - first.x) / chord, (last.y - first.y) / chord, chord / 2];
  const inner = points.slice(1, -1).map(({ x, y }) => ({
    beside: (x - first.x) * cos + (y - first.y) * sin - half,
    over: (y - first.y) * cos - (x - first.x) * sin,
  }));
  const perBend = (beside: number, k: number): number =>
    (half * half - beside * beside) / (Math.sqrt(1 - (k * beside) ** 2) + Math.sqrt(1 - (k * half) ** 2));
  let k = 0;
  for (let round = 0; round < ROUNDS; round++) {
    const each = inner.map(({ beside, over }) => ({ over, weight: perBend(beside, k) }));
    const squares = each.reduce((sum, { weight }) => sum + weight * weight, 0);
    const products = each.reduce((sum, { weight, over }) => sum + weight * over, 0);
    k = squares === 0 ? 0 : Math.max(0, Math.min(products / squares, FULLEST / half));
  }
  if (perBend(0, k) * k < NO_RISE) k = 0;
  const deviation = Math.max(0, ...inner.map(({ beside, over }) => Math.abs(over - k * perBend(beside, k))));
  if (k === 0) return { radius: null, deviation, at: (x) => first.y + ((x - first.x) * sin) / cos };
  const radius = 1 / k;
  const down = Math.sqrt(radius * radius - half * half);
  const centre = { x: first.x + cos * half + sin * down, y: first.y + sin * half - cos * down };
  return { radius, deviation, at: (x) => centre.y + Math.sqrt(Math.max(0, radius * radius - (x - centre.x) ** 2)) };
};
