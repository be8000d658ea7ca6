import type { ReadPage, ReadPath } from '../readPdf/types';
import { boxOfPath, boxOfText } from './boxes';

interface Part {
  readonly words: readonly string[];
  readonly paths: readonly ReadPath[];
}

/** The two parts of a page, and the words and boxes of what lies across a cut. */
export interface Parts {
  readonly taped: Part;
  readonly cutAway: Part;
  readonly across: readonly unknown[];
}

/** Paper is cut along dots of 0.6 mm, 1.4 mm apart. */
const isCut = ({ dash }: ReadPath): boolean => dash.map((length) => length.toFixed(2)).join(' ') === '0.60 1.40';

/** Parts a page by its dotted lines: taped is what lies above the one across and right of the one along. */
export function cutPage(page: ReadPage | undefined): Parts {
  const cuts = (page?.paths ?? []).filter(isCut).map(boxOfPath);
  const foot = cuts.find(({ minX, maxX }) => maxX > minX);
  const left = cuts.find(({ minY, maxY }) => maxY > minY);
  if (!page || !foot || !left || cuts.length !== 2) throw new Error('expected one dotted line across and one along');
  const items = [
    ...page.texts.map((text) => ({ words: [text.text], paths: [], box: boxOfText(text) })),
    ...page.paths.filter((path) => !isCut(path)).map((path) => ({ words: [], paths: [path], box: boxOfPath(path) })),
  ];
  const taped = items.filter(({ box }) => box.maxY <= foot.minY && box.minX >= left.maxX);
  const cutAway = items.filter(({ box }) => box.minY >= foot.maxY || box.maxX <= left.minX);
  const join = (kept: typeof items): Part => ({
    words: kept.flatMap(({ words }) => words),
    paths: kept.flatMap(({ paths }) => paths),
  });
  return {
    taped: join(taped),
    cutAway: join(cutAway),
    across: items
      .filter((item) => !taped.includes(item) && !cutAway.includes(item))
      .map(({ words, box }) => ({ words, box })),
  };
}

/** Whether a line is as wide and as tall as this side, within 0.01 mm. */
export function isSquare(path: ReadPath, side: number): boolean {
  const { minX, maxX, minY, maxY } = boxOfPath(path);
  return Math.abs(maxX - minX - side) < 0.01 && Math.abs(maxY - minY - side) < 0.01;
}
