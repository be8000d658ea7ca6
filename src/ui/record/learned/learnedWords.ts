import type { Outcome } from '../../../core/learning/outcomeOf';
import type { LeftAside, Shop } from '../../../core/learning/shopOf';
import type { WithoutOne } from '../../../core/learning/whatToExpect';

const ASIDE: Readonly<Record<LeftAside, string>> = {
  kind: 'of another kind',
  count: 'with another number of strings',
  pitches: 'tuned otherwise',
  gauges: 'with other gauges',
  scale: 'of another scale',
  model: 'of another model',
  unread: 'without a first reading',
  failed: 'that cannot be computed',
  copy: 'twice in the library',
};

/** "No. 12", or the name where it has no number. */
export const outcomeName = ({ serial, name }: Pick<Outcome, 'serial' | 'name'>): string =>
  serial.trim() === '' ? (name.trim() === '' ? 'Unnamed' : name) : serial;

const counted = (count: number): string => (count === 1 ? '1 instrument' : `${count} instruments`);

/** How many instruments count, and why others do not. */
export const shopWords = ({ outcomes, aside }: Shop): string => {
  const left = Object.entries(aside).map(([reason, count]) => `${count} ${ASIDE[reason as LeftAside]}`);
  const rest = left.length === 0 ? '' : ` Left aside: ${left.join(', ')}.`;
  return `${outcomes.length === 0 ? 'No instrument' : counted(outcomes.length)} of like kind ${outcomes.length === 1 ? 'was' : outcomes.length === 0 ? 'was' : 'were'} read at ${outcomes.length > 1 ? 'their' : 'its'} first setting.${rest}`;
};

/** What one instrument makes to the figures: the string on which most hangs on it. */
export const withoutWords = (
  { outcome, estimates, most }: WithoutOne,
  names: readonly string[],
  signed: (mm: number) => string,
): string => {
  const without = estimates[most.string] ?? null;
  const who = outcomeName(outcome);
  const string = `string ${most.string + 1} (${names[most.string] ?? ''})`;
  return without === null
    ? `Without ${who} there would be no figure for ${string}.`
    : `Without ${who} the figure for ${string} would be ${signed(without)} in place of ${signed(without + most.change)}.`;
};

/** That an instrument came out farther off than the others let expect. */
export const strayWords = ({ outcome, stray }: WithoutOne, names: readonly string[]): string =>
  `${outcomeName(outcome)} came out farther off than the others let expect in 99 cases of 100: ${stray
    .map((string) => `string ${string + 1} (${names[string] ?? ''})`)
    .join(', ')}. Look at its readings, its strings and its action before you count it.`;
