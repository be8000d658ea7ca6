import { wrapText } from '../../text/wrapText';
import { TEXT_HEIGHT } from '../textHeights';
import type { Item } from '../types';
import { plotText } from './plotItems';

const ROW = 4.4;
const TO_EDGE = 3;

/** A sentence below a plot in lines of at most `width`, from the middle of its first line; height down to the paper's edge. */
export const plotCaption = (
  text: string,
  from: { readonly x: number; readonly y: number },
  width: number,
): { readonly items: readonly Item[]; readonly height: number } => {
  const lines = wrapText(text, width, TEXT_HEIGHT.note, 'regular');
  return {
    items: lines.map((line, index) =>
      plotText(`caption-${index + 1}`, 'caption', 'note', { x: from.x, y: from.y + index * ROW }, line, 'start'),
    ),
    height: (lines.length - 1) * ROW + TO_EDGE,
  };
};
