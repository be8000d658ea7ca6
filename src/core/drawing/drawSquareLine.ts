import type { NutDatum } from '../document/types';
import type { Point } from '../geom/types';
import { DATUM_NAME } from '../placement/datumName';
import type { SquareLine } from '../placement/types';
import { measureText } from '../text/measureText';
import { polyline } from './polyline';
import { TEXT_HEIGHT } from './textHeights';
import type { Item, Role } from './types';

const LINE_PITCH = 5.6;
const ABOVE_LINE = 3.4;

/** The bold line that a small square stands on, with its figures to the left and its name to the right, for either hand. */
export const drawSquareLine = (
  line: SquareLine,
  datum: NutDatum,
  half: number,
  show: (mm: number) => string,
): readonly Item[] => {
  const y = line.fromNut;
  const words = (id: string, role: Role, at: Point, text: string, anchor: 'start' | 'end'): Item => ({
    kind: 'text',
    id: `square-line-${id}`,
    part: 'square line',
    role,
    layer: 'text',
    at,
    text,
    height: role === 'key' ? TEXT_HEIGHT.key : role === 'heading' ? TEXT_HEIGHT.label : TEXT_HEIGHT.note,
    anchor,
    angle: 0,
  });
  const figures = [
    ...(line.fromNutFace === null ? [] : [{ id: 'face', figure: show(line.fromNutFace), from: 'from the nut face' }]),
    { id: 'nut', figure: show(line.fromNut), from: `from the ${DATUM_NAME[datum].short}` },
    { id: 'twelfth', figure: show(line.fromTwelfth), from: 'from the 12th fret' },
  ];
  return [
    {
      kind: 'path',
      id: 'square-line',
      part: 'square line',
      role: 'square-line',
      layer: 'lines',
      path: polyline({ x: -half, y }, { x: half, y }),
    },
    ...figures.flatMap(({ id, figure, from }, index): readonly Item[] => {
      const at = { x: -half + 1, y: y - ABOVE_LINE - (figures.length - 1 - index) * LINE_PITCH };
      const after = at.x + measureText(figure, TEXT_HEIGHT.key, 'bold') + 1.6;
      return [
        words(id, 'key', at, figure, 'start'),
        words(`${id}-from`, 'note', { x: after, y: at.y + 0.5 }, from, 'start'),
      ];
    }),
    words('name', 'heading', { x: half - 1, y: y - ABOVE_LINE - 4.6 }, 'SQUARE LINE', 'end'),
    words('use', 'note', { x: half - 1, y: y - ABOVE_LINE + 0.4 }, 'stand a small square on it', 'end'),
  ];
};
