import { crownPlace } from '../bridge/crownReach';
import type { SaddlePlace } from '../bridge/types';
import type { StringUp } from '../document/buildTypes';
import type { Slot } from '../document/types';
import { centsPerMm } from '../intonation/centsPerMm';
import { readingsOf } from './readingsOf';
import { travelOfCents } from './travelOfCents';

/** What one string was found to want, and what the crown can give it. mm; along the centreline unless said otherwise. */
export interface CrownMove {
  readonly id: string;
  readonly name: string;
  readonly x: number;
  /** Where it broke when it was read, behind the octave line. */
  readonly stood: number;
  /** Where it wants to break, behind the octave line. */
  readonly found: number;
  /** + away from the nut. */
  readonly travel: number;
  readonly doubt: number;
  /** What the travel is worth at the 12th fret, cents: + the string is sharp. */
  readonly cents: number;
  /** From the front face of the saddle, square to it: where it broke, where it wants to, and where the crown can be filed to. */
  readonly from: number;
  readonly wanted: number;
  readonly to: number;
  /** The crown can be filed to its mark. */
  readonly reached: boolean;
  /** Where it breaks once it is filed so, behind the octave line. */
  readonly after: number;
  /** What filing leaves at the 12th fret, cents: + sharp. */
  readonly leftCents: number;
}

/**
 * What a string-up asks of the crown of the saddle as it stands in its slot. Strings that were not read are left out.
 * land: saddle kept beside a break point, mm.
 */
export const crownMoves = (
  stringUp: Pick<StringUp, 'cents' | 'stood' | 'tuner'>,
  saddle: SaddlePlace,
  slot: Pick<Slot, 'width' | 'crown'>,
  scaleLength: number,
  land: number,
): readonly CrownMove[] => {
  const stretch = Math.hypot(1, saddle.slope);
  const gain = centsPerMm(scaleLength, 12);
  return saddle.strings.flatMap(({ id, name, x, line }): readonly CrownMove[] => {
    const asked = travelOfCents(readingsOf(stringUp, id), scaleLength, stringUp.tuner);
    if (asked === null) return [];
    const stood = stringUp.stood[id] ?? line;
    const found = stood + asked.travel;
    const face = line - slot.crown * slot.width * stretch;
    const { fromFace, shaped, reached, left } = crownPlace(found, face, slot.width, saddle.slope, land);
    return [
      {
        id,
        name,
        x,
        stood,
        found,
        ...asked,
        cents: asked.travel * gain,
        from: (stood - face) / stretch,
        wanted: fromFace,
        to: shaped,
        reached,
        after: found + left,
        leftCents: 0 - left * gain,
      },
    ];
  });
};
