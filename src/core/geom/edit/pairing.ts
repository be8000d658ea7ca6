import { distance } from '../points';
import { segmentPoint } from '../snap/segmentPoint';
import type { Point, Segment } from '../types';
import { around, type Loop, nodeOf, segmentOf } from './loop';

/** How far the two sides of a symmetric outline may differ, mm: below what a scribed line shows. Common practice, no source. */
export const SAME_MM = 0.01;

/** The point on the other side of the centreline; taken from 0, so that no −0 arises on it. */
export const mirrorPoint = ({ x, y }: Point): Point => ({ x: 0 - x, y });

/**
 * How the nodes of a symmetric loop pair: node i is the mirror image of node `pairing` − i, and segment k that of segment
 * `pairing` − k − 1 run backwards, both counted around. Null when no such number makes them agree within `tolerance`, mm.
 */
export function pairingOf(loop: Loop, tolerance: number): number | null {
  const first = mirrorPoint(nodeOf(loop, 0));
  for (const [pairing, node] of loop.nodes.entries())
    if (distance(node, first) <= tolerance && agrees(loop, pairing, tolerance)) return pairing;
  return null;
}

function agrees(loop: Loop, pairing: number, tolerance: number): boolean {
  const near = (a: Point, b: Point): boolean => distance(mirrorPoint(a), b) <= tolerance;
  return loop.nodes.every(
    (node, index) =>
      near(node, nodeOf(loop, pairing - index)) &&
      sameBackwards(loop, segmentOf(loop, index), index, pairing - index - 1, near),
  );
}

function sameBackwards(
  loop: Loop,
  segment: Segment,
  index: number,
  partner: number,
  near: (a: Point, b: Point) => boolean,
): boolean {
  const other = segmentOf(loop, partner);
  if (segment.kind === 'cubic')
    return other.kind === 'cubic' && near(segment.c1, other.c2) && near(segment.c2, other.c1);
  if (segment.kind === 'line' || other.kind !== 'arc') return other.kind === segment.kind;
  const middle = (at: number, one: Segment): Point => segmentPoint(nodeOf(loop, at), one, 0.5);
  return near(middle(index, segment), middle(partner, other));
}

/** A place on the loop in half steps: node i at 2i, the middle of segment k at 2k + 1. */
export type LoopPlace = number;

/** The partner of node `index`; itself for a node on the centreline. */
export const partnerNode = (loop: Loop, pairing: number, index: number): number =>
  around(pairing - index, loop.nodes.length);

/** The partner of segment `index`; itself for one that crosses the centreline. */
export const partnerSegment = (loop: Loop, pairing: number, index: number): number =>
  around(pairing - index - 1, loop.nodes.length);

/**
 * The loop with its other half made the exact mirror image of the half in which `master` lies, bit for bit: nodes on the
 * centreline get x 0, a segment across it its own mirror image.
 */
export function mirrorHalf(loop: Loop, pairing: number, master: LoopPlace): Loop {
  const steps = 2 * loop.nodes.length;
  const half = (place: LoopPlace): 'one' | 'other' | 'axis' => {
    const way = around(place - pairing, steps);
    if (way === 0 || way === steps / 2) return 'axis';
    return way < steps / 2 ? 'one' : 'other';
  };
  const copied = half(master) === 'one' ? 'other' : 'one';
  const nodes = loop.nodes.map((node, index): Point => {
    const lies = half(2 * index);
    if (lies === 'axis') return { x: 0, y: node.y };
    return lies === copied ? mirrorPoint(nodeOf(loop, pairing - index)) : node;
  });
  const segments = loop.segments.map((segment, index): Segment => {
    const lies = half(2 * index + 1);
    if (lies === 'axis') return acrossAxis(segment, half(2 * index) === copied);
    return lies === copied ? backwards(segmentOf(loop, pairing - index - 1), segment.to) : segment;
  });
  return { ...loop, nodes, segments };
}

/** A segment that is its own mirror image; `fromEnd`: its second handle tells the first. */
function acrossAxis(segment: Segment, fromEnd: boolean): Segment {
  switch (segment.kind) {
    case 'line':
      return segment;
    case 'arc':
      return { ...segment, centre: { x: 0, y: segment.centre.y } };
    case 'cubic':
      return fromEnd ? { ...segment, c1: mirrorPoint(segment.c2) } : { ...segment, c2: mirrorPoint(segment.c1) };
  }
}

/** The mirror image of a segment, run the other way; an arc then turns as before. */
function backwards(segment: Segment, to: Point): Segment {
  switch (segment.kind) {
    case 'line':
      return { kind: 'line', to };
    case 'arc':
      return { ...segment, centre: mirrorPoint(segment.centre), to };
    case 'cubic':
      return { kind: 'cubic', c1: mirrorPoint(segment.c2), c2: mirrorPoint(segment.c1), to };
  }
}
