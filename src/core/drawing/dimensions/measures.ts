import { CAPITAL_HEIGHT } from '../../text/capitalHeight';
import { TEXT_HEIGHT } from '../textHeights';

/**
 * How dimensions are drawn, mm. After ISO 129-1, from memory: open arrowheads of 30°; witness lines with a gap at the
 * part, reaching a little past the dimension line; words over their line, read from below or from the
 * right; arrowheads outside where there is no room between.
 */
export const DIMENSION = {
  arrow: 2.2,
  /** Half the angle of an arrowhead, radians. */
  arrowHalfAngle: Math.PI / 12,
  gap: 0.8,
  past: 0.7,
  /** Length of a dimension line outside of outer arrowheads. */
  outside: 4.4,
  /** The least distance that has both arrowheads between its ends. */
  roomForArrows: 6,
  textHeight: TEXT_HEIGHT.label,
  /** From a line to the middle of words over it: what hangs below their foot stays clear of the line. */
  toWords: (CAPITAL_HEIGHT / 2) * TEXT_HEIGHT.label + 1.5,
  /** From where a shelf begins to the words on it. */
  shelfPad: 0.8,
} as const;
