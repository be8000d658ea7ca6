import { MOST_FRETS_READ, STRING_UP_LIMITS } from '../../../core/document/stringUpLimits';
import { fail, ok, type Result } from '../../../core/result';

const [FIRST, LAST] = STRING_UP_LIMITS.fret;

/**
 * Frets as a maker lists them, "12" or "5, 7, 12" or "5 7 12", the lowest first, each once.
 * Codes: frets.none, frets.wrong, frets.many.
 */
export const parseFrets = (text: string): Result<readonly number[]> => {
  const words = text.split(/[\s,;]+/).filter((word) => word !== '');
  if (words.length === 0) return fail('', 'frets.none', 'Type at least one fret, such as 12.');
  const frets = words.map((word) => (/^\d{1,2}$/.test(word) ? Number(word) : Number.NaN));
  const wrong = words.find((_, index) => !((frets[index] ?? 0) >= FIRST && (frets[index] ?? 0) <= LAST));
  if (wrong !== undefined)
    return fail(
      '',
      'frets.wrong',
      `“${wrong}” is no fret: expected numbers from ${FIRST} to ${LAST}, such as 5, 7, 12.`,
    );
  const each = [...new Set(frets)].sort((one, other) => one - other);
  if (each.length > MOST_FRETS_READ)
    return fail('', 'frets.many', `One string-up holds readings at ${MOST_FRETS_READ} frets.`);
  return ok(each);
};
