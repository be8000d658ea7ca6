import type { Point } from '../../src/core/geom/types';
import { circlesOf, type LinesOfPage, marksOf } from './deviations';

/** x, y and, for a circle, its radius, mm. */
export type Named = readonly [number, number] | readonly [number, number, number];

/** Marks by the cell of 1 mm that they lie in. */
const cellsOf = (marks: readonly Point[]): ReadonlyMap<string, readonly Point[]> => {
  const cells = new Map<string, Point[]>();
  for (const mark of marks) {
    const name = `${Math.round(mark.x)} ${Math.round(mark.y)}`;
    cells.set(name, [...(cells.get(name) ?? []), mark]);
  }
  return cells;
};

const AROUND = [-1, 0, 1];

/**
 * How far off the worst of these points is where they lie best on one of the pages, moved but not turned or scaled; null
 * when they lie on none within 0.1 mm. Every mark of a page is tried as the first of them.
 */
export const congruentOn = (pages: readonly LinesOfPage[], wanted: readonly Named[]): number | null => {
  const worst = pages.flatMap(({ paths }) => {
    const circles = circlesOf(paths);
    const cells = cellsOf(paths.flatMap(marksOf));
    const offBy = ([x, y, radius]: Named, dx: number, dy: number): number => {
      const at = { x: x + dx, y: y + dy };
      const far = (found: Point): number => Math.hypot(found.x - at.x, found.y - at.y);
      if (radius !== undefined)
        return Math.min(
          Number.POSITIVE_INFINITY,
          ...circles.map((circle) => Math.max(far(circle), Math.abs(circle.radius - radius))),
        );
      const near = AROUND.flatMap((i) =>
        AROUND.flatMap((j) => cells.get(`${Math.round(at.x) + i} ${Math.round(at.y) + j}`) ?? []),
      );
      return Math.min(Number.POSITIVE_INFINITY, ...near.map(far));
    };
    const [first, ...rest] = wanted;
    if (first === undefined) return [];
    const starts: readonly Point[] =
      first.length === 3
        ? circles.filter((circle) => Math.abs(circle.radius - first[2]) < 0.1)
        : [...cells.values()].flat();
    return starts.flatMap((start) => {
      const [dx, dy] = [start.x - first[0], start.y - first[1]];
      let most = 0;
      for (const point of rest) {
        most = Math.max(most, offBy(point, dx, dy));
        if (most > 0.1) return [];
      }
      return [most];
    });
  });
  return worst.length === 0 ? null : Math.min(...worst);
};
