import type { NutDatum } from '../../../document/types';
import { polyline } from '../../../drawing/polyline';
import type { Item } from '../../../drawing/types';
import { rectanglePath } from '../../../geom/rectanglePath';
import { boardWidthAt } from '../../../instrument/boardOf';
import type { Board, StringPlace } from '../../../instrument/types';
import { sheetPath, sheetText } from '../../sheetItems';

const LONG = 40;
const BESIDE = 4;
/** Of the piece ahead of the bare end of a board, to glue a stop to, mm. */
const STOP = 10;

/** How the end is laid, by what the lengths are measured from. */
const WORDS: Readonly<Record<NutDatum, readonly string[]>> = {
  front: ['DATUM: this end', 'on the front face', 'of the nut'],
  'zero-fret': ['DATUM: this line', 'on the crown of', 'the zero fret'],
  'board-end': ['DATUM: stop', 'beneath, its face', 'here, at the bare', 'board end'],
};

/**
 * The nut end of the gauge, seen from above, right hand, y from the datum. face: how far the nut's front face lies behind a
 * zero fret: the end of the gauge then butts there, and the crown is a line on it.
 */
export const nutEnd = (
  board: Board,
  strings: readonly StringPlace[],
  datum: NutDatum,
  face: number,
): readonly Item[] => {
  const half = board.nutWidth / 2 + BESIDE;
  const top = datum === 'board-end' ? -STOP : datum === 'zero-fret' ? 0 - face : 0;
  const outer = [strings[0], strings.at(-1)];
  return [
    sheetPath('piece', 'outline', rectanglePath(-half, top, 2 * half, LONG - top)),
    sheetPath('datum', 'rule-line', polyline({ x: -half, y: 0 }, { x: half, y: 0 })),
    sheetPath('centreline', 'centreline', polyline({ x: 0, y: 28 }, { x: 0, y: LONG })),
    ...([1, -1] as const).map((side) =>
      sheetPath(
        side === 1 ? 'edge-treble' : 'edge-bass',
        'board-edge',
        polyline(
          { x: (side * boardWidthAt(board, 0)) / 2, y: 0 },
          { x: (side * boardWidthAt(board, LONG)) / 2, y: LONG },
        ),
      ),
    ),
    ...outer.flatMap((string, index): readonly Item[] => {
      if (string === undefined) return [];
      const x = string.nutX;
      const towards = x + ((string.saddleX - x) * LONG) / board.octave;
      return [
        sheetPath(
          index === 0 ? 'string-treble' : 'string-bass',
          'string-line',
          polyline({ x, y: 0 }, { x: towards, y: LONG }),
        ),
      ];
    }),
    ...WORDS[datum].map((text, index) =>
      sheetText(`datum-${index}`, 'note', { x: 0, y: 6 + index * 4.2 }, text, 'middle'),
    ),
    sheetText('name', 'heading', { x: 0, y: 24 }, 'NUT END', 'middle'),
    sheetText('treble', 'note', { x: 1.2, y: 34 }, 'TREBLE', 'start'),
    sheetText('bass', 'note', { x: -1.2, y: 34 }, 'BASS', 'end'),
  ];
};
