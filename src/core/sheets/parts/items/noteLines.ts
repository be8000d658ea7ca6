import { TEXT_HEIGHT } from '../../../drawing/textHeights';
import type { Item } from '../../../drawing/types';
import type { Point } from '../../../geom/types';
import { wrapText } from '../../../text/wrapText';
import { sheetText } from '../../sheetItems';

/** From one line of notes to the next, mm. */
const PITCH = 4.4;

/**
 * What a maker reads beside a drawing: a bold first line, then notes, each wrapped at a width. at: left end and middle of
 * the first line's capitals.
 */
export const noteLines = (at: Point, width: number, heading: string, notes: readonly string[]): readonly Item[] =>
  [
    ...wrapText(heading, width, TEXT_HEIGHT.label, 'bold').map((text) => ({ role: 'heading' as const, text })),
    ...notes
      .flatMap((note) => wrapText(note, width, TEXT_HEIGHT.note, 'regular'))
      .map((text) => ({ role: 'note' as const, text })),
  ].map(({ role, text }, index) => sheetText(`notes-${index}`, role, { x: at.x, y: at.y + index * PITCH }, text));
