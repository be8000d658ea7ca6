import type { StringUp } from '../document/buildTypes';
import type { FretReading } from './travelOfCents';

/** What was read of a string, the lowest fret first. */
export const readingsOf = ({ cents }: Pick<StringUp, 'cents'>, stringId: string): readonly FretReading[] =>
  Object.entries(cents[stringId] ?? {})
    .map(([fret, value]) => ({ fret: Number(fret), cents: value }))
    .sort((one, other) => one.fret - other.fret);

/** The frets that were read on any string, the lowest first. */
export const fretsRead = ({ cents }: Pick<StringUp, 'cents'>): readonly number[] =>
  [...new Set(Object.values(cents).flatMap((byFret) => Object.keys(byFret).map(Number)))].sort(
    (one, other) => one - other,
  );
