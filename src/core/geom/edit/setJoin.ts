import { fail, ok, type Result } from '../../result';
import { add, between, distance, scale, subtract } from '../points';
import { segmentDirections } from '../snap/segmentDirections';
import { COINCIDENT_MM } from '../tolerances';
import type { Path, Point, Segment } from '../types';
import { editBothSides } from './editBothSides';
import { around, type Loop, nodeOf, segmentOf } from './loop';
import { isSmooth, type NodeJoin } from './nodesOf';

/** A handle of a curve is laid this share of its chord out. */
const THIRD = 1 / 3;

/**
 * Node `index` made a corner (the handles of its curves laid to a third of their chords) or smooth (the handles of two
 * curves turned onto the tangent between theirs, that of one onto the line or arc beside it; their lengths stay). When
 * symmetric, the partner too.
 *
 * Codes: outline.noCurve (nothing there that could be turned), those of editBothSides.
 */
export function setJoin(path: Path, index: number, join: NodeJoin, symmetric = false): Result<Path> {
  const make = join === 'corner' ? madeCorner : madeSmooth;
  const edited = editBothSides(path, symmetric, { kind: 'node', index }, make);
  return edited.ok ? ok(edited.value.path) : edited;
}

const noCurve = (message: string): Result<Loop> => fail('bridge.outline', 'outline.noCurve', message);

function madeCorner(loop: Loop, index: number): Result<Loop> {
  const last = around(index - 1, loop.nodes.length);
  const [into, out] = [segmentOf(loop, last), segmentOf(loop, index)];
  const [before, node, after] = [nodeOf(loop, last), nodeOf(loop, index), nodeOf(loop, index + 1)];
  if (into.kind !== 'cubic' && out.kind !== 'cubic') {
    if (!isSmooth(before, into, out)) return ok(loop);
    return noCurve('Both sides run on into one another here, and neither is a curve. Move the node to make a corner.');
  }
  const segments = [...loop.segments];
  if (into.kind === 'cubic') segments[last] = { ...into, c2: between(node, before, THIRD) };
  const leaving = segments[index];
  if (leaving?.kind === 'cubic') segments[index] = { ...leaving, c1: between(node, after, THIRD) };
  return ok({ ...loop, segments });
}

function madeSmooth(loop: Loop, index: number): Result<Loop> {
  const last = around(index - 1, loop.nodes.length);
  const [into, out] = [segmentOf(loop, last), segmentOf(loop, index)];
  const [before, node, after] = [nodeOf(loop, last), nodeOf(loop, index), nodeOf(loop, index + 1)];
  if (into.kind !== 'cubic' && out.kind !== 'cubic') {
    if (isSmooth(before, into, out)) return ok(loop);
    return noCurve('Neither side is a curve here. Make one of them a curve, or round the corner with a radius.');
  }
  const arriving = unit(segmentDirections(before, into).arriving);
  const leaving = unit(segmentDirections(node, out).leaving);
  const way =
    into.kind !== 'cubic' ? arriving : out.kind !== 'cubic' ? leaving : commonWay(arriving, leaving, before, after);
  const segments: Segment[] = [...loop.segments];
  if (into.kind === 'cubic') segments[last] = { ...into, c2: add(node, scale(way, -reachOf(into.c2, node, before))) };
  const leaver = segments[index];
  if (leaver?.kind === 'cubic')
    segments[index] = { ...leaver, c1: add(node, scale(way, reachOf(leaver.c1, node, after))) };
  return ok({ ...loop, segments });
}

/** Half-way between both ways; where they are opposite, along the line between the neighbours. */
function commonWay(arriving: Point, leaving: Point, before: Point, after: Point): Point {
  const sum = add(arriving, leaving);
  if (Math.hypot(sum.x, sum.y) > COINCIDENT_MM) return unit(sum);
  const past = subtract(after, before);
  return distance(after, before) > COINCIDENT_MM ? unit(past) : { x: -arriving.y, y: arriving.x };
}

/** The length of a handle; a third of the chord where it has none. */
const reachOf = (handle: Point, node: Point, end: Point): number => {
  const reach = distance(handle, node);
  return reach > COINCIDENT_MM ? reach : distance(end, node) * THIRD;
};

const unit = (way: Point): Point => scale(way, 1 / Math.hypot(way.x, way.y));
