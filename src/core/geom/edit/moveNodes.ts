import { fail, type Result } from '../../result';
import { arcGeometry } from '../arcGeometry';
import { add, cross, distance, dot, rotate, subtract } from '../points';
import { segmentDirections } from '../snap/segmentDirections';
import { COINCIDENT_MM } from '../tolerances';
import type { Arc, Path, Point, Segment } from '../types';
import { arcOfRadius, arcOfSagitta } from './arcBetween';
import { unpaired } from './editBothSides';
import { around, knows, type Loop, loopOf, nodeOf, pathOf, segmentOf } from './loop';
import { isSmooth } from './nodesOf';
import { mirrorHalf, mirrorPoint, pairingOf, partnerNode, SAME_MM } from './pairing';

/** Two ways that differ by less are one, mm: rounding alone. */
const ALIKE_MM = 1e-9;

/** Where nodes are to go, by their numbers from 0. */
export type NodePlaces = ReadonlyMap<number, Point>;

/**
 * Nodes moved to new places, mm. Handles of curves go along with their node; beside a line or an arc a handle that was
 * smooth turns with it. An arc with one end moved keeps its radius while the ends are near enough, else its sagitta's share
 * of the chord; with both ends moved alike it goes along. When symmetric, partners do the same mirrored, of two partners
 * the one that comes first counts, and nodes on the centreline move only along it.
 *
 * Codes: outline.noNode, outline.unpaired, outline.place (not finite), outline.onNode (an arc would shrink to nothing),
 * path.open, those of validatePath.
 */
export function moveNodes(path: Path, places: NodePlaces, symmetric = false): Result<Path> {
  const made = loopOf(path);
  if (!made.ok) return made;
  const loop = made.value;
  for (const [index, at] of places) {
    const known = knows(loop, index, 'node');
    if (!known.ok) return known;
    if (!Number.isFinite(at.x) || !Number.isFinite(at.y))
      return fail('bridge.outline', 'outline.place', `Expected a place for node ${index + 1}, got ${at.x}, ${at.y}.`);
  }
  const [master] = places.keys();
  if (master === undefined) return pathOf(loop);
  if (!symmetric) return finished(loop, moved(loop, places));
  const pairing = pairingOf(loop, SAME_MM);
  if (pairing === null) return unpaired();
  const both = moved(loop, onBothSides(loop, pairing, places));
  return finished(loop, mirrorHalf(both, pairing, masterOf(loop, pairing, places)));
}

/** The first node moved that is not on the centreline tells which half is copied. */
function masterOf(loop: Loop, pairing: number, places: NodePlaces): number {
  for (const index of places.keys()) if (partnerNode(loop, pairing, index) !== index) return 2 * index;
  return 0;
}

function onBothSides(loop: Loop, pairing: number, places: NodePlaces): NodePlaces {
  const all = new Map<number, Point>();
  for (const [index, at] of places) {
    const partner = partnerNode(loop, pairing, index);
    if (all.has(index)) continue;
    all.set(index, partner === index ? { x: 0, y: at.y } : at);
    if (partner !== index) all.set(partner, mirrorPoint(at));
  }
  return all;
}

function finished(before: Loop, after: Loop): Result<Path> {
  for (const [index, segment] of after.segments.entries())
    if (segment.kind === 'arc' && distance(nodeOf(after, index), nodeOf(after, index + 1)) <= COINCIDENT_MM)
      return fail(
        'bridge.outline',
        'outline.onNode',
        `Nodes ${index + 1} and ${around(index + 1, before.nodes.length) + 1} are the ends of an arc and stay apart.`,
      );
  return pathOf(after);
}

function moved(loop: Loop, places: NodePlaces): Loop {
  const to: Loop = { ...loop, nodes: loop.nodes.map((node, index) => places.get(index) ?? node) };
  const touched = (index: number): boolean => places.has(index) || places.has(around(index + 1, to.nodes.length));
  const segments = loop.segments.map((segment, index) => {
    if (!touched(index)) return segment;
    return movedSegment(
      segment,
      nodeOf(loop, index),
      nodeOf(loop, index + 1),
      nodeOf(to, index),
      nodeOf(to, index + 1),
    );
  });
  return keptSmooth(loop, { ...to, segments }, touched);
}

function movedSegment(segment: Segment, start: Point, end: Point, toStart: Point, toEnd: Point): Segment {
  switch (segment.kind) {
    case 'line':
      return { kind: 'line', to: toEnd };
    case 'cubic':
      return {
        kind: 'cubic',
        c1: add(segment.c1, subtract(toStart, start)),
        c2: add(segment.c2, subtract(toEnd, end)),
        to: toEnd,
      };
    case 'arc':
      return movedArc(segment, start, end, toStart, toEnd);
  }
}

function movedArc(arc: Arc, start: Point, end: Point, toStart: Point, toEnd: Point): Arc {
  const by = subtract(toStart, start);
  if (distance(by, subtract(toEnd, end)) <= ALIKE_MM) return { ...arc, to: toEnd, centre: add(arc.centre, by) };
  const { radius, sweep } = arcGeometry(start, arc);
  const chord = distance(toStart, toEnd);
  if (chord <= 2 * radius) return arcOfRadius(toStart, toEnd, radius, arc.clockwise, Math.abs(sweep) > Math.PI);
  return arcOfSagitta(toStart, toEnd, (chord / 2) * Math.tan(Math.abs(sweep) / 4), arc.clockwise);
}

/** Handles that lay smoothly beside a line or an arc turn about their node by as much as that did. */
function keptSmooth(before: Loop, after: Loop, touched: (segment: number) => boolean): Loop {
  const segments = [...after.segments];
  for (const [index, node] of after.nodes.entries()) {
    const last = around(index - 1, segments.length);
    if (!touched(last) && !touched(index)) continue;
    const [arriving, leaving] = [segmentOf(before, last), segmentOf(before, index)];
    if ((arriving.kind === 'cubic') === (leaving.kind === 'cubic')) continue;
    if (!isSmooth(nodeOf(before, last), arriving, leaving)) continue;
    const turned = (handle: Point, from: Point, to: Point): Point => {
      const by = Math.atan2(cross(from, to), dot(from, to));
      return by === 0 ? handle : add(node, rotate(subtract(handle, node), by));
    };
    const [into, out] = [segments[last] as Segment, segments[index] as Segment];
    if (into.kind === 'cubic') {
      const was = segmentDirections(nodeOf(before, index), leaving).leaving;
      segments[last] = { ...into, c2: turned(into.c2, was, segmentDirections(node, out).leaving) };
    } else if (out.kind === 'cubic') {
      const was = segmentDirections(nodeOf(before, last), arriving).arriving;
      segments[index] = { ...out, c1: turned(out.c1, was, segmentDirections(nodeOf(after, last), into).arriving) };
    }
  }
  return { ...after, segments };
}
