import { fail, ok, type Result } from '../result';
import { MM_PER_INCH } from './mmPerInch';
import { notALength } from './notALength';
import { LOPSIDED_HYPHEN, type NumberRead, readNumber } from './readNumber';

/** More than any length needs; keeps every number finite and a pasted page out. */
const LONGEST_TEXT = 64;

const UNIT = /^\s*(mm|cm|inches|inch|in|"|'')/i;
const UNIT_BEGUN = /^\s*(?:m|c|i|inc|inche|')$/i;
const EXPONENT = /^e[+-]?\d/i;

/**
 * Reads what a person types for a length: mm, or why there is none.
 *
 * A bare number takes `unit`; a suffix (mm, cm, in, inch, ", ″, '') wins, for its own number only. Reads 25.4, .5, 0,5,
 * 5/4, 25 11/32, 25-11/32, 25⅜, a sign, and sums or differences such as 3in+6mm. A hyphen between digits and a fraction
 * without spaces makes a mixed number. Exponents are refused. The path of an issue is empty: the field knows its name.
 *
 * Codes: length.unfinished (more must follow, as in "25." or ""), length.wrong, length.ambiguous (two readings; the
 * message says what to type for each).
 */
export function parseLength(text: string, unit: 'mm' | 'in'): Result<number> {
  if (text.length > LONGEST_TEXT) return notALength(`${text.slice(0, 16)}…`, `at most ${LONGEST_TEXT} characters long`);
  let rest = plainSigns(text);
  if (rest === '') return fail('', 'length.unfinished', 'Type a length, such as 645, 25 11/32 or 3in+6mm.');
  const lopsided = LOPSIDED_HYPHEN.exec(rest);
  if (lopsided) {
    const [, whole, fraction] = lopsided;
    const message = `Type ${whole} ${fraction} for the mixed number, or ${whole} - ${fraction} to subtract.`;
    return fail('', 'length.ambiguous', message);
  }
  let total = 0;
  for (let first = true; first || rest !== ''; first = false) {
    const sign = /^[+-]\s*/.exec(rest)?.[0] ?? '';
    if (sign === '' && !first) return notALength(text);
    const term = readTerm(rest.slice(sign.length), unit);
    if (!term.ok) return term;
    total += sign.startsWith('-') ? -term.value.value : term.value.value;
    rest = term.value.rest;
  }
  return ok(total);
}

/** One number with its unit, in mm, and the text after it. */
function readTerm(term: string, unit: 'mm' | 'in'): Result<NumberRead> {
  if (term === '') return fail('', 'length.unfinished', 'Type a number after the sign.');
  const number = readNumber(term);
  if (!number.ok) return number;
  const { value, rest } = number.value;
  if (EXPONENT.test(rest)) return notALength(term, 'written out in full, without an exponent');
  if (UNIT_BEGUN.test(rest)) return fail('', 'length.unfinished', 'Finish the unit: mm, cm, in or ".');
  const suffix = UNIT.exec(rest);
  const name = suffix?.[1]?.toLowerCase() ?? unit;
  const factor = name === 'mm' ? 1 : name === 'cm' ? 10 : MM_PER_INCH;
  return ok({ value: value * factor, rest: rest.slice(suffix?.[0].length ?? 0).trim() });
}

/** The same text with one kind of space, minus, slash and inch sign. */
function plainSigns(text: string): string {
  return text
    .replace(/\s/g, ' ')
    .replace(/[‐‑‒–−]/g, '-')
    .replace(/[⁄∕]/g, '/')
    .replace(/[″”“]|′′|’’/g, '"')
    .trim();
}
