import { fail, ok, type Result } from '../../result';
import { arcGeometry } from '../arcGeometry';
import { closedSegments } from '../closedSegments';
import type { Path, Point, Segment } from '../types';
import { validatePath } from '../validatePath';
import { arcOfRadius } from './arcBetween';

/**
 * A closed outline while it is edited. Node i is where segment i starts, and segment i ends at node i + 1, the last one at
 * node 0: the nodes rule, and the `to` of a segment follows when the path is made of it again.
 */
export interface Loop {
  readonly nodes: readonly Point[];
  readonly segments: readonly Segment[];
  /** Which node of the outline each node was before the edit; −1 for a new one. */
  readonly from: readonly number[];
}

/** What an edit made of an outline. */
export interface PathEdit {
  readonly path: Path;
  /** Where each node went, by its number from 0; null for one that is gone. */
  readonly went: readonly (number | null)[];
  /** Numbers of the nodes that were not there before, in growing order. */
  readonly added: readonly number[];
}

/**
 * The nodes and segments of a closed path, its closing line among them. Codes: path.open and those of validatePath.
 */
export function loopOf(path: Path): Result<Loop> {
  const valid = validatePath(path);
  if (!valid.ok) return valid;
  if (!path.closed) return fail('closed', 'path.open', 'Expected a closed outline: an open line has no inside.');
  const sides = closedSegments(path);
  const nodes = sides.map(({ start }) => start);
  const segments = sides.map(({ start, segment }, index) =>
    index === sides.length - 1 ? closing(start, segment, path.start) : segment,
  );
  return ok({ nodes, segments, from: nodes.map((_, index) => index) });
}

/** The last segment, brought to the start exactly where it ends within rounding of it. */
function closing(start: Point, segment: Segment, to: Point): Segment {
  if (segment.to.x === to.x && segment.to.y === to.y) return segment;
  if (segment.kind !== 'arc') return { ...segment, to };
  const { radius, sweep } = arcGeometry(start, segment);
  return arcOfRadius(start, to, radius, segment.clockwise, Math.abs(sweep) > Math.PI);
}

/** The path of a loop, when it can be worked with. Codes: those of validatePath. */
export function pathOf({ nodes, segments }: Loop): Result<Path> {
  const [start = { x: 0, y: 0 }] = nodes;
  return validatePath({
    start,
    segments: segments.map((segment, index) => ({ ...segment, to: nodes[index + 1] ?? start })),
    closed: true,
  });
}

/** The path of a loop with what became of its nodes; `before` is how many there were. Codes: those of validatePath. */
export function editOf(loop: Loop, before: number): Result<PathEdit> {
  const path = pathOf(loop);
  if (!path.ok) return path;
  const went: (number | null)[] = Array.from({ length: before }, () => null);
  const added: number[] = [];
  for (const [index, old] of loop.from.entries()) {
    if (old < 0) added.push(index);
    else went[old] = index;
  }
  return ok({ path: path.value, went, added });
}

/** `index` counted around a loop of so many, from 0. */
export const around = (index: number, count: number): number => ((index % count) + count) % count;

/** Whether a loop has a node, or a segment, of this number. Code: outline.noNode. */
export function knows(loop: Loop, index: number, what: 'node' | 'segment'): Result<Loop> {
  const count = loop.nodes.length;
  if (Number.isInteger(index) && index >= 0 && index < count) return ok(loop);
  return fail('bridge.outline', 'outline.noNode', `This outline has no ${what} ${index + 1}: it has ${count}.`);
}

/** Node `index` of a loop, counted around it. */
export const nodeOf = ({ nodes }: Loop, index: number): Point => nodes[around(index, nodes.length)] as Point;

/** Segment `index` of a loop, counted around it. */
export const segmentOf = ({ segments }: Loop, index: number): Segment =>
  segments[around(index, segments.length)] as Segment;
