import type { Bridge } from '../document/types';
import type { DesignCheck } from './types';

/** Locating-pin holes in the slot ends vanish under the saddle when they are no wider than the slot. */
export const locatingHidden = ({ locating, slot }: Bridge): readonly DesignCheck[] => {
  if (locating.site !== 'slot-ends') return [];
  const lengths = [locating.drill, slot.width];
  return locating.drill > slot.width
    ? [
        {
          id: 'locating-hidden',
          verdict: 'wrong',
          message: 'Locating-pin holes of {0} are wider than the slot of {1}; they would show beside the saddle.',
          lengths,
          source: null,
        },
      ]
    : [
        {
          id: 'locating-hidden',
          verdict: 'good',
          message: 'Locating-pin holes of {0} hide under the saddle.',
          lengths,
          source: null,
        },
      ];
};
