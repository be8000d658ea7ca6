/** The inch is 25.4 mm exactly: international yard and pound agreement, 1959. */
export const INCH_IN_MM = 25.4;

/** What a maker types, the unit of the field, and the mm meant; by hand, with 25.4 mm to the inch. */
export const LENGTHS_READ = [
  ['645', 'mm', 645],
  ['645.1', 'mm', 645.1],
  [' 645 mm ', 'in', 645],
  ['64.5cm', 'in', 645],
  ['25', 'in', 635],
  ['25 11/32', 'in', 643.73125], // 25.34375 in
  ['25-11/32', 'in', 643.73125],
  ['25–11/32', 'in', 643.73125], // a dash put in by a phone
  ['25⅜', 'in', 644.525], // 25.375 in
  ['25 ⅜', 'in', 644.525],
  ['25-⅜', 'in', 644.525],
  ['25 3⁄8', 'in', 644.525], // fraction slash
  ['25 11/32 in', 'mm', 643.73125],
  ['25-11/32"', 'mm', 643.73125],
  ['25.4″', 'mm', 645.16],
  ["1''", 'mm', 25.4],
  ['1′′', 'mm', 25.4],
  ['2 inches', 'mm', 50.8],
  ['1 Inch', 'mm', 25.4],
  ['5 IN', 'mm', 127],
  ['5/4', 'mm', 1.25],
  ['5/4', 'in', 31.75],
  ['5 / 4 in', 'mm', 31.75],
  ['⅛', 'in', 3.175],
  ['½in', 'mm', 12.7],
  ['⅔', 'in', 16.9333333333],
  ['⅒', 'in', 2.54],
  ['.5', 'mm', 0.5],
  [',5', 'mm', 0.5],
  ['0,5', 'mm', 0.5],
  ['4,0', 'mm', 4],
  ['0,125', 'in', 3.175],
  ['00,125', 'mm', 0.125],
  ['1234,567', 'mm', 1234.567],
  ['1.234', 'mm', 1.234],
  ['25,4 mm', 'in', 25.4],
  ['3in+6mm', 'mm', 82.2], // 76.2 + 6
  ['3in + 6mm', 'in', 82.2],
  ['26in-3mm', 'in', 657.4], // 660.4 − 3
  ['25 - 11', 'mm', 14],
  ['25 - 11/32', 'in', 626.26875], // 24.65625 in
  ['1.5-1/2', 'in', 25.4],
  ['5/4-1/2', 'in', 19.05],
  ['12 45/64 + 1/64', 'in', 323.05625], // 12 23/32 in
  ['-1.5', 'mm', -1.5],
  ['−1.5', 'mm', -1.5],
  ['+2', 'mm', 2],
  ['-1 1/2', 'in', -38.1],
  ['-1-1/2', 'in', -38.1],
  ['-0', 'mm', 0],
  ['0/8', 'in', 0],
  ['007', 'mm', 7],
] as const;

/** Texts that are not a length yet or at all; `says` must stand in the message. */
export const LENGTHS_REFUSED = [
  ['', 'length.unfinished', '25 11/32'],
  ['   ', 'length.unfinished', '25 11/32'],
  ['25.', 'length.unfinished', 'decimals'],
  ['25,', 'length.unfinished', 'decimals'],
  ['.', 'length.unfinished', 'decimals'],
  ['25 11/', 'length.unfinished', 'lower number'],
  ['25-11/', 'length.unfinished', 'lower number'],
  ['5/', 'length.unfinished', 'lower number'],
  ['25 11', 'length.unfinished', 'fraction'],
  ['25-11', 'length.unfinished', '25 - 11'],
  ['3in+', 'length.unfinished', 'after the sign'],
  ['25-', 'length.unfinished', 'after the sign'],
  ['-', 'length.unfinished', 'after the sign'],
  ['25 i', 'length.unfinished', 'unit'],
  ['25m', 'length.unfinished', 'unit'],
  ["25'", 'length.unfinished', 'unit'],
  ['1,234', 'length.ambiguous', 'type 1.234 or 1234'],
  ['01,234', 'length.ambiguous', 'type 01.234 or 01234'],
  ['25,375in', 'length.ambiguous', 'type 25.375 or 25375'],
  ['1.234,5', 'length.ambiguous', 'thousands'],
  ['1,234.5', 'length.ambiguous', 'thousands'],
  ['1,234,567', 'length.ambiguous', 'thousands'],
  ['25 -11/32', 'length.ambiguous', '25 - 11/32 to subtract'],
  ['25- ⅜', 'length.ambiguous', '25 ⅜ for the mixed number'],
  ['abc', 'length.wrong', 'expected a number such as'],
  ['25q', 'length.wrong', '“25q”'],
  ['1e3', 'length.wrong', 'exponent'],
  ['1E-3', 'length.wrong', 'exponent'],
  ['1/0', 'length.wrong', 'must not be 0'],
  ['2 5/4', 'length.wrong', 'smaller than one'],
  ['--1', 'length.wrong', 'expected'],
  ['3in+-6mm', 'length.wrong', 'expected'],
  ['3in 6mm', 'length.wrong', 'expected'],
  ['1.2.3', 'length.wrong', 'expected'],
  ['1/2/3', 'length.wrong', 'expected'],
  ['1.5/2', 'length.wrong', 'expected'],
  ['⅜5', 'length.wrong', 'expected'],
  ['25mmm', 'length.wrong', 'expected'],
  ['NaN', 'length.wrong', 'expected'],
  ['Infinity', 'length.wrong', 'expected'],
  ['0x10', 'length.wrong', 'expected'],
  ['٢٥', 'length.wrong', 'expected'],
  ['9'.repeat(400), 'length.wrong', 'at most 64'],
] as const;

/** mm, decimals of a millimetre, text. Half away from zero on paper, whatever the double behind it. */
export const MILLIMETRES_WRITTEN = [
  [0, 0, '0'],
  [-0, 2, '0.00'],
  [-0.004, 2, '0.00'],
  [645.054, 2, '645.05'],
  [645.1, 2, '645.10'],
  [1.005, 2, '1.01'],
  [-1.005, 2, '-1.01'],
  [0.05, 1, '0.1'],
  [0.15, 1, '0.2'],
  [8.345, 2, '8.35'],
  [2.5, 0, '3'],
  [-2.5, 0, '-3'],
  [999.9996, 3, '1000.000'],
  [1e-9, 3, '0.000'],
  [0.0000005, 6, '0.000001'],
  [1_000_000, 0, '1000000'],
] as const;

/** mm, denominator, text; 25.39583 in and 25.54583 in are a mean of three readings and the same with 0.150 in added. */
export const FRACTIONS_WRITTEN = [
  [0, 64, '0'],
  [-0.01, 64, '0'],
  [635, 64, '25'],
  [644.525, 8, '25 3/8'],
  [644.525, 64, '25 3/8'],
  [643.73125, 32, '25 11/32'],
  [643.73125, 8, '25 3/8'], // 25.34375 is 2.75 eighths
  [645.054, 64, '25 25/64'],
  [648.864, 64, '25 35/64'],
  [-38.1, 16, '-1 1/2'],
  [-12.7, 8, '-1/2'],
  [1.5875, 64, '1/16'],
  [0.1984375, 64, '1/64'], // half a step goes away from zero
  [25.3, 64, '1'],
] as const;
