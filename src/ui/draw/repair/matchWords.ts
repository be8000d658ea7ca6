import type { HoleMatch } from '../../../core/repair/types';
import { signedCents } from '../../withSign';
import { sideWords } from './sideText';

/** Less than this is no move, mm. */
const STILL = 0.005;

/** Where the bridge would go for the best match of its holes, and what that costs, in sentences. */
export const matchWords = ({ shift, fit, costs }: HoleMatch, show: (mm: number) => string): string => {
  const along =
    Math.abs(shift.y) < STILL ? '' : `${show(Math.abs(shift.y))} toward the ${shift.y > 0 ? 'tail' : 'nut'}`;
  const aside = Math.abs(shift.x) < STILL ? '' : sideWords(shift.x, show).replace(/\.$/, '');
  const degrees = (fit.pose.angle * 180) / Math.PI;
  const turn =
    Math.abs(degrees) < 0.005
      ? ''
      : `turned ${Math.abs(degrees).toFixed(2)}° with the ${degrees > 0 ? 'treble' : 'bass'} end back`;
  const moves = [along, aside, turn].filter((part) => part !== '');
  if (moves.length === 0) return 'The holes match best with the bridge where the strings want it.';
  const cost = costs.map(({ name, cents }) => `${name} ${signedCents(cents)} cents`).join(', ');
  return `The holes match best with the bridge ${moves.join(', ')}. At the 12th fret that makes ${cost} (+ is sharp).`;
};
