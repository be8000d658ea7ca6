import { studentT } from '../numeric/studentT';
import { fretGroups } from './fretGroups';
import type { SurveyFinding, SurveyReading } from './surveyTypes';

/** Chance of one false alarm among all that is tested when every reading is sound. */
const FALSE_ALARM = 0.05;

/** How many sigmas count as too many when `tests` things are looked at at once (Bonferroni's share of the chance). */
export const tooFar = (tests: number): number => studentT(1 - FALSE_ALARM / tests, Number.POSITIVE_INFINITY);

const median = (numbers: readonly number[]): number => {
  const sorted = [...numbers].sort((a, b) => a - b);
  const middle = sorted.length >> 1;
  const upper = sorted[middle] ?? 0;
  return sorted.length % 2 === 1 ? upper : ((sorted[middle - 1] ?? upper) + upper) / 2;
};

/**
 * The doubt of one reading by which strays are judged, mm: the rule's, or the scatter within frets where that is more. The
 * scatter is the median distance from the fret's own median (1.4826 makes it a sigma), which a few strays hardly move.
 */
export const noiseWithin = (readings: readonly SurveyReading[], ruleDoubt: number): number => {
  const distances = fretGroups(readings, [...readings.keys()])
    .filter(({ values }) => values.length > 1)
    .flatMap(({ values }) => {
      const centre = median(values);
      const fewReadings = Math.sqrt(values.length / (values.length - 1));
      return values.map((value) => Math.abs(value - centre) * fewReadings);
    });
  return Math.max(ruleDoubt, 1.4826 * median(distances));
};

/**
 * Readings that stand off the others to the same fret, worst first, and pairs that disagree. Each reading is held against
 * the mean of the others, which it cannot pull. Where the fret itself stands plays no part.
 * @param ruleDoubt doubt of one reading, mm
 */
export const strayReadings = (readings: readonly SurveyReading[], ruleDoubt: number): readonly SurveyFinding[] => {
  const sigma = noiseWithin(readings, ruleDoubt);
  const findings: SurveyFinding[] = [];
  let kept: readonly number[] = [...readings.keys()];
  const limit = tooFar(readings.length);
  for (let stray = worst(readings, kept, sigma); stray && stray.sigmas > limit; stray = worst(readings, kept, sigma)) {
    const { index, fret, off } = stray;
    findings.push({ kind: 'reading', index, fret, off });
    kept = kept.filter((each) => each !== index);
  }
  for (const { fret, indices, values } of fretGroups(readings, kept)) {
    const [first, second] = indices;
    if (indices.length !== 2 || first === undefined || second === undefined) continue;
    const off = Math.abs((values[0] ?? 0) - (values[1] ?? 0));
    // A pair must not speak for its own scatter.
    const elsewhere = noiseWithin(
      kept.flatMap((index) => readings[index] ?? []).filter((reading) => reading.fret !== fret),
      ruleDoubt,
    );
    if (off > limit * elsewhere * Math.SQRT2) findings.push({ kind: 'pair', indices: [first, second], fret, off });
  }
  return findings;
};

/** The reading farthest from the others to its fret, of the frets read three times or more. */
const worst = (readings: readonly SurveyReading[], kept: readonly number[], sigma: number) =>
  fretGroups(readings, kept)
    .filter(({ values }) => values.length > 2)
    .flatMap(({ fret, indices, values, mean }) =>
      indices.map((index, place) => {
        const others = values.length - 1;
        // Mean of the others, from the mean of all.
        const off = (((values[place] ?? 0) - mean) * values.length) / others;
        return { index, fret, off, sigmas: Math.abs(off) / (sigma * Math.sqrt(1 + 1 / others)) };
      }),
    )
    .sort((a, b) => b.sigmas - a.sigmas)[0];
