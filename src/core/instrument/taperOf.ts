import type { Instrument } from '../document/types';
import type { Result } from '../result';
import { TAPER_LIMIT, type Taper, taper } from './taper';
import type { Scale } from './types';

/** Whether the board narrows evenly; null without a width at the last fret. */
export const taperOf = (instrument: Instrument, scale: Scale): Result<Taper> | null => {
  const { widths, frets } = instrument;
  return widths.last === null
    ? null
    : taper({
        scaleLength: scale.scaleLength,
        nutOffset: scale.nutOffset,
        widths: { ...widths, last: widths.last },
        lastFret: frets.count,
        limit: TAPER_LIMIT.value,
      });
};
