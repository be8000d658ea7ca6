import type { SaddlePlace } from '../bridge/types';
import { boardWidthAt } from '../instrument/boardOf';
import type { Board, StringPlace } from '../instrument/types';
import { polyline } from './polyline';
import { TEXT_HEIGHT } from './textHeights';
import type { Item } from './types';

/** From a line to the middle of the words beside it, mm. */
const BESIDE = 2.2;
const QUARTER_TURN = Math.PI / 2;

const beside = (id: string, part: string, text: string, x: number, y: number): Item => ({
  kind: 'text',
  id,
  part,
  role: 'note',
  layer: 'text',
  at: { x, y },
  text,
  height: TEXT_HEIGHT.note,
  anchor: 'start',
  angle: QUARTER_TURN,
});

/** Centreline and both board edges from `top` to `bottom`, y in the instrument frame. */
export const drawBoard = (board: Board, top: number, bottom: number): readonly Item[] => {
  const half = (y: number): number => boardWidthAt(board, y) / 2;
  return [
    {
      kind: 'path',
      id: 'centreline',
      part: 'centreline',
      role: 'centreline',
      layer: 'lines',
      path: polyline({ x: 0, y: top }, { x: 0, y: bottom }),
    },
    ...([1, -1] as const).flatMap((side): readonly Item[] => {
      const id = side === 1 ? 'board-treble' : 'board-bass';
      const part = side === 1 ? 'board edge, treble' : 'board edge, bass';
      return [
        {
          kind: 'path',
          id,
          part,
          role: 'board-edge',
          layer: 'board',
          path: polyline({ x: side * half(top), y: top }, { x: side * half(bottom), y: bottom }),
        },
        beside(`${id}-label`, part, 'board edge', side * (half(top + 10) + BESIDE), top + 1),
      ];
    }),
  ];
};

/** The lines of the outer strings, from `top` to where they break over the saddle. */
export const drawOuterStrings = (strings: readonly StringPlace[], saddle: SaddlePlace, top: number): readonly Item[] =>
  [0, strings.length - 1].flatMap((index): readonly Item[] => {
    const string = strings[index];
    if (string === undefined) return [];
    const end = saddle.centre + saddle.slope * string.saddleX;
    const xAt = (y: number): number => string.nutX + ((string.saddleX - string.nutX) * y) / end;
    const part = `string ${index + 1}`;
    const inward = index === 0 ? -1 : 1;
    return [
      {
        kind: 'path',
        id: `string-${index + 1}`,
        part,
        role: 'string-line',
        layer: 'strings',
        path: polyline({ x: xAt(top), y: top }, { x: string.saddleX, y: end }),
      },
      beside(`string-${index + 1}-label`, part, part, xAt(top + 5) + inward * BESIDE, top + 1),
    ];
  });
