import type { Item } from '../drawing/types';
import type { Point } from '../geom/types';
import type { MeasuredDistance } from '../placement/types';
import { formatLength, type LengthStyle } from '../units/formatLength';
import { sheetLine, sheetText } from './sheetItems';

const PITCH = 4.5;
const COLUMN = 16;

/** Height of the table for so many points of the bridge, mm. */
export const squaringTableHeight = (points: number): number => (points + 3) * PITCH + 1;

const unique = (names: readonly string[]): readonly string[] => [...new Set(names)];

/**
 * Distances a rule is laid along to square the bridge: a row a point of the bridge, a column a base on the board. Given
 * are those from the bases that `takes` accepts.
 */
export const squaringTable = (
  at: Point,
  width: number,
  distances: readonly MeasuredDistance[],
  takes: (baseId: string) => boolean,
  style: LengthStyle,
): readonly Item[] => {
  const kept = distances.filter(({ fromId }) => takes(fromId));
  const bases = unique(kept.map(({ from }) => from));
  const points = unique(kept.map(({ to }) => to));
  const right = at.x + width;
  const column = (index: number): number => right - (bases.length - 1 - index) * COLUMN;
  const row = (index: number): number => at.y + 2 + index * PITCH;
  const short = (name: string): readonly [string, string] => {
    const [place = '', side = ''] = name.split(', ');
    return [place.replace(/ (end|corner)$/, ''), side];
  };
  return [
    sheetText('squaring-heading', 'heading', { x: at.x, y: row(0) }, 'Square by these'),
    ...bases.flatMap((base, index) => {
      const [place, side] = short(base);
      return [
        sheetText(`squaring-base-${index}`, 'note', { x: column(index), y: row(0) }, place, 'end'),
        sheetText(`squaring-side-${index}`, 'note', { x: column(index), y: row(1) - 0.4 }, side, 'end'),
      ];
    }),
    ...points.flatMap((point, index): readonly Item[] => {
      const y = row(index + 2);
      return [
        sheetText(`squaring-point-${index}`, 'note', { x: at.x, y }, point),
        ...bases.map((base, place) => {
          const distance = kept.find(({ from, to }) => from === base && to === point);
          const figure = distance === undefined ? '' : formatLength(distance.value, style);
          return sheetText(`squaring-${index}-${place}`, 'note', { x: column(place), y }, figure, 'end');
        }),
        sheetLine(`squaring-line-${index}`, 'cross', { x: at.x, y: y + PITCH / 2 }, { x: right, y: y + PITCH / 2 }),
      ];
    }),
    sheetText(
      'squaring-note',
      'note',
      { x: at.x, y: row(points.length + 2) },
      'On the plan: for a rise r read √(d² + r²), or drop the points by square.',
    ),
  ];
};
