import type { PlaceRound, StringUp } from '../../core/document/buildTypes';
import type { Project } from '../../core/document/types';
import { MM_PER_INCH } from '../../core/units/mmPerInch';
import type { Cell } from './makeCsv';

/** Decimals of each kind of figure: a micron, a ten-thousandth of an inch, a thousandth of a cent, a tenth of a percent. */
const DECIMALS = { mm: 3, in: 4, cents: 3, percent: 1 } as const;

/** One figure of a history; mm, cents and percent. */
interface Figure {
  readonly figure: string;
  readonly string?: string;
  readonly fret?: number;
  readonly cents?: number;
  /** In 19 cases of 20, cents. */
  readonly tuner?: number;
  readonly length?: number;
  /** One sigma of the length. */
  readonly sigma?: number;
  readonly percent?: number;
  readonly by?: string;
}

const ofStringUp = ({ cents, tuner, action, relief, humidity, meter, predicted, stood }: StringUp) => {
  const length = (figure: string, value: number | null): readonly Figure[] =>
    value === null ? [] : [{ figure, length: value }];
  const perString = (figure: string, values: Readonly<Record<string, number>>): readonly Figure[] =>
    Object.entries(values).map(([string, value]) => ({ figure, string, length: value }));
  const figures: readonly Figure[] = [
    ...Object.entries(cents).flatMap(([string, byFret]) =>
      Object.entries(byFret).map(([fret, value]) => ({
        figure: 'pitch',
        string,
        fret: Number(fret),
        cents: value,
        tuner,
      })),
    ),
    ...length('action, treble', action.treble),
    ...length('action, bass', action.bass),
    ...length('relief', relief),
    ...(humidity === null ? [] : [{ figure: 'humidity', percent: humidity, by: meter }]),
    ...perString('setback as planned', predicted),
    ...perString('setback as it stood', stood),
  ];
  return figures;
};

const ofRound = ({ readings }: PlaceRound): readonly Figure[] =>
  readings.map(({ line, value, tool, sigma }) => ({ figure: line, length: value, sigma, by: tool }));

/**
 * What was read of instruments, figure by figure, as a table with its units in the header: every string-up, and every time
 * that a bridge's place was read. Moments are ISO 8601 in UTC. Models have no rows.
 */
export const historyRows = (projects: readonly Project[], unit: 'mm' | 'in'): readonly (readonly Cell[])[] => {
  const header = [
    'instrument',
    'number',
    'what',
    'taken (UTC)',
    'stage',
    'figure',
    'string',
    'fret',
    'pitch, + sharp (cents)',
    '± of the tuner, 19 of 20 (cents)',
    `length (${unit})`,
    `one sigma (${unit})`,
    'relative (%)',
    'read by',
    'crown',
    'place accepted',
    'note',
  ];
  const length = (mm: number | undefined): Cell =>
    mm === undefined ? null : { value: unit === 'in' ? mm / MM_PER_INCH : mm, decimals: DECIMALS[unit] };
  const other = (value: number | undefined, decimals: number): Cell =>
    value === undefined ? null : { value, decimals };

  const rowsOf = ({ about, build, strings }: Project): readonly (readonly Cell[])[] => {
    if (build === null) return [];
    const nameOf = (id: string | undefined): Cell => strings.find((each) => each.id === id)?.name ?? id ?? null;
    const rows = (
      what: string,
      { at, stage }: { readonly at: string; readonly stage: string },
      figures: readonly Figure[],
      ends: readonly Cell[],
    ): readonly (readonly Cell[])[] =>
      figures.map((of) => [
        about.name,
        build.serial,
        what,
        at,
        stage,
        of.figure,
        nameOf(of.string),
        other(of.fret, 0),
        other(of.cents, DECIMALS.cents),
        other(of.tuner, DECIMALS.cents),
        length(of.length),
        length(of.sigma),
        other(of.percent, DECIMALS.percent),
        of.by ?? null,
        ...ends,
      ]);
    return [
      ...build.rounds.flatMap((round) =>
        rows('place', round, ofRound(round), [null, round.accepted ? 'yes' : 'no', null]),
      ),
      ...build.stringUps.flatMap((each) => rows('string-up', each, ofStringUp(each), [each.crown, null, each.note])),
    ];
  };
  return [header, ...projects.flatMap(rowsOf)];
};
