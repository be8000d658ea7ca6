import type { Path, Point, Segment } from './types';

type Place = (point: Point) => Point;

const placeSegment = (segment: Segment, place: Place): Segment => {
  const to = place(segment.to);
  switch (segment.kind) {
    case 'line':
      return { ...segment, to };
    case 'arc':
      return { ...segment, to, centre: place(segment.centre) };
    case 'cubic':
      return { ...segment, to, c1: place(segment.c1), c2: place(segment.c2) };
  }
};

/** The path with each of its points placed anew; an arc stays true only when all distances change alike. */
export const placePath = (path: Path, place: Place): Path => ({
  ...path,
  start: place(path.start),
  segments: path.segments.map((segment) => placeSegment(segment, place)),
});
