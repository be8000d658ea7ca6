import { TEXT_HEIGHT } from '../../drawing/textHeights';
import type { Item } from '../../drawing/types';
import { fittedText } from '../fittedText';
import type { Frame } from '../frame';
import { sheetLine, sheetText } from '../sheetItems';

/** A row of the contents. page: of the file, from 1; null for an instrument that was left out. remark: what it lacks, or why. */
export interface ContentsRow {
  readonly name: string;
  readonly page: number | null;
  readonly pages: number;
  readonly remark: string;
}

/** From the top of the frame: the page's head and the heading. */
const HEAD = 22;
const PITCH = 5;
/** For the pages, at the right. */
const COLUMN = 30;

const rowsOn = (frame: Frame): number => Math.max(1, Math.floor((frame.bottom - frame.top - HEAD) / PITCH));

/** How many pages the contents of a set of this many take. */
export const contentsCount = (members: number, frame: Frame): number => Math.ceil(members / rowsOn(frame));

const pagesWords = ({ page, pages }: ContentsRow): string =>
  page === null ? 'left out' : pages === 1 ? `page ${page}` : `pages ${page}–${page + pages - 1}`;

/** The items of each page of a set's contents, a row an instrument, without head and long lines. */
export const contentsPages = (rows: readonly ContentsRow[], frame: Frame): readonly (readonly Item[])[] => {
  const most = rowsOn(frame);
  const width = frame.right - frame.left - COLUMN;
  return Array.from({ length: contentsCount(rows.length, frame) }, (_, page): readonly Item[] => [
    sheetText('contents', 'key', { x: frame.left, y: frame.top + 15 }, 'Contents'),
    ...rows.slice(page * most, (page + 1) * most).flatMap((row, index): readonly Item[] => {
      const y = frame.top + HEAD + (index + 0.5) * PITCH;
      const foot = y + PITCH / 2;
      const words = row.remark === '' ? row.name : `${row.name}: ${row.remark}`;
      return [
        sheetText(
          `contents-${index}`,
          'label',
          { x: frame.left, y },
          fittedText(words, width, TEXT_HEIGHT.label, 'regular'),
        ),
        sheetText(`contents-${index}-pages`, 'heading', { x: frame.right, y }, pagesWords(row), 'end'),
        sheetLine(`contents-${index}-line`, 'cross', { x: frame.left, y: foot }, { x: frame.right, y: foot }),
      ];
    }),
  ]);
};
