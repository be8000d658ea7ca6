import type { DesignCheck } from './types';

/** Wood that should be left, with where the figure comes from. */
export interface WallLimit {
  readonly wall: number;
  readonly source: string;
}

/** A check on the wood left between two things: `name` is a whole clause, "Pins clear the slot". wall mm, − when they overlap. */
export const wallCheck = (id: string, name: string, wall: number, limit: WallLimit): DesignCheck => {
  const lengths = [Math.abs(wall), limit.wall];
  if (wall < 0)
    return { id, verdict: 'wrong', message: `${name}: they overlap by {0}.`, lengths, source: limit.source };
  if (wall < limit.wall)
    return { id, verdict: 'look', message: `${name} by {0} only; {1} is usual.`, lengths, source: limit.source };
  return { id, verdict: 'good', message: `${name} by {0}.`, lengths, source: limit.source };
};
