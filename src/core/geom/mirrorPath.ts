import { requirePath } from './requirePath';
import type { Path, Point, Segment } from './types';

/**
 * The path on the other side of the y axis (x → −x), in the same order of points; an arc turns the other way, and so
 * does the whole path: its signed area changes sign. Its own inverse.
 *
 * @throws RangeError when the path is not valid
 */
export function mirrorPath(path: Path): Path {
  requirePath(path);
  return { ...path, start: mirrorPoint(path.start), segments: path.segments.map(mirrorSegment) };
}

/** Taken from 0, so that no −0 arises on the centreline. */
const mirrorPoint = (point: Point): Point => ({ x: 0 - point.x, y: point.y });

function mirrorSegment(segment: Segment): Segment {
  const to = mirrorPoint(segment.to);
  switch (segment.kind) {
    case 'line':
      return { ...segment, to };
    case 'arc':
      return { ...segment, to, centre: mirrorPoint(segment.centre), clockwise: !segment.clockwise };
    case 'cubic':
      return { ...segment, to, c1: mirrorPoint(segment.c1), c2: mirrorPoint(segment.c2) };
  }
}
