import type { Path, Point, Segment } from '../core/geom/types';

/** The same path from its end to its start. A closed path must come back to its start by itself. */
export const reversePath = ({ start, segments, closed }: Path): Path => {
  const ends: Point[] = [start, ...segments.map(({ to }) => to)];
  const back = segments.map((segment, index): Segment => {
    const to = ends[index] ?? start;
    if (segment.kind === 'line') return { kind: 'line', to };
    if (segment.kind === 'cubic') return { kind: 'cubic', c1: segment.c2, c2: segment.c1, to };
    return { ...segment, to, clockwise: !segment.clockwise };
  });
  return { start: ends.at(-1) ?? start, segments: back.reverse(), closed };
};
