import type { Path, Point } from '../geom/types';

/** Straight lines from point to point, open. */
export const polyline = (start: Point, ...rest: readonly Point[]): Path => ({
  start,
  segments: rest.map((to) => ({ kind: 'line', to })),
  closed: false,
});
