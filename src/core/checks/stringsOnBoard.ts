import type { SaddlePlace } from '../bridge/types';
import { boardWidthAt } from '../instrument/boardOf';
import type { Board } from '../instrument/types';
import type { DesignCheck } from './types';

/** The outer strings against the lines of the board edges carried on to the saddle. */
export const stringsOnBoard = (board: Board, saddle: SaddlePlace): readonly DesignCheck[] => {
  const half = boardWidthAt(board, saddle.centre) / 2;
  const treble = half - (saddle.strings[0]?.x ?? 0);
  const bass = half + (saddle.strings.at(-1)?.x ?? 0);
  const lengths = [treble, bass];
  return Math.min(treble, bass) < 0
    ? [
        {
          id: 'strings-board',
          verdict: 'wrong',
          message:
            'The outer strings at the saddle lie outside the lines of the board edges: they would run off the board.',
          lengths,
          source: null,
        },
      ]
    : [
        {
          id: 'strings-board',
          verdict: 'good',
          message: 'At the saddle the outer strings lie inside the board edge lines by {0} treble, {1} bass.',
          lengths,
          source: null,
        },
      ];
};
