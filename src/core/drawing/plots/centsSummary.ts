import { roundDecimal } from '../../units/roundDecimal';
import { isBeyond } from './isBeyond';
import type { CentsByFret } from './types';

/** What the grid says: the note that is furthest out, and how many lie beyond the limit. */
export const centsSummary = ({ strings, frets, cents }: CentsByFret, limit: number): string => {
  const notes = cents.flatMap((row, string) => row.map((value, column) => ({ value, string, column })));
  const worst = notes.reduce((most, note) => (Math.abs(note.value) > Math.abs(most.value) ? note : most));
  const size = roundDecimal(Math.abs(worst.value), 1);
  const side = size === 0 ? '' : worst.value > 0 ? ' sharp' : ' flat';
  const beyond = notes.filter(({ value }) => isBeyond(value, limit)).length;
  const where = `string ${worst.string + 1} (${strings[worst.string]}) at fret ${frets[worst.column]}`;
  const rest =
    beyond === 0
      ? `${notes.length === 1 ? 'The note lies' : `All ${notes.length} notes lie`} within ${limit} cents.`
      : `${beyond} of ${notes.length} notes ${beyond === 1 ? 'lies' : 'lie'} beyond ${limit} cents.`;
  return `Furthest out: ${size.toFixed(1)} cents${side}, ${where}. ${rest}`;
};
