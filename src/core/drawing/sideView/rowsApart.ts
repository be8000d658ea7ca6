import { measureText } from '../../text/measureText';
import { TEXT_HEIGHT } from '../textHeights';

/** Kept between two figures of one row, mm. */
const BETWEEN = 1.2;

/**
 * The row of each figure, from 0, so that none lies on another: the first row in which there is room beside those before
 * it. Figures are centred at their places; each is as wide as the widest of its lines, in bold.
 */
export const rowsApart = (
  figures: readonly { readonly x: number; readonly lines: readonly string[] }[],
): readonly number[] => {
  const laid: { readonly from: number; readonly to: number; readonly row: number }[] = [];
  for (const { x, lines } of figures) {
    const half = Math.max(...lines.map((line) => measureText(line, TEXT_HEIGHT.label, 'bold'))) / 2 + BETWEEN / 2;
    const [from, to] = [x - half, x + half];
    let row = 0;
    while (laid.some((other) => other.row === row && other.from < to && from < other.to)) row += 1;
    laid.push({ from, to, row });
  }
  return laid.map(({ row }) => row);
};
