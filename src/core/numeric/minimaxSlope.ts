/** Slopes whose worst misses differ by less than this, in the unit of y, serve equally. */
const EQUAL_WORST = 1e-12;

/**
 * The slope of the straight line with the least worst miss in y (Chebyshev's line), or null when all points lie at one
 * x. Exact: the worst miss, as a function of the slope, is convex and made of straight pieces that meet at the slopes
 * of pairs of points, so its least lies at one of them. Where a range of slopes serves equally, its middle.
 */
export function minimaxSlope(points: readonly { readonly x: number; readonly y: number }[]): number | null {
  const candidates = points.flatMap((a, i) =>
    points
      .slice(i + 1)
      .filter((b) => b.x !== a.x)
      .map((b) => {
        const slope = (b.y - a.y) / (b.x - a.x);
        const heights = points.map(({ x, y }) => y - slope * x);
        return { slope, range: Math.max(...heights) - Math.min(...heights) };
      }),
  );
  if (candidates.length === 0) return null;
  const least = Math.min(...candidates.map(({ range }) => range));
  const best = candidates.filter(({ range }) => range <= least + EQUAL_WORST).map(({ slope }) => slope);
  return (Math.min(...best) + Math.max(...best)) / 2;
}
