import type { Project } from '../../document/types';

/** A figure with where it comes from. */
export interface SoleLimit {
  readonly value: number;
  readonly source: string;
}

/** How well the sole must lie on the top, and the saddle in its slot, mm; every figure is the maker's to change. */
export interface SoleLimits {
  /** Largest gap under the wings, from where they begin to their tips. */
  readonly wingGap: SoleLimit;
  /** Largest gap under the rest of the sole. */
  readonly centreGap: SoleLimit;
  /** How much shorter and thinner than its slot a saddle is made. */
  readonly saddlePlay: SoleLimit;
  readonly saddleClearance: SoleLimit;
}

const COMMON = 'common practice, no source';

/** Limits to start from. */
export const SOLE_LIMITS: SoleLimits = {
  wingGap: {
    value: 0.1,
    source: `wings that need force are the commonest fault: pegasusguitars.com, shaping bridge soles; the figure: ${COMMON}`,
  },
  centreGap: {
    value: 0.15,
    source: `better a hair at the centre: pegasusguitars.com, shaping bridge soles; the figure: ${COMMON}`,
  },
  saddlePlay: { value: 0.2, source: COMMON },
  saddleClearance: { value: 0.05, source: 'the slot 0.05 mm wider than the saddle: from memory' },
};

/** The limits with the maker's own in place of the usual. */
export const soleLimitsInUse = (own: Project['limits']): SoleLimits => {
  const use = (name: keyof SoleLimits): SoleLimit => {
    const value = own[name];
    return value === undefined ? SOLE_LIMITS[name] : { value, source: 'set by the maker' };
  };
  return {
    wingGap: use('wingGap'),
    centreGap: use('centreGap'),
    saddlePlay: use('saddlePlay'),
    saddleClearance: use('saddleClearance'),
  };
};
