import type { DesignCheck } from './types';

/** The rim from which on the checks ask for a look, mm: 1/16 in. */
export const RIM_LIMIT = {
  value: 25.4 / 16,
  source: 'common practice; a bridge lifted over a rim of 1/8 in: jakewildwood.blogspot.com, new bridge pull-off',
} as const;

/** A figure typed in 64ths lies this near to its limit, mm. */
const SAME_MM = 1e-9;

/**
 * Whether the finish left under the rim takes much of the glue area; not asked when none is left. rim: its width, mm.
 * share: of the glue area, 0 to 1. own: the maker's limits.
 */
export const rimCheck = (rim: number, share: number, own: Readonly<Record<string, number>>): readonly DesignCheck[] => {
  if (rim === 0) return [];
  const limit = own.rim ?? RIM_LIMIT.value;
  const much = rim >= limit - SAME_MM;
  const taken = `Finish left {0} wide under the rim takes ${Math.round(share * 100)} % of the glue area`;
  return [
    {
      id: 'rim',
      verdict: much ? 'look' : 'good',
      message: much ? `${taken}; less than {1} is usual.` : `${taken}.`,
      lengths: [rim, limit],
      source: own.rim === undefined ? RIM_LIMIT.source : 'set by the maker',
    },
  ];
};
