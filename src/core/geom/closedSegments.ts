import { distance } from './points';
import { COINCIDENT_MM } from './tolerances';
import type { Path, Point, Segment } from './types';

/** A segment with the point that it leaves. */
export interface StartedSegment {
  readonly start: Point;
  readonly segment: Segment;
}

/** Paths never change, and one that is measured is measured at many places. */
const known = new WeakMap<Path, readonly StartedSegment[]>();

/** The segments of a path with their starts; a closed path that does not come back by itself ends with the implied line. */
export function closedSegments(path: Path): readonly StartedSegment[] {
  const found = known.get(path);
  if (found !== undefined) return found;
  const started: StartedSegment[] = [];
  known.set(path, started);
  let start = path.start;
  for (const segment of path.segments) {
    started.push({ start, segment });
    start = segment.to;
  }
  if (path.closed && distance(start, path.start) > COINCIDENT_MM)
    started.push({ start, segment: { kind: 'line', to: path.start } });
  return started;
}
