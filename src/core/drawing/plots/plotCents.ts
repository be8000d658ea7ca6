import { measureText } from '../../text/measureText';
import { TEXT_HEIGHT } from '../textHeights';
import type { Item } from '../types';
import { centsCell } from './centsCell';
import { centsSummary } from './centsSummary';
import { plotCaption } from './plotCaption';
import { plotText } from './plotItems';
import { shortenText } from './shortenText';
import { signedCents } from './signedCents';
import type { CentsByFret, PlotPicture } from './types';

const EDGE = 2;
const WIDEST_NAME = 24;
const SMALLEST_CELL = 9;
const CELL_MARGIN = 1.6;
/** Height of the row of frets, and from the middle of its figures to the squares, mm. */
const HEADER = 7;
const TO_SQUARES = 3;
const TO_NAMES = 2;
const TO_CAPTION = 4.4;

const requireGrid = ({ strings, frets, cents }: CentsByFret, limit: number): void => {
  if (!(limit > 0 && Number.isFinite(limit)))
    throw new RangeError(`plotCents: expected a limit above 0, got ${limit}.`);
  if (strings.length === 0 || frets.length === 0)
    throw new RangeError('plotCents: expected at least one string and one fret.');
  if (
    cents.length !== strings.length ||
    cents.some((row) => row.length !== frets.length || !row.every(Number.isFinite))
  )
    throw new RangeError(`plotCents: expected ${strings.length} rows of ${frets.length} finite cents.`);
};

/**
 * Cents by string and fret as a grid of squares, string 1 at the top: a bar up from the middle is sharp, down is flat, and
 * the figure stands in the other half. A full bar is the limit; beyond it the bar is black and the figure bold.
 *
 * @param limit cents that a full bar stands for, above 0
 * @throws RangeError for an empty or ragged grid, a figure that is not finite, or a limit that is not above 0
 */
export const plotCents = (grid: CentsByFret, limit: number): PlotPicture => {
  requireGrid(grid, limit);
  const { strings, frets, cents } = grid;
  const names = strings.map((name) => shortenText(name, WIDEST_NAME));
  const wide = (text: string): number => measureText(text, TEXT_HEIGHT.note, 'regular');
  const left = EDGE + Math.max(wide('fret'), ...names.map(wide)) + TO_NAMES;
  const figures = [
    ...cents.flat().map((value) => measureText(signedCents(value), TEXT_HEIGHT.label, 'bold')),
    ...frets.map((fret) => wide(`${fret}`)),
  ];
  const cell = Math.max(SMALLEST_CELL, Math.ceil(Math.max(...figures) + CELL_MARGIN));
  const width = left + frets.length * cell + EDGE;
  const bottom = HEADER + strings.length * cell;
  const caption = plotCaption(
    `Cents: bar up, + sharp; bar down, − flat. A full bar is ${limit} cents, a black one is more.`,
    { x: EDGE, y: bottom + TO_CAPTION },
    width - 2 * EDGE,
  );
  const items: readonly Item[] = [
    plotText('fret', 'frets', 'note', { x: left - TO_NAMES, y: HEADER - TO_SQUARES }, 'fret', 'end'),
    ...frets.map((fret, column) =>
      plotText(
        `fret-${column + 1}`,
        'frets',
        'note',
        { x: left + (column + 0.5) * cell, y: HEADER - TO_SQUARES },
        `${fret}`,
        'middle',
      ),
    ),
    ...names.flatMap((name, row): readonly Item[] => {
      const part = `string ${row + 1}`;
      const y = HEADER + row * cell;
      return [
        plotText(`name-${row + 1}`, part, 'note', { x: left - TO_NAMES, y: y + cell / 2 }, name, 'end'),
        ...(cents[row] ?? []).flatMap((value, column) =>
          centsCell(`cell-${row + 1}-${column + 1}`, part, { x: left + column * cell, y }, cell, value, limit),
        ),
      ];
    }),
    ...caption.items,
  ];
  return {
    width,
    height: bottom + TO_CAPTION + caption.height,
    items,
    title: 'Cents by string and fret',
    summary: centsSummary(grid, limit),
  };
};
