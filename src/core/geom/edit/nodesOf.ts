import { closedSegments } from '../closedSegments';
import { cross, dot } from '../points';
import { segmentDirections } from '../snap/segmentDirections';
import type { Path, Point, Segment } from '../types';

export type NodeJoin = 'corner' | 'smooth';

/** A place where two segments of a closed outline meet. */
export interface OutlineNode {
  /** From 0; segment `index` starts here. */
  readonly index: number;
  readonly at: Point;
  readonly join: NodeJoin;
  /** Handles of the curves that arrive and leave here; null beside a line or an arc. */
  readonly before: Point | null;
  readonly after: Point | null;
}

/**
 * Directions that differ by less are one, radians (½°): coordinates read from a file are rounded so, and no one feels a kink
 * as small. Common practice, no source.
 */
const SMOOTH_ANGLE = Math.PI / 360;

/** Whether the way from one segment into the next is smooth: it turns by at most half a degree. */
export function isSmooth(start: Point, segment: Segment, next: Segment): boolean {
  const { arriving } = segmentDirections(start, segment);
  const { leaving } = segmentDirections(segment.to, next);
  return Math.abs(Math.atan2(cross(arriving, leaving), dot(arriving, leaving))) <= SMOOTH_ANGLE;
}

/** Paths never change, and a drag asks for the nodes of the same one at many places. */
const known = new WeakMap<Path, readonly OutlineNode[]>();

/** The nodes of a closed path in order, the closing line counted as a segment. Smooth is told from the shape alone. */
export function nodesOf(path: Path): readonly OutlineNode[] {
  const found = known.get(path);
  if (found !== undefined) return found;
  const sides = closedSegments(path);
  const nodes = sides.map(({ start, segment }, index): OutlineNode => {
    const before = sides.at(index - 1);
    return {
      index,
      at: start,
      join: before === undefined || isSmooth(before.start, before.segment, segment) ? 'smooth' : 'corner',
      before: before?.segment.kind === 'cubic' ? before.segment.c2 : null,
      after: segment.kind === 'cubic' ? segment.c1 : null,
    };
  });
  known.set(path, nodes);
  return nodes;
}
