import { fail, failed, type Result } from '../../result';
import { signedArea } from '../signedArea';
import { NO_AREA_MM2 } from '../tolerances';
import type { Path } from '../types';
import { unpaired } from './editBothSides';
import { around, editOf, knows, type Loop, loopOf, nodeOf, type PathEdit, segmentOf } from './loop';
import { mergeSegments } from './mergeSegments';
import { mirrorHalf, pairingOf, partnerNode, SAME_MM } from './pairing';

/**
 * Nodes taken away, each pair of neighbours joined by one segment as mergeSegments says; when symmetric, their partners
 * too. What is left has two segments at least and encloses something.
 *
 * Codes: outline.fewest, outline.noNode, outline.unpaired, path.open, those of validatePath.
 */
export function deleteNodes(path: Path, indices: readonly number[], symmetric = false): Result<PathEdit> {
  const made = loopOf(path);
  if (!made.ok) return made;
  const loop = made.value;
  for (const index of indices) {
    const known = knows(loop, index, 'node');
    if (!known.ok) return failed(known.issues);
  }
  const pairing = symmetric ? pairingOf(loop, SAME_MM) : null;
  if (symmetric && pairing === null) return unpaired();
  const partners = pairing === null ? [] : indices.map((index) => partnerNode(loop, pairing, index));
  const gone = new Set([...indices, ...partners]);
  if (loop.nodes.length - gone.size < 2) return tooFew();
  let left: Loop = loop;
  for (const index of gone) left = without(left, left.from.indexOf(index));
  const again = pairing === null || left.nodes.length < 2 ? null : pairingOf(left, SAME_MM);
  if (pairing !== null && again === null) return unpaired();
  const edited = editOf(again === null ? left : mirrorHalf(left, again, nearHalf(left, again)), loop.nodes.length);
  if (edited.ok && Math.abs(signedArea(edited.value.path)) <= NO_AREA_MM2) return tooFew();
  return edited;
}

/** Node `index` taken away; see deleteNodes. */
export const deleteNode = (path: Path, index: number, symmetric = false): Result<PathEdit> =>
  deleteNodes(path, [index], symmetric);

/** A place off the centreline. */
const nearHalf = (loop: Loop, pairing: number): number => (partnerNode(loop, pairing, 0) === 0 ? 1 : 0);

const tooFew = <T>(): Result<T> =>
  fail(
    'bridge.outline',
    'outline.fewest',
    'Without that node the outline would enclose nothing. It needs three corners, or two with a curve between them.',
  );

function without(loop: Loop, index: number): Loop {
  const last = around(index - 1, loop.nodes.length);
  const merged = mergeSegments(nodeOf(loop, last), segmentOf(loop, last), segmentOf(loop, index));
  const segments = loop.segments.map((segment, at) => (at === last ? merged : segment));
  const drop = <T>(list: readonly T[]): T[] => list.filter((_, at) => at !== index);
  return { nodes: drop(loop.nodes), segments: drop(segments), from: drop(loop.from) };
}
