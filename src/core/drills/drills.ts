import { formatLength } from '../units/formatLength';
import { MM_PER_INCH } from '../units/mmPerInch';
import type { Drill } from './types';

/** Where the sizes come from, for the maker. */
export const DRILL_SOURCE =
  'number and letter: ASME B94.11M, from memory, agreeing with public tables; fractional by 1/64 in; metric by 0.1 mm as in BS 328: en.wikipedia.org, drill bit sizes';

/** Thousandths of an inch, #1 first. ASME B94.11M, from memory; the tests hold them against published rows. */
const NUMBERS: readonly number[] = [
  228, 221, 213, 209, 205.5, 204, 201, 199, 196, 193.5, 191, 189, 185, 182, 180, 177, 173, 169.5, 166, 161, 159, 157,
  154, 152, 149.5, 147, 144, 140.5, 136, 128.5, 120, 116, 113, 111, 110, 106.5, 104, 101.5, 99.5, 98, 96, 93.5, 89, 86,
  82, 81, 78.5, 76, 73, 70, 67, 63.5, 59.5, 55, 52, 46.5, 43, 42, 41, 40, 39, 38, 37, 36, 35, 33, 32, 31, 29.2, 28, 26,
  25, 24, 22.5, 21, 20, 18, 16, 14.5, 13.5,
];

/** Thousandths of an inch, A first. ASME B94.11M, from memory. */
const LETTERS: readonly number[] = [
  234, 238, 242, 246, 250, 257, 261, 266, 272, 277, 281, 290, 295, 302, 316, 323, 332, 339, 348, 358, 368, 377, 386,
  397, 404, 413,
];

const LARGEST_FRACTION = 32; // 64ths: 1/2 in
const METRIC_TENTHS = { from: 5, to: 130 }; // the least hole that a field takes, to 13 mm

const thousandths = (value: number): number => (value * MM_PER_INCH) / 1000;

const fractional = Array.from({ length: LARGEST_FRACTION }, (_, index): Drill => {
  const diameter = ((index + 1) * MM_PER_INCH) / 64;
  return { family: 'fractional', name: `${formatLength(diameter, { unit: 'in', denominator: 64 })} in`, diameter };
});

const numbered = NUMBERS.map(
  (value, index): Drill => ({ family: 'number', name: `#${index + 1}`, diameter: thousandths(value) }),
).reverse();

const lettered = LETTERS.map(
  (value, index): Drill => ({
    family: 'letter',
    name: `letter ${String.fromCharCode('A'.charCodeAt(0) + index)}`,
    diameter: thousandths(value),
  }),
);

const metric = Array.from({ length: METRIC_TENTHS.to - METRIC_TENTHS.from + 1 }, (_, index): Drill => {
  const diameter = (METRIC_TENTHS.from + index) / 10;
  return { family: 'metric', name: `${diameter} mm`, diameter };
});

/** Every drill: fractional 1/64 to 1/2 in, #80 to #1, A to Z, metric 0.5 to 13 mm; each family from the thinnest up. */
export const DRILLS: readonly Drill[] = [...fractional, ...numbered, ...lettered, ...metric];
