import { fail, failed, ok, type Result } from '../../result';
import { distance } from '../points';
import { COINCIDENT_MM } from '../tolerances';
import type { Path, Segment } from '../types';
import { unpaired } from './editBothSides';
import { editOf, knows, type Loop, loopOf, nodeOf, type PathEdit, segmentOf } from './loop';
import { mirrorHalf, pairingOf, partnerSegment, SAME_MM } from './pairing';
import { splitSegment } from './splitSegment';

/** This near to the middle of a segment across the centreline a node comes to lie on the centreline. */
const MIDDLE = 1e-6;

/**
 * A node put on segment `index` at t (0 to 1, as nearestOnPath tells it); the outline stays as it is. When symmetric,
 * another is put on its partner.
 *
 * Codes: outline.t (outside of 0 to 1, or on a node), outline.noNode, outline.unpaired, path.open, those of validatePath.
 */
export function insertNode(path: Path, index: number, t: number, symmetric = false): Result<PathEdit> {
  const made = loopOf(path);
  if (!made.ok) return made;
  const loop = made.value;
  const known = knows(loop, index, 'segment');
  if (!known.ok) return failed(known.issues);
  const before = loop.nodes.length;
  if (!symmetric) {
    const split = splitAt(loop, index, t);
    return split.ok ? editOf(split.value, before) : split;
  }
  const pairing = pairingOf(loop, SAME_MM);
  if (pairing === null) return unpaired();
  const partner = partnerSegment(loop, pairing, index);
  const near = partner === index ? splitAcross(loop, index, t) : splitAt(loop, index, t);
  if (!near.ok) return near;
  const both = partner === index ? near : splitAt(near.value, near.value.from.indexOf(partner), 1 - t);
  if (!both.ok) return both;
  const again = pairingOf(both.value, SAME_MM);
  if (again === null) return unpaired();
  return editOf(mirrorHalf(both.value, again, 2 * both.value.from.indexOf(index) + 1), before);
}

/** A segment that is its own mirror image gets one node in its middle, or two. */
function splitAcross(loop: Loop, index: number, t: number): Result<Loop> {
  if (Math.abs(t - 0.5) <= MIDDLE) return splitAt(loop, index, 0.5);
  const [low, high] = t < 0.5 ? [t, 1 - t] : [1 - t, t];
  const once = splitAt(loop, index, high);
  return once.ok ? splitAt(once.value, index, low / high) : once;
}

function splitAt(loop: Loop, index: number, t: number): Result<Loop> {
  const start = nodeOf(loop, index);
  const end = nodeOf(loop, index + 1);
  if (!(t > 0 && t < 1)) return onNode();
  const [first, second] = splitSegment(start, segmentOf(loop, index), t);
  if (distance(start, first.to) <= COINCIDENT_MM || distance(first.to, end) <= COINCIDENT_MM) return onNode();
  const put = <T>(list: readonly T[], count: number, items: readonly T[]): T[] => [
    ...list.slice(0, index + count),
    ...items,
    ...list.slice(index + 1),
  ];
  return ok({
    nodes: put(loop.nodes, 1, [first.to]),
    segments: put<Segment>(loop.segments, 0, [first, second]),
    from: put(loop.from, 1, [-1]),
  });
}

const onNode = <T>(): Result<T> =>
  fail('bridge.outline', 'outline.t', 'A new node lies between the ends of a segment, not on one of its ends.');
