import { rectanglePath } from '../../../geom/rectanglePath';
import { measureText } from '../../../text/measureText';
import { TEXT_HEIGHT } from '../../textHeights';
import type { Item } from '../../types';
import { centsCell } from '../centsCell';
import { plotCaption } from '../plotCaption';
import { plotPath, plotText } from '../plotItems';
import { shortenText } from '../shortenText';
import { signedCents } from '../signedCents';
import type { PlotPicture } from '../types';

const EDGE = 2;
const CELL = 14;
const HEADER = 7;
const TO_SQUARES = 3;
const TO_NAMES = 2;
const TO_CAPTION = 4.4;
const WIDEST_NAME = 20;

/** Cents of later readings less those of the first: one row a string, one column a reading; null where one was not read. */
export interface ChangeByReading {
  readonly strings: readonly string[];
  readonly readings: readonly string[];
  readonly cents: readonly (readonly (number | null)[])[];
}

/** How the readings moved, in words: the largest change. */
const summaryOf = ({ strings, readings, cents }: ChangeByReading): string => {
  const all = cents.flatMap((row, string) =>
    row.flatMap((value, reading) => (value === null ? [] : [{ value, string, reading }])),
  );
  const [first, ...rest] = all;
  if (first === undefined) return 'No string was read both times.';
  const most = rest.reduce((far, each) => (Math.abs(each.value) > Math.abs(far.value) ? each : far), first);
  return `Largest change: ${signedCents(most.value)} cents, ${strings[most.string]}, ${readings[most.reading]}.`;
};

/**
 * How pitch moved since the first reading, as a grid of squares like that of the cents by fret: a bar up is sharper than
 * then, one down is flatter.
 *
 * @param limit cents that a full bar stands for, above 0
 * @throws RangeError without a string or a reading
 */
export const plotChange = (change: ChangeByReading, limit: number): PlotPicture => {
  const { strings, readings, cents } = change;
  if (strings.length === 0 || readings.length === 0 || !(limit > 0))
    throw new RangeError('Expected a string, a later reading and a limit above 0.');
  const names = strings.map((name) => shortenText(name, WIDEST_NAME));
  const left = EDGE + Math.max(...names.map((name) => measureText(name, TEXT_HEIGHT.note, 'regular'))) + TO_NAMES;
  const width = Math.max(left + readings.length * CELL + EDGE, 70);
  const bottom = HEADER + strings.length * CELL;
  const caption = plotCaption(
    `Cents since the first reading: bar up, sharper; bar down, flatter. A full bar is ${limit} cents, a black one is more.`,
    { x: EDGE, y: bottom + TO_CAPTION },
    width - 2 * EDGE,
  );
  return {
    width,
    height: bottom + TO_CAPTION + caption.height,
    items: [
      ...readings.map((reading, column) =>
        plotText(
          `reading-${column + 1}`,
          'readings',
          'note',
          { x: left + (column + 0.5) * CELL, y: HEADER - TO_SQUARES },
          shortenText(reading, CELL - 1),
          'middle',
        ),
      ),
      ...names.flatMap((name, row): readonly Item[] => {
        const part = `string ${row + 1}`;
        const y = HEADER + row * CELL;
        return [
          plotText(`name-${row + 1}`, part, 'note', { x: left - TO_NAMES, y: y + CELL / 2 }, name, 'end'),
          ...readings.flatMap((_, column): readonly Item[] => {
            const id = `cell-${row + 1}-${column + 1}`;
            const x = left + column * CELL;
            const value = cents[row]?.[column] ?? null;
            return value === null
              ? [plotPath(id, part, 'plot-axis', rectanglePath(x, y, CELL, CELL))]
              : centsCell(id, part, { x, y }, CELL, value, limit);
          }),
        ];
      }),
      ...caption.items,
    ],
    title: 'Change since the first reading',
    summary: summaryOf(change),
  };
};
