import { describe, expect, it } from 'vitest';
import { type Cell, CSV_STYLES, makeCsv } from '../../../src/exporters/csv/makeCsv';
import { csvRecords } from './csvRecords';

const mm = (value: number): Cell => ({ value, decimals: 3 });
const { comma, semicolon, 'decimal-comma': decimalComma } = CSV_STYLES;

// RFC 4180, section 2; the apostrophe before a formula is common practice (OWASP, "CSV Injection").
describe('a CSV', () => {
  it('has a point before decimals, a comma between cells, CR LF after rows', () => {
    expect(makeCsv([['slot', mm(322.6543), null, mm(-0.0001)]], comma)).toBe('slot,322.654,,0.000\r\n');
  });

  it('has the other marks on request', () => {
    expect(makeCsv([['slot', mm(322.6543)]], semicolon)).toBe('slot;322.654\r\n');
    expect(makeCsv([['slot', mm(-1322.5)]], decimalComma)).toBe('slot;-1322,500\r\n');
  });

  it.each([
    ['Wren, 14', '"Wren, 14"'],
    ['Wren; 14', '"Wren; 14"'],
    ['the "old" one', '"the ""old"" one"'],
    ['two\r\nlines', '"two\r\nlines"'],
    ['=1+1', `"'=1+1"`],
    ['+4', `"'+4"`],
    ['-4', `"'-4"`],
    ['@sum', `"'@sum"`],
    ['\t=1', `"'\t=1"`],
    ['  =1', `"'  =1"`],
    ['=A1&"x"', `"'=A1&""x"""`],
    ['Zürich ⌀', 'Zürich ⌀'],
  ])('writes %j as %s', (text, written) => {
    expect(makeCsv([[text]], comma)).toBe(`${written}\r\n`);
    expect(csvRecords(makeCsv([[text, 'x']], semicolon), ';')[0]?.[1]).toBe('x');
  });

  it('leaves numbers below 0 as numbers', () => {
    expect(makeCsv([[mm(-2)]], comma)).toBe('-2.000\r\n');
  });
});
