import type { Instrument } from '../document/types';
import { ok, type Result } from '../result';
import { fretDistance } from './fretDistance';
import type { Board, Scale } from './types';

/** The board's edges as straight lines through its widths at the nut and at the 12th fret, and the frets that matter here. */
export const boardOf = (instrument: Instrument, scale: Scale): Result<Board> => {
  const { scaleLength, nutOffset } = scale;
  const twelfth = fretDistance(scaleLength, 12) + nutOffset;
  return ok({
    nutWidth: instrument.widths.nut,
    taper: (instrument.widths.twelfth - instrument.widths.nut) / twelfth,
    twelfth,
    bodyJoin: fretDistance(scaleLength, instrument.frets.bodyJoin) + nutOffset,
    octave: scaleLength + nutOffset,
  });
};

/** Width between the board's edges, or their lines carried on, at y from the nut datum, mm. */
export const boardWidthAt = (board: Board, y: number): number => board.nutWidth + board.taper * y;
