import { add } from '../points';
import type { Path, Point, Segment } from '../types';

/** A path moved as it is, mm: coordinates that the move does not touch stay as they are, bit for bit. */
export const shiftPath = (path: Path, by: Point): Path => ({
  ...path,
  start: add(path.start, by),
  segments: path.segments.map((segment) => shifted(segment, by)),
});

function shifted(segment: Segment, by: Point): Segment {
  const to = add(segment.to, by);
  switch (segment.kind) {
    case 'line':
      return { ...segment, to };
    case 'arc':
      return { ...segment, to, centre: add(segment.centre, by) };
    case 'cubic':
      return { ...segment, to, c1: add(segment.c1, by), c2: add(segment.c2, by) };
  }
}
