import type { Result } from '../../result';
import { add } from '../points';
import type { Path, Point } from '../types';
import { around, knows, loopOf, nodeOf } from './loop';
import { moveNodes } from './moveNodes';
import { pairingOf, partnerSegment, SAME_MM } from './pairing';

/**
 * Segment `index` moved as it is, with both of its ends, mm. In a symmetric outline its partner does the same mirrored, and
 * one that crosses the centreline moves only along it. Codes: those of moveNodes.
 */
export function moveSegment(path: Path, index: number, by: Point, symmetric = false): Result<Path> {
  const made = loopOf(path);
  if (!made.ok) return made;
  const loop = made.value;
  const known = knows(loop, index, 'segment');
  if (!known.ok) return known;
  const pairing = symmetric ? pairingOf(loop, SAME_MM) : null;
  const centred = pairing !== null && partnerSegment(loop, pairing, index) === index;
  const way = centred ? { x: 0, y: by.y } : by;
  const next = around(index + 1, loop.nodes.length);
  const places = new Map([index, next].map((node) => [node, add(nodeOf(loop, node), way)] as const));
  return moveNodes(path, places, symmetric);
}
