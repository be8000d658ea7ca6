import { ordinal } from '../units/ordinal';
import type { LengthField } from './fieldTypes';

/** Readings that one survey holds in all. */
export const MOST_READINGS = 30;

/** The n-th reading (from 0) of nut datum to a fret. */
export const readingField = (fret: number, index: number): LengthField => ({
  kind: 'length',
  path: `instrument.scale.readings.${fret}.${index}`,
  label: `Nut to ${ordinal(fret)} fret, ${ordinal(index + 1)} reading`,
  min: 10,
  max: 900,
  optional: true,
  help: `Steel rule on the frets, from the nut datum to the crown of the ${ordinal(fret)} fret. Lift the rule and lay it again for each reading.`,
});

/** Fret (1 to 36) and index of a reading's path, or null. */
export const readingOfPath = (path: string): { readonly fret: number; readonly index: number } | null => {
  const found = /^instrument\.scale\.readings\.([1-9]|[12]\d|3[0-6])\.(\d)$/.exec(path);
  return found === null ? null : { fret: Number(found[1]), index: Number(found[2]) };
};
