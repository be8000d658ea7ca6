import { advanceWidth } from './advanceWidth';
import { composeText } from './composeText';

/** Characters of a text that the printed font lacks, each once, in order. */
export const missingCharacters = (text: string): readonly string[] => [
  ...new Set(Array.from(composeText(text)).filter((character) => advanceWidth(character, 'regular') === undefined)),
];
