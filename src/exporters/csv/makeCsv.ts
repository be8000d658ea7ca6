import { roundDecimal } from '../../core/units/roundDecimal';

/** A cell: words, a number with its decimals, or nothing. */
export type Cell = string | { readonly value: number; readonly decimals: number } | null;

/** How a table is written. A decimal comma needs a semicolon between the cells. */
export interface CsvStyle {
  readonly separator: ',' | ';';
  readonly decimalMark: '.' | ',';
}

/** The styles that a maker can choose; the first is that of RFC 4180 and of most programs. */
export const CSV_STYLES = {
  comma: { separator: ',', decimalMark: '.' },
  semicolon: { separator: ';', decimalMark: '.' },
  'decimal-comma': { separator: ';', decimalMark: ',' },
} as const satisfies Readonly<Record<string, CsvStyle>>;

/** What a spreadsheet takes for the beginning of a formula. */
const FORMULA = /^[=+\-@\t\r]/;

/** Words as RFC 4180 has them; those that begin like a formula have an apostrophe before them, so that none is computed. */
const words = (text: string): string => {
  const safe = FORMULA.test(text.trimStart()) || FORMULA.test(text) ? `'${text}` : text;
  return safe === text && !/[",;\r\n\t]/.test(text) ? text : `"${safe.replaceAll('"', '""')}"`;
};

const cellText = (cell: Cell, { decimalMark }: CsvStyle): string => {
  if (cell === null) return '';
  if (typeof cell === 'string') return words(cell);
  return roundDecimal(cell.value, cell.decimals).toFixed(cell.decimals).replace('.', decimalMark);
};

/** A table as CSV, each row ended by CR LF (RFC 4180). The same bytes in every language and time zone. */
export const makeCsv = (rows: readonly (readonly Cell[])[], style: CsvStyle): string =>
  rows.map((row) => `${row.map((cell) => cellText(cell, style)).join(style.separator)}\r\n`).join('');
