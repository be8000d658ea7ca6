import type { AuditLimits } from '../audit/auditLimits';
import { thicknessNeeded } from '../bridge/crownReach';
import type { SaddlePlace } from '../bridge/types';
import { fitSaddleLine } from '../numeric/fitSaddleLine';
import type { CrownMove } from './crownMoves';

/** What is beyond the crown, and what then. mm. */
export interface BeyondCrown {
  /** Slot widened in place: by how much ahead and behind, and the saddle that fills it. */
  readonly widen: { readonly ahead: number; readonly behind: number; readonly thickness: number };
  /** Slot filled and cut anew: how far its middle moves at either end, + away from the nut, and the thinnest saddle that serves. */
  readonly recut: { readonly treble: number; readonly bass: number; readonly thickness: number };
}

/** What a string-up comes to. */
export interface SaddleVerdict {
  /** leave: no one would cut for it · shape: the crown takes it · recut: it does not · move: nor would a slot cut anew here. */
  readonly verdict: 'leave' | 'shape' | 'recut' | 'move';
  /** Null while the crown takes it. */
  readonly beyond: BeyondCrown | null;
}

/**
 * Leave the saddle, file its crown, or more than that. Strings that were not read are taken to break where the saddle's
 * line lies. Null without a string that was read.
 */
export const saddleVerdict = (
  moves: readonly CrownMove[],
  saddle: SaddlePlace,
  slot: { readonly width: number; readonly crown: number },
  { leaveCents, land, recutMost }: AuditLimits,
): SaddleVerdict | null => {
  if (moves.length === 0) return null;
  const within = (cents: number): boolean => Math.abs(cents) <= leaveCents.value + 1e-9;
  if (moves.every(({ cents }) => within(cents))) return { verdict: 'leave', beyond: null };
  if (moves.every(({ leftCents }) => within(leftCents))) return { verdict: 'shape', beyond: null };
  const found = new Map(moves.map((move) => [move.id, move.found]));
  const points = saddle.strings.map(({ id, x, line }) => ({ x, setback: found.get(id) ?? line }));
  const fit = fitSaddleLine(points, 'minimax');
  if (!fit.ok) return { verdict: 'move', beyond: null };
  const { centre, slope, misses } = fit.value;
  const stretch = Math.hypot(1, saddle.slope);
  const middle = (line: number): number => line + (0.5 - slot.crown) * slot.width * stretch;
  const shiftAt = (at: number): number => {
    const string = saddle.strings.at(at);
    return string === undefined ? 0 : centre + slope * string.x - middle(string.line);
  };
  const ahead = Math.max(0, ...moves.map(({ wanted }) => land.value - wanted));
  const behind = Math.max(0, ...moves.map(({ wanted }) => wanted - (slot.width - land.value)));
  const recut = {
    treble: shiftAt(0),
    bass: shiftAt(-1),
    thickness: thicknessNeeded(Math.max(...misses.map(Math.abs)), slope, land.value),
  };
  const far = Math.max(Math.abs(recut.treble), Math.abs(recut.bass)) > recutMost.value + 1e-9;
  return {
    verdict: far ? 'move' : 'recut',
    beyond: { widen: { ahead, behind, thickness: slot.width + ahead + behind }, recut },
  };
};
