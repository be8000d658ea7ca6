import type { SaddlePlace } from '../bridge/types';
import type { CrownAsRead, StringUp } from '../document/buildTypes';
import type { CrownMove } from './crownMoves';

/** An earlier string-up and what was to be filed after it. */
export interface BeforeFiling {
  readonly stood: StringUp['stood'];
  readonly moves: readonly CrownMove[];
}

/**
 * The plan as an instrument is strung: what every string is meant to want, and where it breaks with its crown straight,
 * shaped as near to the plan as it goes, or filed as an earlier string-up asked. mm behind the octave line, by string id.
 */
export const planAsStrung = (
  saddle: SaddlePlace,
  crown: CrownAsRead,
  before: BeforeFiling | null,
): Pick<StringUp, 'predicted' | 'stood'> => {
  const filed = new Map(before?.moves.map(({ id, after }) => [id, after]));
  const stoodAt = ({ id, line, wanted, crown: place }: SaddlePlace['strings'][number]): number => {
    if (crown === 'straight') return line;
    const shaped = wanted + place.left;
    return crown === 'shaped' ? shaped : (filed.get(id) ?? before?.stood[id] ?? shaped);
  };
  return {
    predicted: Object.fromEntries(saddle.strings.map(({ id, wanted }) => [id, wanted])),
    stood: Object.fromEntries(saddle.strings.map((string) => [string.id, stoodAt(string)])),
  };
};
