import { DATUM_NAME } from '../../../placement/datumName';
import type { Placement } from '../../../placement/types';
import { showLength } from '../../../units/showLength';
import type { SheetContext } from '../types';
import { lastFretMargins } from './lastFretMargins';
import { note, type Reading, type RowsByStep, readings, type WorksheetRow } from './worksheetRows';

type Show = (mm: number) => string;

const SIDES = ['treble', 'bass'] as const;

/** The break points of the outer strings, from one datum. */
const breakReadings = (placement: Placement, from: 'fromNut' | 'fromTwelfth', show: Show): readonly Reading[] =>
  SIDES.flatMap((name) => {
    const found = placement.numbers.find(({ id }) => id === `break-${name}`);
    return found === undefined ? [] : [{ name, expected: show(found[from]) }];
  });

/** Where the outer strings break and the slot begins, from the nut datum and from the 12th fret. */
export const breakRows = ({ project, style }: SheetContext, placement: Placement): readonly WorksheetRow[] => {
  const show: Show = (mm) => showLength(mm, style);
  const { short } = DATUM_NAME[project.instrument.nut.datum];
  return [
    readings(`Break point from ${short}`, ...breakReadings(placement, 'fromNut', show)),
    readings('… from the 12th fret', ...breakReadings(placement, 'fromTwelfth', show)),
    ...placement.numbers
      .filter(({ id }) => id === 'slot-front')
      .map(({ fromNut, fromTwelfth }) =>
        readings(
          'Slot front, centre',
          { name: 'nut', expected: show(fromNut) },
          { name: '12th', expected: show(fromTwelfth) },
        ),
      ),
  ];
};

/** From both ends of the nut datum to both front corners of the bridge: all four tell offset and skew apart. */
const cornerRows = ({ project, style }: SheetContext, { distances }: Placement): readonly WorksheetRow[] => {
  const { end } = DATUM_NAME[project.instrument.nut.datum];
  return SIDES.map((from) =>
    readings(
      `${from === 'treble' ? 'Treble' : 'Bass'} ${end} to`,
      ...SIDES.map((to): Reading => {
        const found = distances.find(({ id }) => id === `nut-${from}-to-front-${to}`);
        return { name: to, expected: found === undefined ? null : showLength(found.value, style) };
      }),
    ),
  );
};

/** The square line by rule, the strings by the board, the taped bridge read again. */
export const placeRows = (context: SheetContext, placement: Placement): RowsByStep => {
  const { project, derived, style } = context;
  const show: Show = (mm) => showLength(mm, style);
  const line = placement.squareLine[style.unit];
  const margins = lastFretMargins(project, derived);
  const { short } = DATUM_NAME[project.instrument.nut.datum];
  const bothEnds = (mm: number): readonly Reading[] => SIDES.map((name) => ({ name, expected: show(mm) }));
  return {
    'square-line': [
      readings(`Line from ${short}`, ...bothEnds(line.fromNut)),
      readings('… from the 12th fret', ...bothEnds(line.fromTwelfth)),
    ],
    sideways: [
      readings(
        'Edge to string, last fret',
        { name: 'treble', expected: margins === null ? null : show(margins.treble) },
        { name: 'bass', expected: margins === null ? null : show(margins.bass) },
      ),
    ],
    'read-taped': [
      ...breakRows(context, placement),
      note('To both ends of the bridge’s front edge, all four: two alike do not yet prove it square.'),
      ...cornerRows(context, placement),
    ],
  };
};
