import { failed, type Issue, issue, ok, type Result } from '../result';
import { distance } from './points';
import { ARC_RADIUS_MM, COINCIDENT_MM } from './tolerances';
import type { Arc, Path, Point, Segment } from './types';

/**
 * The path itself when its numbers can be worked with, or everything that is wrong with it.
 *
 * Codes: path.notFinite (a coordinate is not a finite number), path.arcRadii (start and end of an arc lie at distances
 * from its centre that differ by more than 1e-6 mm), path.arcEnds (an arc ends where it starts: a circle is two arcs).
 * Paths of the issues: "start", "segments.2.centre".
 */
export function validatePath(path: Path): Result<Path> {
  if (valid.has(path)) return ok(path);
  const issues: Issue[] = [...pointIssues('start', path.start)];
  let start = path.start;
  for (const [index, segment] of path.segments.entries()) {
    const field = `segments.${index}`;
    const own = segmentPoints(segment).flatMap(([name, point]) => pointIssues(`${field}.${name}`, point));
    if (own.length === 0 && segment.kind === 'arc' && isFinitePoint(start))
      own.push(...arcIssues(field, start, segment));
    issues.push(...own);
    start = segment.to;
  }
  if (issues.length > 0) return failed(issues);
  valid.add(path);
  return ok(path);
}

/** Paths that were found valid: they never change, and several functions ask about the same one. */
const valid = new WeakSet<Path>();

const isFinitePoint = (point: Point): boolean => Number.isFinite(point.x) && Number.isFinite(point.y);

function pointIssues(field: string, point: Point): Issue[] {
  if (isFinitePoint(point)) return [];
  return [issue(field, 'path.notFinite', `Expected finite coordinates, got ${point.x}, ${point.y}.`)];
}

function segmentPoints(segment: Segment): [string, Point][] {
  switch (segment.kind) {
    case 'line':
      return [['to', segment.to]];
    case 'arc':
      return [
        ['to', segment.to],
        ['centre', segment.centre],
      ];
    case 'cubic':
      return [
        ['c1', segment.c1],
        ['c2', segment.c2],
        ['to', segment.to],
      ];
  }
}

function arcIssues(field: string, start: Point, arc: Arc): Issue[] {
  if (distance(start, arc.to) <= COINCIDENT_MM)
    return [issue(field, 'path.arcEnds', 'An arc must end away from its start: draw a full circle as two arcs.')];
  const difference = Math.abs(distance(start, arc.centre) - distance(arc.to, arc.centre));
  if (difference <= ARC_RADIUS_MM) return [];
  const message = `Both ends of an arc must be equally far from its centre: they differ by ${difference.toPrecision(3)} mm.`;
  return [issue(field, 'path.arcRadii', message)];
}
