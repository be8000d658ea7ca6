import type { ReadText } from '../readPdf/types';

/** Half the height of the capitals of DejaVu, share of the size: texts of two sizes stand level midway up them. */
const HALF_CAPITALS = 0.3645;
/** Texts nearer than this stand on one line, mm. */
const LEVEL = 0.01;

/** What stands on each line of a page, from left to right, one space between runs; texts that run along the page apart. */
export function linesOfText(texts: readonly ReadText[]): readonly string[] {
  const lines: { readonly y: number; readonly runs: ReadText[] }[] = [];
  for (const text of texts) {
    const along = Math.abs(Math.sin(text.angle)) > 0.5;
    const middle = along ? Number.NaN : text.start.y - HALF_CAPITALS * text.height;
    const line = lines.find(({ y }) => Math.abs(y - middle) < LEVEL);
    if (line) line.runs.push(text);
    else lines.push({ y: middle, runs: [text] });
  }
  return lines.map(({ runs }) =>
    [...runs]
      .sort((a, b) => a.start.x - b.start.x)
      .map(({ text }) => text)
      .join(' ')
      .replace(/\s+/gu, ' ')
      .trim(),
  );
}
