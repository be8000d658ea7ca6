import { measureText } from '../../text/measureText';
import { TEXT_HEIGHT } from '../textHeights';

/** A note that is at most `width` wide, mm: cut after as many characters as fit with "…" behind them. */
export const shortenText = (text: string, width: number): string => {
  const wide = (words: string): number => measureText(words, TEXT_HEIGHT.note, 'regular');
  if (wide(text) <= width) return text;
  const characters = Array.from(text);
  let kept = characters.length;
  while (kept > 0 && wide(`${characters.slice(0, kept).join('')}…`) > width) kept -= 1;
  return `${characters.slice(0, kept).join('')}…`;
};
