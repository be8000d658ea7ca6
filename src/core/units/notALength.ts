import { fail, type Result } from '../result';

const EXPECTED = 'a number such as 645, 645.1, 25 11/32 or 3in+6mm, with mm, cm or in';

/** The failure length.wrong, saying what was read and what was expected in its place. */
export function notALength(text: string, expected = EXPECTED): Result<never> {
  return fail('', 'length.wrong', `“${text.trim()}” is not a length: expected ${expected}.`);
}
