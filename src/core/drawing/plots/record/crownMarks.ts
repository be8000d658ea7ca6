import { circlePath } from '../../../geom/circlePath';
import type { CrownMove } from '../../../learning/crownMoves';
import { formatLength, type LengthStyle } from '../../../units/formatLength';
import { polyline } from '../../polyline';
import type { Item } from '../../types';
import { plotLine, plotPath, plotText } from '../plotItems';

/** mm of paper for each mm of the saddle's thickness. */
export const CROWN_SCALE = 10;
const RADIUS = 1;
const HEAD = { long: 2, half: 1 };
/** Moves on paper shorter than this have no arrow, mm. */
const LEAST_ARROW = HEAD.long + 2 * RADIUS;
const FIRST_WORDS = 3.4;
const ROW = 4.2;

const onFace = (fromFace: number, thickness: number): number =>
  Math.min(Math.max(fromFace, 0), thickness) * CROWN_SCALE;

/** One string's break point as it was read and as it is to be filed, at x, for a saddle whose front face lies at y 0. */
export const crownMarks = (
  { from, to, reached, wanted }: CrownMove,
  index: number,
  x: number,
  thickness: number,
  style: LengthStyle,
): readonly Item[] => {
  const part = `string ${index + 1}`;
  const id = (name: string): string => `${name}-${index + 1}`;
  const [start, end] = [onFace(from, thickness), onFace(to, thickness)];
  const way = end > start ? 1 : -1;
  const tip = end - way * RADIUS;
  const word = (row: number, text: string): Item =>
    plotText(
      id(`word-${row}`),
      part,
      'note',
      { x, y: thickness * CROWN_SCALE + FIRST_WORDS + row * ROW },
      text,
      'middle',
    );
  const shown = formatLength(Math.abs(to - from), style);
  const still = !/[1-9]/.test(shown);
  return [
    ...(Math.abs(end - start) < LEAST_ARROW
      ? []
      : [
          plotLine(id('way'), part, 'plot-model', { x, y: start + way * RADIUS }, { x, y: tip - way * HEAD.long }),
          plotPath(id('head'), part, 'plot-mark', {
            ...polyline(
              { x, y: tip },
              { x: x - HEAD.half, y: tip - way * HEAD.long },
              { x: x + HEAD.half, y: tip - way * HEAD.long },
            ),
            closed: true,
          }),
        ]),
    plotPath(id('to'), part, 'plot-mark', circlePath({ x, y: end }, RADIUS)),
    plotPath(id('from'), part, 'plot-model', circlePath({ x, y: start }, RADIUS)),
    word(1, still ? 'stays' : shown),
    word(2, still ? '' : way > 0 ? 'back' : 'front'),
    ...(reached ? [] : [word(3, `${formatLength(Math.abs(wanted - to), style)} short`)]),
  ].filter((item) => item.kind === 'path' || item.text !== '');
};
