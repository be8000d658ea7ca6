import type { StringCompensation } from '../../bridge/types';
import type { LengthStyle } from '../../units/formatLength';
import { showLength } from '../../units/showLength';

const listed = (names: readonly string[]): string =>
  names.length < 2 ? names.join('') : `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`;

/** What the compensation plot says: where the straight saddle stands, and whether its crown reaches every mark. */
export const compensationSummary = (strings: readonly StringCompensation[], style: LengthStyle): string => {
  const show = (mm: number): string => showLength(mm, style);
  const told = strings.map(({ name }, index) => `${index + 1} (${name})`);
  const ends = [0, strings.length - 1].map(
    (index) => `${show(strings[index]?.line ?? 0)} at string ${told[index] ?? ''}`,
  );
  const missed = strings.flatMap(({ crown }, index) => (crown.reached ? [] : [{ index, left: Math.abs(crown.left) }]));
  const line = `The straight saddle stands ${ends.join(' and ')} behind the octave line.`;
  if (missed.length === 0) return `${line} Its crown can be shaped to the mark of every string.`;
  const names = `${missed.length === 1 ? 'string' : 'strings'} ${listed(missed.map(({ index }) => told[index] ?? ''))}`;
  const most = show(Math.max(...missed.map(({ left }) => left)));
  return `${line} Its crown cannot be shaped to the mark of ${names}: ${most} is left${missed.length === 1 ? '' : ' at most'}.`;
};
