import type { Instrument, InstrumentString } from '../document/types';
import { failed, ok, type Result } from '../result';
import { boardWidthAt } from './boardOf';
import { coursePositions } from './coursePositions';
import type { Board, StringPlace } from './types';

/** The fields behind what `coursePositions` is given; its width follows from several, of which the caller names one. */
const FIELD_OF: Readonly<Record<string, string>> = { diameters: 'strings', pairGap: 'instrument.pairGap' };

/** The same places, or the same reasons at the fields that a maker can change; `room` is what leaves the strings room. */
const atFields = (places: Result<readonly number[]>, room: string): Result<readonly number[]> =>
  places.ok ? places : failed(places.issues.map((each) => ({ ...each, path: FIELD_OF[each.path] ?? room })));

/** Centres at the saddle from the maker's own outer spacing, even about the centreline. */
const ownPositions = (
  instrument: Instrument,
  diameters: readonly number[],
  courses: readonly number[],
): Result<readonly number[]> => {
  const first = diameters[0] ?? 0;
  const last = diameters.at(-1) ?? 0;
  // Margins of zero on a line as wide as the outsides of the outer strings; then shifted so that the outer centres are even.
  const width = instrument.spread.own + (first + last) / 2;
  const positions = coursePositions({
    width,
    marginTreble: 0,
    marginBass: 0,
    diameters,
    courses,
    pairGap: instrument.pairGap,
    rule: instrument.gapRule,
  });
  if (!positions.ok) return positions;
  const shift = (first - last) / 4;
  return ok(positions.value.map((x) => x + shift));
};

/**
 * Each string's centre at the nut datum and at the saddle. From the board edges the saddle line counts as lying at the
 * octave line, which differs from the break point by less than 0.1 mm of board width on any guitar. Codes: as
 * coursePositions, at the path of a field.
 */
export const stringPlaces = (
  instrument: Instrument,
  strings: readonly InstrumentString[],
  board: Board,
): Result<readonly StringPlace[]> => {
  const diameters = strings.map(({ diameter }) => diameter);
  const courses = strings.map(({ course }) => course);
  const at = (width: number): Result<readonly number[]> =>
    atFields(
      coursePositions({
        width,
        marginTreble: instrument.margins.treble,
        marginBass: instrument.margins.bass,
        diameters,
        courses,
        pairGap: instrument.pairGap,
        rule: instrument.gapRule,
      }),
      'instrument.margins.treble',
    );
  const nut = at(board.nutWidth);
  if (!nut.ok) return nut;
  const saddle =
    instrument.spread.from === 'own'
      ? atFields(ownPositions(instrument, diameters, courses), 'instrument.spread.own')
      : at(boardWidthAt(board, board.octave));
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
