import type { Sole } from '../../document/soleTypes';
import type { Bridge } from '../../document/types';
import type { Point } from '../../geom/types';
import type { LeastLimit } from '../../height/heightLimits';
import { gapText } from '../../height/sole/gapText';
import type { SoleLimit, SoleLimits } from '../../height/sole/soleLimits';
import type { SoleFit } from '../../height/sole/soleTypes';
import type { DesignCheck, Mend } from '../types';

/** Less taken off than this is no sanding to speak of, mm. */
const NO_SANDING = 0.02;
/** Rounding that no gauge tells, mm. */
const SAME_MM = 1e-9;

const gapCheck = (where: string, gap: number, limit: SoleLimit, advice: string) => {
  const wide = gap > limit.value + SAME_MM;
  return {
    verdict: wide ? ('look' as const) : ('good' as const),
    message: wide
      ? `Gap of ${gapText(gap)} under ${where}; ${gapText(limit.value)} at most. ${advice}`
      : `Gap of ${gapText(gap)} under ${where}.`,
    lengths: [],
    source: limit.source,
  };
};

/** The sole sanded to the dome of the top, where that is known by its radii and the sole has others. */
const toTheDome = ({ across, along, top }: Sole): Mend | null => {
  if (top.from !== 'radius') return null;
  const wanted = [
    { path: 'bridge.sole.across', now: across, value: top.across },
    { path: 'bridge.sole.along', now: along, value: top.along },
  ].filter(({ now, value }) => now !== value);
  const set = wanted.flatMap(({ path, value }) => (value === null ? [] : [{ path, value }]));
  // A sole is made flat by hand: an empty box is no figure.
  return set.length === 0 || set.length < wanted.length
    ? null
    : { label: 'Sole sanded to the dome of the top', lengths: [], set };
};

/** Wood that fitting and sanding the sole leave under the slot; not asked where nothing is sanded. */
const woodAfter = ({ thickness }: Bridge, { after }: SoleFit, limit: LeastLimit): readonly DesignCheck[] => {
  const taken = thickness - after.thickness;
  if (taken < NO_SANDING) return [];
  const thin = after.woodUnder < limit.least - SAME_MM;
  return [
    {
      id: 'wood-after',
      verdict: thin ? 'wrong' : 'good',
      message: `Once ${gapText(taken)} is sanded off the sole, {0} of wood is left under the slot${thin ? '; {1} is the least' : ''}.`,
      lengths: [Math.max(0, after.woodUnder), limit.least],
      source: limit.source,
      limit: 'limits.woodUnder',
    },
  ];
};

/**
 * Whether the sole lies on the top: first the wings, which must not be forced down, then the rest. middle: y of the middle
 * of the bridge's width on the centreline, instrument frame. wood: least under the slot.
 */
export const soleChecks = (
  bridge: Bridge & { readonly sole: Sole },
  fit: SoleFit,
  limits: SoleLimits,
  wood: LeastLimit,
  middle: number,
): readonly DesignCheck[] => {
  const { sole } = bridge;
  const place = (x: number): Point => ({ x, y: middle });
  const mend = (): Mend | null => toTheDome(sole);
  return [
    {
      id: 'sole-wings',
      ...gapCheck('the wings', fit.wingGap, limits.wingGap, 'Fit the sole: glue must not force them down.'),
      at: [place(fit.places.bassTip), place(fit.places.trebleTip)],
      part: 'check: gap under the wings',
      limit: 'limits.wingGap',
      mend,
    },
    {
      id: 'sole-centre',
      ...gapCheck('the middle of the bridge', fit.centreGap, limits.centreGap, 'Fit the sole to the top.'),
      at: [place(0)],
      part: 'check: gap under the centre',
      limit: 'limits.centreGap',
      mend,
    },
    ...woodAfter(bridge, fit, wood),
  ];
};
