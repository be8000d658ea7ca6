import { fail, ok, type Result } from '../result';
import { notALength } from './notALength';

/** A number read from the head of a text, and what follows it. */
export interface NumberRead {
  readonly value: number;
  readonly rest: string;
}

const SIGNS = '¼½¾⅐⅑⅒⅓⅔⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞↉';
const FRACTION = /^(?:(\d+)(?:\s+|-))?(\d+)\s*\/\s*(\d+)(?![\d.,/])/;
const FRACTION_SIGN = new RegExp(`^(?:(\\d+)(?:\\s*|-))?([${SIGNS}])`);
const FRACTION_BEGUN = /^(?:\d+(?:\s+|-))?\d+\s*\/$/;
const MIXED_BEGUN = /^(\d+)(?:\s+|-)(\d+)$/;
const DECIMAL = /^\d+$|^\d*[.,]\d+$/;
const THOUSANDS = /^\d{1,3}(?:[.,]\d{3})+(?:[.,]\d+)?$/;
const TWO_MEANINGS = /^0*[1-9]\d{0,2},\d{3}$/;

/** A whole number and a fraction with a hyphen that has a space on one side only: mixed number or difference? */
export const LOPSIDED_HYPHEN = new RegExp(`(?<![\\d.,/])(\\d+)(?:\\s+-|-\\s+)(\\d+\\s*/\\s*\\d+|[${SIGNS}])`);

/**
 * Reads one number without its sign: 25, 25.4, .5, 0,5, 5/4, ⅜, 25 11/32, 25-11/32, 25⅜.
 * Codes: length.unfinished, length.wrong, length.ambiguous.
 */
export function readNumber(text: string): Result<NumberRead> {
  const fraction = FRACTION.exec(text);
  if (fraction) return mixedNumber(text, fraction[0], fraction[1], Number(fraction[2]), Number(fraction[3]));
  const sign = FRACTION_SIGN.exec(text);
  if (sign?.[2]) {
    const [upper, lower] = sign[2].normalize('NFKD').split('⁄');
    return mixedNumber(text, sign[0], sign[1], Number(upper), Number(lower));
  }
  if (FRACTION_BEGUN.test(text)) return fail('', 'length.unfinished', 'Type the lower number of the fraction.');
  const begun = MIXED_BEGUN.exec(text);
  if (begun) {
    const [, whole, upper] = begun;
    const message = `Go on with a fraction, such as ${whole} 3/8; to subtract, type ${whole} - ${upper} with spaces.`;
    return fail('', 'length.unfinished', message);
  }
  return readDecimal(text);
}

function mixedNumber(
  text: string,
  read: string,
  whole: string | undefined,
  upper: number,
  lower: number,
): Result<NumberRead> {
  if (lower === 0) return fail('', 'length.wrong', 'The lower number of a fraction must not be 0.');
  if (whole !== undefined && upper >= lower)
    return fail('', 'length.wrong', 'A fraction after a whole number must be smaller than one, such as 2 3/4.');
  return ok({ value: (Number(whole ?? 0) * lower + upper) / lower, rest: text.slice(read.length) });
}

function readDecimal(text: string): Result<NumberRead> {
  const run = /^[\d.,]+/.exec(text)?.[0] ?? '';
  const rest = text.slice(run.length);
  const whole = run.replace(/[.,]/g, '');
  if (TWO_MEANINGS.test(run))
    return fail('', 'length.ambiguous', `${run} can mean two lengths: type ${run.replace(',', '.')} or ${whole}.`);
  if (DECIMAL.test(run)) return ok({ value: Number(run.replace(',', '.')), rest });
  if (THOUSANDS.test(run))
    return fail(
      '',
      'length.ambiguous',
      `${run}: type the number without thousands marks, with one point for decimals.`,
    );
  if (/^\d*[.,]$/.test(run) && rest === '') return fail('', 'length.unfinished', 'Type the decimals after the point.');
  return notALength(text);
}
