import { add, rotate } from './points';
import { requirePath } from './requirePath';
import type { Path, Point, Segment } from './types';

/**
 * The path turned about the origin by `angle` (radians, + carries +x toward +y), then moved by `shift` (mm). Shape and
 * direction stay.
 *
 * @throws RangeError when the path is not valid, or the angle or shift is not finite
 */
export function transformPath(path: Path, angle: number, shift: Point): Path {
  requirePath(path);
  if (!Number.isFinite(angle) || !Number.isFinite(shift.x) || !Number.isFinite(shift.y))
    throw new RangeError(`Expected a finite turn and shift, got ${angle} and ${shift.x}, ${shift.y}.`);
  const place = (point: Point): Point => add(rotate(point, angle), shift);
  return { ...path, start: place(path.start), segments: path.segments.map((segment) => placeSegment(segment, place)) };
}

function placeSegment(segment: Segment, place: (point: Point) => Point): Segment {
  const to = place(segment.to);
  switch (segment.kind) {
    case 'line':
      return { ...segment, to };
    case 'arc':
      return { ...segment, to, centre: place(segment.centre) };
    case 'cubic':
      return { ...segment, to, c1: place(segment.c1), c2: place(segment.c2) };
  }
}
