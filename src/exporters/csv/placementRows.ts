import type { Hole } from '../../core/bridge/types';
import type { Derived } from '../../core/derive/types';
import type { Project } from '../../core/document/types';
import { DATUM_NAME } from '../../core/placement/datumName';
import type { PlacementNumber } from '../../core/placement/types';
import { failed, ok, type Result } from '../../core/result';
import { MM_PER_INCH } from '../../core/units/mmPerInch';
import type { Cell } from './makeCsv';

/** Decimals of each kind of figure: a micron, a ten-thousandth of an inch, a thousandth of a degree or cent. */
const DECIMALS = { mm: 3, in: 4, degrees: 3, cents: 3 } as const;

/** The figures that a row may hold; mm, radians and cents. */
interface Figures {
  readonly fromNut?: number;
  readonly fromTwelfth?: number;
  readonly fromNutFace?: number | null;
  readonly fromCentreline?: number;
  readonly distance?: number;
  readonly angle?: number;
  readonly cents?: number;
}

export interface PlacementTableOptions {
  readonly unit: 'mm' | 'in';
  /** ISO date of issue. */
  readonly date: string;
}

/**
 * Every figure that the bridge is placed by, as a table with its units in the header: the placement numbers, the rule
 * distances, the holes, and the compensation of each string. + from the centreline: toward the treble side, for either hand.
 * Fails with the reasons when they could not be computed.
 */
export const placementRows = (
  project: Project,
  derived: Derived,
  { unit, date }: PlacementTableOptions,
): Result<readonly (readonly Cell[])[]> => {
  const { placement, saddle, bridge, board } = derived;
  if (!placement.ok || !saddle.ok || !bridge.ok || !board.ok) return failed(derived.issues);
  const { nut, hand } = project.instrument;
  const datum = DATUM_NAME[nut.datum];
  const length = (mm: number | null | undefined): Cell =>
    mm === null || mm === undefined ? null : { value: unit === 'in' ? mm / MM_PER_INCH : mm, decimals: DECIMALS[unit] };
  const other = (value: number | undefined, decimals: number): Cell =>
    value === undefined ? null : { value, decimals };
  const about: readonly Cell[] = [project.about.name, String(project.revision), hand, datum.full, date];
  const row = (group: string, figure: string, of: Figures): readonly Cell[] => [
    group,
    figure,
    length(of.fromNut),
    length(of.fromTwelfth),
    length(of.fromNutFace),
    length(of.fromCentreline),
    length(of.distance),
    other(of.angle === undefined ? undefined : (of.angle * 180) / Math.PI, DECIMALS.degrees),
    other(of.cents, DECIMALS.cents),
    ...about,
  ];
  const header = [
    'group',
    'figure',
    `from ${datum.short} (${unit})`,
    `from 12th fret (${unit})`,
    `from nut face (${unit})`,
    `from centreline, + treble (${unit})`,
    `distance (${unit})`,
    'angle (degrees)',
    'pitch (cents)',
    'instrument',
    'revision',
    'hand',
    'datum',
    'date',
  ];
  const number = ({ label, ...figures }: Omit<PlacementNumber, 'id'>): readonly Cell[] =>
    row('placement', label, figures);
  const hole = ({ label, centre }: Hole): readonly Cell[] =>
    row('hole', label, {
      fromNut: centre.y,
      fromTwelfth: centre.y - board.value.twelfth,
      fromNutFace: nut.datum === 'zero-fret' ? centre.y + nut.face : null,
      fromCentreline: centre.x,
    });
  return ok([
    header,
    ...placement.value.numbers.map(number),
    number({ label: 'Square line', ...placement.value.squareLine[unit] }),
    row('placement', 'Slant, + bass farther back', { angle: placement.value.slant }),
    row('placement', 'One mm along the centreline at the 12th fret', { cents: placement.value.centsPerMm }),
    ...placement.value.distances.map(({ from, to, value }) => row('distance', `${from} to ${to}`, { distance: value })),
    ...[...bridge.value.pins, ...bridge.value.locating].map(hole),
    ...saddle.value.strings.flatMap(({ name, wanted, line, cents, x }) => [
      row('compensation', `${name}, wanted`, { distance: wanted, fromCentreline: x }),
      row('compensation', `${name}, by the slot, + sharp`, { distance: line, cents, fromCentreline: x }),
    ]),
  ]);
};
