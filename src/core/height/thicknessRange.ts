import type { HeightLimits } from './heightLimits';
import type { ThicknessRange } from './types';

/** Slack for rounding, mm and shares. */
export const SLACK = 1e-9;

/** What a thickness must satisfy: as measured with the bridge at hand. */
export interface HeightAtHand {
  readonly airspace: number;
  readonly bridgeThickness: number;
  readonly proud: { readonly least: number; readonly most: number };
  readonly pickupThickness: number;
}

/**
 * The bridge thicknesses that would bring airspace, saddle and wood within the limits, mm; null when none would. A bridge
 * thicker by 1 takes 1 from the airspace and from the saddle above it: the strings' height over the top stays. A slot in it
 * may be as deep as the wood beneath allows, and must hold its share of the highest saddle:
 * thickness − wood − pickup ≥ share/(1 − share) · proud.
 */
export const thicknessRange = (atHand: HeightAtHand, limits: HeightLimits): ThicknessRange | null => {
  const { airspace, bridgeThickness: now, proud, pickupThickness } = atHand;
  const ratio = limits.share.least / (1 - limits.share.least);
  const least = Math.max(
    limits.thickness.least,
    now + airspace - limits.airspace.most,
    now + proud.most - limits.proud.most,
    (limits.woodUnder.least + pickupThickness + ratio * (now + proud.most)) / (1 + ratio),
  );
  const most = Math.min(
    limits.thickness.most,
    now + airspace - limits.airspace.least,
    now + proud.least - limits.proud.least,
  );
  return least <= most + SLACK ? { least, most: Math.max(least, most) } : null;
};
