import { closedSegments } from '../../../core/geom/closedSegments';
import type { Path, Point } from '../../../core/geom/types';
import { fail, ok, type Result } from '../../../core/result';

/** New places for some nodes of an outline, each from where it lies now. Code outline.noNode. */
export function newPlaces<To>(
  path: Path,
  wanted: Iterable<readonly [number, To]>,
  place: (at: Point, to: To) => Point,
): Result<ReadonlyMap<number, Point>> {
  const nodes = closedSegments(path);
  const places = new Map<number, Point>();
  for (const [index, to] of wanted) {
    const at = nodes[index]?.start;
    if (at === undefined)
      return fail('bridge.outline', 'outline.noNode', `This outline has no node ${index + 1}: it has ${nodes.length}.`);
    places.set(index, place(at, to));
  }
  return ok(places);
}
