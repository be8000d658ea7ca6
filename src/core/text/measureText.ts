import { advanceWidth, type Cut } from './advanceWidth';
import { printableText } from './printableText';

/**
 * Width of a line of print, mm: the sum of the font's advance widths, without kerning, as the PDF sets it. A character
 * that the font lacks counts as the box that stands for it.
 *
 * @param height font size, mm, at least 0
 * @throws RangeError when the height is negative or not finite
 */
export function measureText(text: string, height: number, cut: Cut): number {
  if (!Number.isFinite(height) || height < 0) {
    throw new RangeError(`measureText: expected a font size of 0 mm or more, got ${height}`);
  }
  let ems = 0;
  for (const character of printableText(text)) ems += advanceWidth(character, cut) ?? 0;
  return ems * height;
}
