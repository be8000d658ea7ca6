import type { Drop } from '../../document/buildTypes';
import type { LengthStyle } from '../../units/formatLength';
import { formatLength } from '../../units/formatLength';

/** How far the line of the fret tops stands over the top at the bridge while nothing was read, mm: common practice, no source. */
export const USUAL_DROP_HEIGHT = 10;

const STANDS = 'The square stands on the top, as the saddle will: nothing to correct.';

/** What a reading that a square carried down from the frets is put right by, mm, and why. */
export interface Dropped {
  readonly by: number;
  readonly words: string;
}

/**
 * How far nearer the nut a point stands that lies square to the frets below a place, against one that lies square to the
 * top below it, mm: below · sin(angle). Angle of the frets against the top, radians.
 */
export const leanOf = (below: number, angle: number): number => below * Math.sin(angle);

/**
 * A saddle stands square to the top, and so does a square that stands on the top: what the rule shows there is where the
 * string will break. A square held against the rule stands square to the frets instead, and its foot comes
 * `leanOf` nearer the nut: 10 mm at 1.5° is 0.26 mm. height: from the fret tops down to what is read. centsPerMm: at the
 * 12th fret.
 */
export const dropped = ({ by, angle, height }: Drop, centsPerMm: number, style: LengthStyle): Dropped => {
  const shift = leanOf(height, angle);
  const degrees = ((angle * 180) / Math.PI).toFixed(1);
  const length =
    style.unit === 'mm'
      ? `${Math.abs(shift).toFixed(2)} mm`
      : `${formatLength(Math.abs(shift), { unit: 'in', decimals: 3 })}″`;
  const cents = Math.abs(shift * centsPerMm).toFixed(1);
  const high =
    style.unit === 'mm' ? `${height.toFixed(1)} mm` : `${formatLength(height, { unit: 'in', decimals: 3 })}″`;
  if (by === 'top')
    return {
      by: 0,
      words:
        Math.abs(shift) < 0.005
          ? STANDS
          : `${STANDS} Held to the rule instead it would read ${length} ${shift < 0 ? 'long' : 'short'} (${cents} cents: ${high} high at ${degrees}°).`,
    };
  return {
    by: shift,
    words: `${length} ${shift < 0 ? 'taken off' : 'added'} (${cents} cents): a square held to the rule leans by the neck’s ${degrees}° over ${high}.`,
  };
};
