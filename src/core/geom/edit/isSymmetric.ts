import type { Path } from '../types';
import { loopOf } from './loop';
import { pairingOf, partnerNode } from './pairing';

/**
 * Whether a closed path is symmetric about the centreline as edits need it: every node and segment has a partner that is its
 * mirror image (x → −x) within `tolerance`, mm. False for a path that is open or not valid.
 */
export function isSymmetric(path: Path, tolerance: number): boolean {
  const loop = loopOf(path);
  return loop.ok && pairingOf(loop.value, tolerance) !== null;
}

/**
 * The number of the node that is the mirror image of node `index` within `tolerance`, mm: its own for a node on the
 * centreline, null where there is none or the path is not symmetric.
 */
export function mirrorNode(path: Path, index: number, tolerance: number): number | null {
  const loop = loopOf(path);
  if (!loop.ok || !Number.isInteger(index) || index < 0 || index >= loop.value.nodes.length) return null;
  const pairing = pairingOf(loop.value, tolerance);
  return pairing === null ? null : partnerNode(loop.value, pairing, index);
}
