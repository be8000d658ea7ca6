import type { Path } from '../geom/types';
import type { DesignCheck } from './types';

const PART = 'check: the finish line lies under the bridge';

/**
 * Whether the line that the finish ends at still runs once round under the bridge; asked when finish is left under the rim.
 * lines: what is left of the footprint within the rim.
 */
export const finishLineCheck = (rim: number, lines: readonly Path[]): readonly DesignCheck[] => {
  if (rim === 0) return [];
  const about = { id: 'finish-line', lengths: [rim], source: null, part: PART };
  if (lines.length === 1)
    return [{ ...about, verdict: 'good', message: 'The footprint lies outside of the finish line all round, by {0}.' }];
  if (lines.length === 0)
    return [
      { ...about, verdict: 'wrong', message: 'Finish left {0} wide takes the whole footprint: nothing is glued.' },
    ];
  return [
    {
      ...about,
      verdict: 'look',
      message: `Finish left {0} wide parts the cleared area in ${lines.length}: the bridge is too narrow there.`,
      at: lines.map(({ start }) => start),
    },
  ];
};
