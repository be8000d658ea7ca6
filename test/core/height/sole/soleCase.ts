import type { Sole } from '../../../../src/core/document/soleTypes';
import type { SoledBridge } from '../../../../src/core/height/sole/soleFit';

export const FOOT = 304.8;

/** A flat sole on a flat top, wings from 38.1. */
export const FLAT_SOLE: Sole = {
  wing: { tip: 4, inner: 9, begin: 38.1 },
  face: null,
  draft: 0,
  sanding: 0,
  across: null,
  along: null,
  top: {
    from: 'radius',
    across: null,
    along: null,
    gaps: { bassTip: 0, bassWing: 0, centre: 0, trebleWing: 0, trebleTip: 0 },
    under: null,
  },
};

/** 6 in long, 35 wide, 9.5 thick with a slot of 6.5. */
export const SIX_INCH: SoledBridge = { bassTip: -76.2, trebleTip: 76.2, width: 35, thickness: 9.5, slotDepth: 6.5 };

/** The sole with some of it changed; `top` only in part. */
export const soleWith = ({
  top,
  ...change
}: Partial<Omit<Sole, 'top'>> & { readonly top?: Partial<Sole['top']> }): Sole => ({
  ...FLAT_SOLE,
  ...change,
  top: { ...FLAT_SOLE.top, ...top },
});
