import type { StringUp } from '../document/buildTypes';
import { centsPerMm } from '../intonation/centsPerMm';
import { readingsOf } from './readingsOf';

/**
 * How one string's pitch moved from one string-up to a later one, cents, + sharper: the mean over the frets that were read
 * both times, less what a break point moved between them accounts for. Null where no fret was read both times.
 */
export const changeSinceFirst = (
  first: Pick<StringUp, 'cents' | 'stood'>,
  later: Pick<StringUp, 'cents' | 'stood'>,
  stringId: string,
  scaleLength: number,
): number | null => {
  const before = new Map(readingsOf(first, stringId).map(({ fret, cents }) => [fret, cents]));
  const moved = (later.stood[stringId] ?? 0) - (first.stood[stringId] ?? 0);
  const changes = readingsOf(later, stringId).flatMap(({ fret, cents }) => {
    const then = before.get(fret);
    return then === undefined ? [] : [cents - then + moved * centsPerMm(scaleLength, fret)];
  });
  return changes.length === 0 ? null : changes.reduce((sum, change) => sum + change, 0) / changes.length;
};
