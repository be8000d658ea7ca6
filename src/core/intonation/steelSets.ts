import { NOTE_SOURCE, noteFrequency } from './noteFrequency';
import { STEEL_GAUGES } from './steelGauges';
import type { FigureSource, SetString, StringSet } from './stringSetTypes';

const MM_PER_INCH = 25.4; // exact
/** 453.59237 g per lb and 0.0254 m per in, both exact. */
const GRAM_PER_METRE_IN_LB_PER_INCH = 453.59237 / 0.0254;
const STEEL_MODULUS_GPA = 200;
const MODULUS_SAYS = 'modulus 200 GPa from memory (music wire is given as 190 to 210)';
const ROUND_SAYS = 'wound core taken as round: a hexagonal one of the same width adds 0.2 to 0.5 mm of compensation';

const GAUGE_SOURCE: FigureSource = { standing: 'published', says: 'the gauge that names the string' };
const OCTAVE_SOURCE: FigureSource = { standing: 'estimated', says: 'gauge chosen here from the common ones' };

/** One steel string by its gauge in thousandths of an inch. */
function steelString(
  name: string,
  note: string,
  course: number,
  thousandths: number,
  gaugeSource: FigureSource,
): SetString {
  const row = STEEL_GAUGES.find(({ gauge }) => Math.round(gauge * 1000) === thousandths);
  if (!row) throw new RangeError(`thousandths: expected a gauge of the table, got ${thousandths}`);
  const massPerLength = row.unitWeight * GRAM_PER_METRE_IN_LB_PER_INCH;
  return {
    name,
    course,
    frequency: noteFrequency(note),
    diameter: row.gauge * MM_PER_INCH,
    wound: row.wound,
    massPerLength,
    elastic: {
      kind: 'core',
      massPerLength,
      coreDiameter: row.core * MM_PER_INCH,
      coreShape: 'round',
      modulus: STEEL_MODULUS_GPA,
    },
    sources: {
      frequency: NOTE_SOURCE,
      diameter: gaugeSource,
      massPerLength: row.weightSource,
      elastic: {
        standing: row.wound ? row.coreSource.standing : 'from memory',
        says: [row.coreSource.says, ...(row.wound ? [ROUND_SAYS] : []), MODULUS_SAYS].join('; '),
      },
    },
  };
}

const GUITAR_NOTES = ['E4', 'B3', 'G3', 'D3', 'A2', 'E2'] as const;

const sixString = (gauges: readonly number[], gaugeSource: FigureSource): StringSet => ({
  id: `steel-${gauges[0]}-${gauges.at(-1)}`,
  name: `Steel, bronze-wound, ${gauges[0]}-${gauges.at(-1)}`,
  scaleLength: 645,
  strings: GUITAR_NOTES.map((note, i) => steelString(note, note, i + 1, gauges[i] as number, gaugeSource)),
});

/** Treble to bass; in an octave pair the thin string lies on the bass side (common practice, no source). */
const TWELVE: readonly (readonly [string, string, number, number])[] = [
  ['E4', 'E4', 1, 10],
  ['E4 twin', 'E4', 1, 10],
  ['B3', 'B3', 2, 14],
  ['B3 twin', 'B3', 2, 14],
  ['G3', 'G3', 3, 23],
  ['G3 octave', 'G4', 3, 8],
  ['D3', 'D3', 4, 30],
  ['D3 octave', 'D4', 4, 12],
  ['A2', 'A2', 5, 39],
  ['A2 octave', 'A3', 5, 17],
  ['E2', 'E2', 6, 47],
  ['E2 octave', 'E3', 6, 26],
];

const CHOSEN: FigureSource = {
  standing: 'estimated',
  says: 'gauges chosen here from the common ones, for like tensions',
};

const chosenSet = (
  id: string,
  name: string,
  scaleLength: number,
  rows: readonly (readonly [note: string, gauge: number])[],
): StringSet => ({
  id,
  name,
  scaleLength,
  strings: rows.map(([note, gauge], i) => steelString(note, note, i + 1, gauge, CHOSEN)),
});

/** Steel sets for guitar by gauge, lightest first, then the twelve-string, baritone and tenor guitar. */
export const STEEL_SETS: readonly StringSet[] = [
  sixString([10, 14, 23, 30, 39, 47], GAUGE_SOURCE),
  sixString([11, 15, 22, 32, 42, 52], GAUGE_SOURCE),
  sixString([12, 16, 24, 32, 42, 53], GAUGE_SOURCE),
  sixString([13, 17, 26, 35, 45, 56], { standing: 'from memory', says: 'gauges of a medium set, from memory' }),
  {
    id: 'steel-twelve-10-47',
    name: 'Steel, twelve strings, light, 10-47',
    scaleLength: 645,
    strings: TWELVE.map(([name, note, course, gauge]) => steelString(name, note, course, gauge, OCTAVE_SOURCE)),
  },
  chosenSet('steel-baritone-14-56', 'Steel, baritone guitar B to B, 14-56', 686, [
    ['B3', 14],
    ['F#3', 17],
    ['D3', 26],
    ['A2', 35],
    ['E2', 45],
    ['B1', 56],
  ]),
  chosenSet('steel-tenor-10-32', 'Steel, tenor guitar CGDA, 10-32', 584, [
    ['A4', 10],
    ['D4', 14],
    ['G3', 22],
    ['C3', 32],
  ]),
];
