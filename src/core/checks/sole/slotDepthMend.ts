import type { Mend } from '../types';

/** What a slot must hold and leave, mm and shares. */
export interface SlotDepthNeeds {
  readonly thickness: number;
  readonly pickup: number;
  /** Highest string over the bridge. */
  readonly proud: number;
  /** Least wood under it, and least share of the saddle in it. */
  readonly wood: number;
  readonly share: number;
}

/**
 * The slot cut as deep as leaves the wood, or as holds the share; null where no depth does both:
 * pickup + proud·share/(1 − share) ≤ depth ≤ thickness − wood.
 */
export const slotDepthMend = (
  { thickness, pickup, proud, wood, share }: SlotDepthNeeds,
  wanted: 'wood' | 'share',
): Mend | null => {
  const deepest = thickness - wood;
  const shallowest = pickup + (Math.max(0, proud) * share) / (1 - share);
  const depth = wanted === 'wood' ? deepest : shallowest;
  if (shallowest > deepest || depth <= 0) return null;
  return {
    label: wanted === 'wood' ? 'Slot only {0} deep' : 'Slot {0} deep',
    lengths: [depth],
    set: [{ path: 'bridge.slot.depth', value: depth }],
  };
};
