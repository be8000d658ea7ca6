import { placePath } from './placePath';
import { add, rotate } from './points';
import { requirePath } from './requirePath';
import type { Path, Point } from './types';

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
  return placePath(path, (point) => add(rotate(point, angle), shift));
}
