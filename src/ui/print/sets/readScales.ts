import { fail, ok, type Result } from '../../../core/result';
import { parseLength } from '../../../core/units/parseLength';

/** Between two lengths: a semicolon, a new line, or a comma that a space follows (a comma alone may be a decimal one). */
const BETWEEN = /;|\n|,\s/;

/**
 * Scale lengths as a list: "645; 650; 25 11/32in". Bare numbers take `unit`; an empty list is one of none. Code: set.scales,
 * which says what could not be read.
 */
export const readScales = (text: string, unit: 'mm' | 'in'): Result<readonly number[]> => {
  const typed = text
    .split(BETWEEN)
    .map((each) => each.trim())
    .filter((each) => each !== '');
  const scales: number[] = [];
  for (const each of typed) {
    const length = parseLength(each, unit);
    if (!length.ok)
      return fail('scales', 'set.scales', `“${each}” is no length. ${length.issues[0]?.message ?? ''}`.trim());
    scales.push(length.value);
  }
  return ok(scales);
};
