import { TEXT_HEIGHT } from '../../../drawing/textHeights';
import type { Item } from '../../../drawing/types';
import type { Point } from '../../../geom/types';
import { sheetLine, sheetText } from '../../sheetItems';

/** A column of a card's table. key: figures that are read at arm's length. */
export interface CardColumn {
  readonly name: string;
  /** mm. */
  readonly width: number;
  readonly role?: 'note' | 'heading' | 'key';
}

/** A row: its cells, and what stands in small print beneath each, if anything. */
export interface CardRow {
  readonly id: string;
  readonly cells: readonly string[];
  readonly under?: readonly string[];
}

const HEAD = 4.6;
const PAD = 1.5;
/** From the middle of a cell to the middle of what stands beneath it. */
const TO_UNDER = 3.9;

const pitchOf = (columns: readonly CardColumn[], rows: readonly CardRow[]): number => {
  const tallest = columns.some(({ role }) => role === 'key') ? TEXT_HEIGHT.key : TEXT_HEIGHT.label;
  return tallest + 1.9 + (rows.some(({ under }) => under !== undefined) ? TO_UNDER : 0);
};

/**
 * A table of figures on a card: the first column is words from the left, the others stand at their right edge. at: the left
 * end and the top.
 */
export const cardTable = (
  id: string,
  at: Point,
  columns: readonly CardColumn[],
  rows: readonly CardRow[],
): readonly Item[] => {
  const edges = columns.map((_, index) => columns.slice(0, index + 1).reduce((sum, { width }) => sum + width, at.x));
  const right = edges.at(-1) ?? at.x;
  const pitch = pitchOf(columns, rows);
  const cell = (name: string, index: number, y: number, text: string, role: 'note' | 'heading' | 'key'): Item =>
    index === 0
      ? sheetText(name, role, { x: at.x, y }, text)
      : sheetText(name, role, { x: (edges[index] ?? right) - PAD, y }, text, 'end');
  const top = at.y + HEAD;
  return [
    ...columns.map(({ name }, index) => cell(`${id}-head-${index}`, index, at.y + HEAD / 2, name, 'note')),
    sheetLine(`${id}-top`, 'cross', { x: at.x, y: top }, { x: right, y: top }),
    ...rows.flatMap(({ id: row, cells, under = [] }, place): readonly Item[] => {
      const foot = top + (place + 1) * pitch;
      const y = foot - pitch / 2 - (under.length > 0 ? TO_UNDER / 2 : 0);
      return [
        ...cells.map((text, index) => cell(`${id}-${row}-${index}`, index, y, text, columns[index]?.role ?? 'note')),
        ...under.flatMap((text, index) =>
          text === '' ? [] : [cell(`${id}-${row}-${index}-under`, index, y + TO_UNDER, text, 'note')],
        ),
        sheetLine(`${id}-${row}-line`, 'cross', { x: at.x, y: foot }, { x: right, y: foot }),
      ];
    }),
  ];
};
