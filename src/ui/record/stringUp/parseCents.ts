import { STRING_UP_LIMITS } from '../../../core/document/stringUpLimits';
import { fail, ok, type Result } from '../../../core/result';

const [LEAST, MOST] = STRING_UP_LIMITS.cents;
const NUMBER = /^([-+]?)(\d+(?:[.,]\d+)?|[.,]\d+)\s*(?:c|cents?)?\s*(sharp|flat)?$/i;

/**
 * Cents as a maker types them, + sharp: "+3", "-2.5", "−2,5", "3 sharp", "2.5 cents flat"; nothing typed is not read
 * (null). Codes: cents.wrong, cents.twice (a sign and a word), cents.range.
 */
export const parseCents = (text: string): Result<number | null> => {
  const plain = text
    .trim()
    .replace(/^[−–]\s*/, '-')
    .replace(/^\+\s+/, '+');
  if (plain === '') return ok(null);
  const found = NUMBER.exec(plain);
  if (found === null)
    return fail('', 'cents.wrong', `“${text.trim()}” is no cents: type a figure with its sign, such as +3 or −2.5.`);
  const [, sign = '', digits = '', word] = found;
  if (word !== undefined && sign !== '')
    return fail('', 'cents.twice', 'Type a sign or a word, not both: −3, or 3 flat.');
  const size = Number(digits.replace(',', '.'));
  const cents = sign === '-' || word?.toLowerCase() === 'flat' ? 0 - size : size;
  if (cents < LEAST || cents > MOST)
    return fail(
      '',
      'cents.range',
      `Cents go from −${MOST} to +${MOST}: beyond that it is another note. Tune the open string first.`,
    );
  return ok(cents);
};
