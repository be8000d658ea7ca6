import type { SurveyReading } from './surveyTypes';

/** The readings that go to one fret. */
export interface FretGroup {
  readonly fret: number;
  /** Places in the list of readings. */
  readonly indices: readonly number[];
  readonly values: readonly number[];
  readonly mean: number;
}

/** The readings at the places `kept`, gathered by fret, lowest first. */
export const fretGroups = (readings: readonly SurveyReading[], kept: readonly number[]): readonly FretGroup[] => {
  const byFret = new Map<number, number[]>();
  for (const index of kept) {
    const fret = readings[index]?.fret ?? Number.NaN;
    byFret.set(fret, [...(byFret.get(fret) ?? []), index]);
  }
  return [...byFret]
    .sort(([a], [b]) => a - b)
    .map(([fret, indices]) => {
      const values = indices.map((index) => readings[index]?.value ?? Number.NaN);
      return { fret, indices, values, mean: values.reduce((sum, value) => sum + value, 0) / values.length };
    });
};
