import { polyline } from '../../../drawing/polyline';
import { TEXT_HEIGHT } from '../../../drawing/textHeights';
import type { Item } from '../../../drawing/types';
import { measureText } from '../../../text/measureText';
import { wrapText } from '../../../text/wrapText';
import { sheetLine, sheetPath, sheetText } from '../../sheetItems';
import type { Reading, WorksheetRow } from './worksheetRows';

/** Width of the sheet: fits A4 and Letter, upright and on their side, mm. */
const WIDTH = 170;
/** From the box to tick to the words. */
const INDENT = 7;
const PITCH = { step: 6.6, readings: 8, blanks: 8, line: 4 } as const;
/** Where the two readings of a row begin, and how they are divided. */
const CELLS = [50, 111] as const;
const FIGURE_END = 36;
const BLANK = { from: 38, to: 58 } as const;
/** From a name to its blank, and from a blank to the next name. */
const AFTER_NAME = 1.5;
const BETWEEN = 3;
/** A line to write on lies this far below the middle of the words beside it. */
const UNDER = 2;

const pen = (id: string, from: number, to: number, y: number): Item =>
  sheetLine(id, 'cross', { x: from, y: y + UNDER }, { x: to, y: y + UNDER });

const readingItems = (id: string, x: number, y: number, { name, expected }: Reading): readonly Item[] => [
  ...(name === '' ? [] : [sheetText(`${id}-name`, 'note', { x, y }, name)]),
  ...(expected === null ? [] : [sheetText(`${id}-figure`, 'key', { x: x + FIGURE_END, y }, expected, 'end')]),
  pen(`${id}-blank`, x + BLANK.from, x + BLANK.to, y),
];

/** Blanks side by side, all of one length, whatever their names take. */
const blankItems = (id: string, y: number, names: readonly string[]): readonly Item[] => {
  const widths = names.map((name) => measureText(name, TEXT_HEIGHT.note, 'regular') + AFTER_NAME);
  const named = widths.reduce((sum, width) => sum + width, 0);
  const length = (WIDTH - INDENT - named) / names.length - BETWEEN;
  let x = INDENT;
  return names.flatMap((name, index) => {
    const from = x + (widths[index] ?? 0);
    const items = [
      sheetText(`${id}-${index}-name`, 'note', { x, y }, name),
      pen(`${id}-${index}-blank`, from, from + length, y),
    ];
    x = from + length + BETWEEN;
    return items;
  });
};

/** Over a box whose middle lies at y: large enough to be seen at arm's length. */
const tickMark = (id: string, y: number): Item =>
  sheetPath(id, 'mark', polyline({ x: 0.6, y: y - 0.6 }, { x: 1.9, y: y + 1.2 }, { x: 4.6, y: y - 3 }));

interface Laid {
  readonly height: number;
  readonly items: readonly Item[];
}

/** One row whose top lies at y. */
const layRow = (row: WorksheetRow, id: string, y: number): Laid => {
  switch (row.kind) {
    case 'step': {
      const at = y + PITCH.step / 2;
      return {
        height: PITCH.step,
        items: [
          sheetText(`${id}-box`, 'key', { x: 0, y: at }, '□'),
          ...(row.ticked ? [tickMark(`${id}-tick`, at)] : []),
          sheetText(id, 'key', { x: INDENT, y: at }, row.text),
        ],
      };
    }
    case 'readings': {
      const at = y + PITCH.readings / 2;
      return {
        height: PITCH.readings,
        items: [
          sheetText(id, 'label', { x: INDENT, y: at }, row.label),
          ...row.readings.flatMap((reading, index) => readingItems(`${id}-${index}`, CELLS[index] ?? 0, at, reading)),
        ],
      };
    }
    case 'blanks':
      return { height: PITCH.blanks, items: blankItems(id, y + PITCH.blanks / 2, row.names) };
    case 'note': {
      const lines = wrapText(row.text, WIDTH - INDENT, TEXT_HEIGHT.note, 'regular');
      return {
        height: lines.length * PITCH.line + 1,
        items: lines.map((text, index) =>
          sheetText(`${id}-${index}`, 'note', { x: INDENT, y: y + (index + 0.5) * PITCH.line }, text),
        ),
      };
    }
  }
};

/** Rows of the worksheet one beneath the other, from the origin down. */
export const worksheetItems = (rows: readonly WorksheetRow[]): readonly Item[] => {
  let y = 0;
  return rows.flatMap((row, index) => {
    const { height, items } = layRow(row, `row-${index + 1}`, y);
    y += height;
    return items;
  });
};
