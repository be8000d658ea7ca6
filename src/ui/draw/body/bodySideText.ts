import type { Hand } from '../../../core/document/types';
import { plainSide } from '../repair/sideText';

/** Where the treble side of a body of this hand is, as seen from the front with the nut up. */
const trebleIs = (hand: Hand): string => (hand === 'right' ? 'right' : 'left');

/** Words for a side brought into the sign that the field takes, left and right too: on a right-handed body "12 left" is "-12". */
export const plainBodySide = (text: string, hand: Hand): string => {
  const named = text.replace(/\b(left|right)\b/i, (side) =>
    side.toLowerCase() === trebleIs(hand) ? 'treble' : 'bass',
  );
  return plainSide(named);
};

/** Less than this is in the middle, mm. */
const MIDDLE = 0.0005;

/** Where something lies against the centreline of a body of this hand, in words. x: + toward its treble side, mm. */
export const bodySideWords = (x: number, hand: Hand, show: (mm: number) => string): string => {
  if (Math.abs(x) < MIDDLE) return 'On the centreline.';
  const treble = x > 0;
  const seen = treble === (trebleIs(hand) === 'right') ? 'right' : 'left';
  return `${show(Math.abs(x))} to the ${treble ? 'treble' : 'bass'} side, ${seen} as seen from the front.`;
};
