import { fail, failed, type Result } from '../../result';
import type { Path } from '../types';
import { editOf, knows, type Loop, loopOf, type PathEdit } from './loop';
import { type LoopPlace, mirrorHalf, pairingOf, partnerNode, partnerSegment, SAME_MM } from './pairing';

/** What is edited, by its number from 0. */
export interface Target {
  readonly kind: 'node' | 'segment';
  readonly index: number;
}

/** Edits node or segment `index` of a loop; `mirrored`: what was asked of its partner, seen from the other side. */
export type LoopEdit = (loop: Loop, index: number, mirrored: boolean) => Result<Loop>;

/** Code outline.unpaired. */
export const unpaired = <T>(): Result<T> =>
  fail(
    'bridge.outline',
    'outline.unpaired',
    'The two sides of this outline have different nodes. Make one side like the other first.',
  );

/**
 * Edits one node or segment of a closed path, and its partner when the outline is symmetric: the far half is then the exact
 * mirror image of the near one. `master` tells the near half where the target itself lies on the centreline, in half steps.
 * Codes: outline.noNode, outline.unpaired, path.open, those of the edit and of validatePath.
 */
export function editBothSides(
  path: Path,
  symmetric: boolean,
  target: Target,
  edit: LoopEdit,
  master?: LoopPlace,
): Result<PathEdit> {
  const made = loopOf(path);
  if (!made.ok) return made;
  const loop = made.value;
  const known = knows(loop, target.index, target.kind);
  if (!known.ok) return failed(known.issues);
  const before = loop.nodes.length;
  if (!symmetric) {
    const edited = edit(loop, target.index, false);
    return edited.ok ? editOf(edited.value, before) : edited;
  }
  const pairing = pairingOf(loop, SAME_MM);
  if (pairing === null) return unpaired();
  const partner = (target.kind === 'node' ? partnerNode : partnerSegment)(loop, pairing, target.index);
  const near = edit(loop, target.index, false);
  if (!near.ok) return near;
  const both = partner === target.index ? near : edit(near.value, near.value.from.indexOf(partner), true);
  if (!both.ok) return both;
  const after = both.value;
  const again = after.nodes.length === before ? pairing : pairingOf(after, SAME_MM);
  if (again === null) return unpaired();
  const place = 2 * after.from.indexOf(target.index) + (target.kind === 'node' ? 0 : 1);
  return editOf(mirrorHalf(after, again, master ?? place), before);
}
