import { advanceWidth } from './advanceWidth';
import { composeText } from './composeText';

/** Stands for a character that the printed font lacks. */
const MISSING_BOX = '□';

/** A text as it can be printed: a box for each character that the font lacks. */
export const printableText = (text: string): string =>
  Array.from(composeText(text), (character) =>
    advanceWidth(character, 'regular') === undefined ? MISSING_BOX : character,
  ).join('');
