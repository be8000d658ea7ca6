import type { Cut } from './advanceWidth';
import { measureText } from './measureText';

/** Where a line may end. A no-break space is not among them. */
const SPACES = /[ \t]+/u;
const LINE_BREAKS = /\r\n|[\n\v\f\r\u2028\u2029]/u;

/**
 * Breaks a text into lines of at most a width, at spaces and at its own line breaks; a blank line stays. A word that is
 * wider than the line is broken between its characters, at least one to a line.
 *
 * @param width mm, above 0
 * @param height font size, mm, at least 0
 * @throws RangeError when the width is not above 0 or the height is negative; also when either is not a number
 */
export function wrapText(text: string, width: number, height: number, cut: Cut): readonly string[] {
  if (!(width > 0)) throw new RangeError(`wrapText: expected a width above 0 mm, got ${width}`);
  const fits = (line: string): boolean => measureText(line, height, cut) <= width;
  return text.split(LINE_BREAKS).flatMap((paragraph) => wrapParagraph(paragraph, fits));
}

function wrapParagraph(paragraph: string, fits: (line: string) => boolean): string[] {
  const lines: string[] = [];
  let line = '';
  for (const word of paragraph.split(SPACES).filter((part) => part !== '')) {
    const longer = line === '' ? word : `${line} ${word}`;
    if (fits(longer)) {
      line = longer;
      continue;
    }
    if (line !== '') lines.push(line);
    const pieces = breakWord(word, fits);
    line = pieces.pop() ?? '';
    lines.push(...pieces);
  }
  return [...lines, line];
}

function breakWord(word: string, fits: (line: string) => boolean): string[] {
  const pieces: string[] = [];
  let piece = '';
  for (const character of word.normalize('NFC')) {
    if (piece !== '' && !fits(piece + character)) {
      pieces.push(piece);
      piece = '';
    }
    piece += character;
  }
  return [...pieces, piece];
}
