import { REBATE_LIMITS } from '../budget/rebateAdvice';
import type { DesignCheck } from './types';

/** A figure typed in 64ths lies this near to its limit, mm. */
const SAME_MM = 1e-9;

/**
 * Whether the finish left under the rim takes much of the glue area; not asked when none is left, and not held against a
 * bridge whose rebate is as wide. rim, rebate: their widths, mm, 0 for none. share: of the glue area, 0 to 1. own: the
 * maker's limits.
 */
export const rimCheck = (
  rim: number,
  share: number,
  own: Readonly<Record<string, number>>,
  rebate = 0,
): readonly DesignCheck[] => {
  if (rim === 0) return [];
  const limit = own.rim ?? REBATE_LIMITS.rim.value;
  const rebated = rebate >= rim - SAME_MM;
  const much = rim >= limit - SAME_MM && !rebated;
  const taken = `Finish left {0} wide under the rim takes ${Math.round(share * 100)} % of the glue area`;
  return [
    {
      id: 'rim',
      verdict: much ? 'look' : 'good',
      message: much ? `${taken}; less than {1} is usual.` : rebated ? `${taken}, in a rebate.` : `${taken}.`,
      lengths: [rim, limit],
      source: own.rim === undefined ? REBATE_LIMITS.rim.source : 'set by the maker',
    },
  ];
};
