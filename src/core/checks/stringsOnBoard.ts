import type { SaddlePlace } from '../bridge/types';
import type { Instrument } from '../document/types';
import { boardWidthAt } from '../instrument/boardOf';
import type { Board } from '../instrument/types';
import { type Finding, setOne } from './finding';
import { downward } from './upward';
import { checkPart } from './wallCheck';

const NAME = 'Outer strings lie over the board';

/** The outer strings against the lines of the board edges carried on to the saddle. */
export const stringsOnBoard = (instrument: Instrument, board: Board, saddle: SaddlePlace): readonly Finding[] => {
  const half = boardWidthAt(board, saddle.centre) / 2;
  const [first, last] = [saddle.strings[0]?.x ?? 0, saddle.strings.at(-1)?.x ?? 0];
  const [treble, bass] = [half - first, half + last];
  const about = {
    id: 'strings-board',
    lengths: [treble, bass],
    source: null,
    at: [first, last].map((x) => ({ x, y: saddle.centre + saddle.slope * x })),
    part: checkPart(NAME),
  };
  const { margins } = instrument;
  const spread = downward(2 * half - margins.treble - margins.bass);
  return Math.min(treble, bass) < 0
    ? [
        {
          ...about,
          verdict: 'wrong',
          message:
            'The outer strings at the saddle lie outside the lines of the board edges: they would run off the board.',
          tries: [setOne('instrument.spread.own', spread, 'String spacing at saddle, outer {0}')],
        },
      ]
    : [
        {
          ...about,
          verdict: 'good',
          message: 'At the saddle the outer strings lie inside the board edge lines by {0} treble, {1} bass.',
        },
      ];
};
