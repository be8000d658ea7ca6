import { fail, ok, type Result } from '../../result';
import { pathBounds } from '../pathBounds';
import type { Path } from '../types';
import { validatePath } from '../validatePath';

/** The longest step aside that makes sense at a bench, mm; six times the length of a bridge, no source. */
const MOST_DISTANCE_MM = 1000;

/** The largest coordinate that an outline may have, mm: ten metres, where a unit of 10⁻⁶ mm is still exact. */
const MOST_COORDINATE_MM = 10_000;

/** The path itself when it is closed and of a size and distance to work with; see offsetPath for the codes. */
export function checkOutline(path: Path, distance: number): Result<Path> {
  const valid = validatePath(path);
  if (!valid.ok) return valid;
  if (!Number.isFinite(distance) || Math.abs(distance) > MOST_DISTANCE_MM)
    return fail(
      'distance',
      'offset.distance',
      `Expected a distance within −${MOST_DISTANCE_MM} to ${MOST_DISTANCE_MM} mm, got ${distance}.`,
    );
  if (!path.closed) return fail('closed', 'path.open', 'Expected a closed outline: an open path has no inside.');
  const { minX, minY, maxX, maxY } = pathBounds(path);
  if (Math.max(-minX, -minY, maxX, maxY) > MOST_COORDINATE_MM)
    return fail('', 'path.tooLarge', `Expected an outline within ${MOST_COORDINATE_MM} mm of the origin.`);
  return ok(path);
}
