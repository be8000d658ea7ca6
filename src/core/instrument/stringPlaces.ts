import type { Instrument, InstrumentString } from '../document/types';
import { ok, type Result } from '../result';
import { boardWidthAt } from './boardOf';
import { stringPositions } from './stringPositions';
import type { Board, StringPlace } from './types';

/** Centres at the saddle from the maker's own outer spacing, even about the centreline. */
const ownPositions = (instrument: Instrument, diameters: readonly number[]): Result<readonly number[]> => {
  const first = diameters[0] ?? 0;
  const last = diameters.at(-1) ?? 0;
  // Margins of zero on a line as wide as the outsides of the outer strings; then shifted so that the outer centres are even.
  const width = instrument.spread.own + (first + last) / 2;
  const positions = stringPositions({ width, marginTreble: 0, marginBass: 0, diameters, rule: instrument.gapRule });
  if (!positions.ok) return positions;
  const shift = (first - last) / 4;
  return ok(positions.value.map((x) => x + shift));
};

/**
 * Each string's centre at the nut datum and at the saddle. From the board edges the saddle line counts as lying at the
 * octave line, which differs from the break point by less than 0.1 mm of board width on any guitar.
 */
export const stringPlaces = (
  instrument: Instrument,
  strings: readonly InstrumentString[],
  board: Board,
): Result<readonly StringPlace[]> => {
  const diameters = strings.map(({ diameter }) => diameter);
  const at = (width: number): Result<readonly number[]> =>
    stringPositions({
      width,
      marginTreble: instrument.margins.treble,
      marginBass: instrument.margins.bass,
      diameters,
      rule: instrument.gapRule,
    });
  const nut = at(board.nutWidth);
  if (!nut.ok) return nut;
  const saddle =
    instrument.spread.from === 'own' ? ownPositions(instrument, diameters) : at(boardWidthAt(board, board.octave));
  if (!saddle.ok) return saddle;
  return ok(
    strings.map(({ id, name }, index) => ({
      id,
      name,
      nutX: nut.value[index] ?? 0,
      saddleX: saddle.value[index] ?? 0,
    })),
  );
};
