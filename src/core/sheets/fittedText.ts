import type { Cut } from '../text/advanceWidth';
import { measureText } from '../text/measureText';

/** The text, or as much of it as fits with an ellipsis. width and height (font size): mm. */
export const fittedText = (text: string, width: number, height: number, cut: Cut): string => {
  if (measureText(text, height, cut) <= width) return text;
  let kept = text;
  while (kept !== '' && measureText(`${kept}…`, height, cut) > width) kept = [...kept].slice(0, -1).join('');
  return `${kept.trimEnd()}…`;
};
