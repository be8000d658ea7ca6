import { fail, ok, type Result } from '../../result';
import { distance } from '../points';
import { COINCIDENT_MM } from '../tolerances';
import type { Path, Point, Segment } from '../types';
import { editBothSides, type LoopEdit } from './editBothSides';
import { filletOf } from './filletOf';
import { around, type Loop, nodeOf, type PathEdit, segmentOf } from './loop';
import { isSmooth } from './nodesOf';
import { splitSegment } from './splitSegment';

/** The largest radius that fits is told to so many halvings of the one that was asked for. */
const HALVINGS = 40;

/**
 * Corner `index` rounded by a true arc of a radius, mm, tangent to both of its sides, lines, arcs or curves. Its node is
 * gone, and two new ones stand where the arc begins and ends; a side that is used up wholly is gone too. When symmetric, the
 * partner is rounded as well.
 *
 * Codes: outline.radius (not more than 0), outline.noCorner (smooth already), outline.radiusLarge (with the largest that
 * fits), those of editBothSides.
 */
export function roundCorner(path: Path, index: number, radius: number, symmetric = false): Result<PathEdit> {
  if (!(radius > 0) || !Number.isFinite(radius))
    return fail('bridge.outline', 'outline.radius', 'A radius is more than 0.');
  const target = { kind: 'node', index } as const;
  const rounded = (size: number): Result<PathEdit> => editBothSides(path, symmetric, target, roundedBy(size));
  const whole = rounded(radius);
  if (whole.ok || whole.issues[0]?.code !== 'outline.radiusLarge') return whole;
  let [fits, tooLarge] = [0, radius];
  for (let step = 0; step < HALVINGS; step += 1) {
    const middle = (fits + tooLarge) / 2;
    if (rounded(middle).ok) fits = middle;
    else tooLarge = middle;
  }
  return fail(
    'bridge.outline',
    'outline.radiusLarge',
    `A radius of ${radius.toFixed(2)} mm does not fit on this corner: the largest that does is ${(Math.floor(fits * 100 + 1e-6) / 100).toFixed(2)} mm.`,
  );
}

const roundedBy =
  (radius: number): LoopEdit =>
  (loop, index) => {
    const last = around(index - 1, loop.nodes.length);
    const start = nodeOf(loop, last);
    const [into, out] = [segmentOf(loop, last), segmentOf(loop, index)];
    if (isSmooth(start, into, out))
      return fail(
        'bridge.outline',
        'outline.noCorner',
        `Node ${index + 1} is smooth already: only corners are rounded.`,
      );
    const fillet = last === index ? null : filletOf(start, into, out, radius);
    if (fillet === null)
      return fail('bridge.outline', 'outline.radiusLarge', `A radius of ${radius.toFixed(2)} mm does not fit here.`);
    const [before] = splitSegment(start, into, fillet.firstT);
    const [begins, after] = splitSegment(nodeOf(loop, index), out, fillet.secondT);
    const arc: Segment = { kind: 'arc', to: begins.to, centre: fillet.centre, clockwise: fillet.clockwise };
    return ok(withArcAt(loop, index, { before, arc, after, from: before.to, to: begins.to }));
  };

interface Rounding {
  readonly before: Segment;
  readonly arc: Segment;
  readonly after: Segment;
  readonly from: Point;
  readonly to: Point;
}

/** Puts the arc in place of the node; sides that are used up go, and their far nodes are the ends of the arc. */
function withArcAt(loop: Loop, index: number, { before, arc, after, from, to }: Rounding): Loop {
  const usedBefore = distance(nodeOf(loop, index - 1), from) <= COINCIDENT_MM;
  const usedAfter = distance(nodeOf(loop, index + 1), to) <= COINCIDENT_MM;
  const last = around(index - 1, loop.nodes.length);
  const nodes: Point[] = [];
  const segments: Segment[] = [];
  const origin: number[] = [];
  const push = (node: Point, segment: Segment, old: number): void => {
    nodes.push(node);
    segments.push(segment);
    origin.push(old);
  };
  for (const [at, node] of loop.nodes.entries()) {
    const old = loop.from[at] ?? -1;
    const own = loop.segments[at] as Segment;
    if (at === last) {
      if (!usedBefore) push(node, before, old);
      else push(node, arcTo(arc, usedAfter, nodeOf(loop, index + 1)), old);
    } else if (at === index) {
      if (!usedBefore) push(from, arcTo(arc, usedAfter, nodeOf(loop, index + 1)), -1);
      if (!usedAfter) push(to, after, -1);
    } else push(node, own, old);
  }
  return { nodes, segments, from: origin };
}

const arcTo = (arc: Segment, usedAfter: boolean, node: Point): Segment => (usedAfter ? { ...arc, to: node } : arc);
