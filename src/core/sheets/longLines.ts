import type { Item } from '../drawing/types';
import type { Point } from '../geom/types';
import { formatLength } from '../units/formatLength';
import type { Frame } from './frame';
import { sheetLine, sheetText } from './sheetItems';

type Unit = 'mm' | 'in';

interface Ticks {
  /** Ticks every so many mm; every `labelled` of them carries a figure; lines are a whole number of `whole` mm long. */
  readonly step: number;
  readonly middle: number;
  readonly labelled: number;
  readonly whole: number;
}

const TICKS: Readonly<Record<Unit, Ticks>> = {
  mm: { step: 5, middle: 2, labelled: 4, whole: 20 },
  in: { step: 25.4 / 4, middle: 2, labelled: 4, whole: 25.4 },
};

const TICK_LENGTH = { short: 1.3, middle: 2.2, long: 3.4 } as const;

/** The longest line of whole figures that fits into `room` mm. */
const longest = (room: number, unit: Unit): number => Math.floor(room / TICKS[unit].whole + 1e-9) * TICKS[unit].whole;

/** Lengths of the two long lines of a page, mm. */
export const longLineLengths = (frame: Frame, unit: Unit): { readonly across: number; readonly along: number } => ({
  across: longest(frame.right - frame.left, unit),
  along: longest(frame.bottom - frame.top, unit),
});

const figure = (mm: number, unit: Unit): string =>
  unit === 'mm' ? String(Math.round(mm)) : String(Math.round(mm / 25.4));

/** A graduated line from `from`, `length` long; place puts a distance along the line and a height of tick on the page. */
const graduated = (
  id: string,
  length: number,
  unit: Unit,
  place: (along: number, out: number) => Point,
  angle: number,
): readonly Item[] => {
  const { step, middle, labelled } = TICKS[unit];
  const count = Math.round(length / step);
  const items: Item[] = [sheetLine(id, 'rule-line', place(0, 0), place(length, 0))];
  for (let index = 0; index <= count; index += 1) {
    const long = index % labelled === 0;
    const out = long ? TICK_LENGTH.long : index % middle === 0 ? TICK_LENGTH.middle : TICK_LENGTH.short;
    const along = (length * index) / count;
    items.push(sheetLine(`${id}-tick-${index}`, 'cross', place(along, 0), place(along, out)));
    if (long)
      items.push(sheetText(`${id}-figure-${index}`, 'note', place(along, -2.6), figure(along, unit), 'middle', angle));
  }
  return items;
};

/** One long line across the foot and one along the left edge, to be read with a steel rule, and what to do with them. */
export const longLines = (frame: Frame, unit: Unit): readonly Item[] => {
  const { across, along } = longLineLengths(frame, unit);
  const footY = frame.bottom + 10.4;
  const leftX = frame.margin + 4.6;
  const named = (mm: number): string =>
    formatLength(mm, unit === 'mm' ? { unit, decimals: 1 } : { unit, denominator: 8 });
  const sign = unit === 'mm' ? 'mm' : 'in';
  return [
    ...graduated('long-across', across, unit, (a, out) => ({ x: frame.left + a, y: footY - out }), 0),
    ...graduated('long-along', along, unit, (a, out) => ({ x: leftX + out, y: frame.top + a }), -Math.PI / 2),
    sheetText(
      'long-note',
      'note',
      { x: frame.left, y: footY - 5.8 },
      `Long lines: ${named(across)} ${sign} across, ${named(along)} ${sign} along (left edge). Read both with a steel rule.`,
    ),
    sheetText(
      'caution',
      'note',
      { x: frame.left, y: footY + 7.6 },
      'Blades, drills, dust: hands clear, braces found, eyes and lungs covered; follow labels and local rules.',
    ),
  ];
};
