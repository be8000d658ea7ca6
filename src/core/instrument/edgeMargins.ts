import type { TrebleBass } from '../document/types';

/** An outer string: its centre at the nut datum and at the saddle, and its outside diameter, mm. */
export interface OuterString {
  readonly nutX: number;
  readonly saddleX: number;
  readonly diameter: number;
}

/**
 * Board edge to the outside of both outer strings across a line, mm: − when a string runs outside of the edge. The board
 * is even about the centreline; the width is read across it, or is that of the edges carried on.
 * @param line y from the nut datum, and the board's width there
 * @param saddleY where the strings break, from the nut datum, above 0
 * @throws RangeError on a figure that is not finite, or a saddle at the nut
 */
export const edgeMargins = (
  treble: OuterString,
  bass: OuterString,
  saddleY: number,
  line: { readonly y: number; readonly width: number },
): TrebleBass => {
  const figures = [...Object.values(treble), ...Object.values(bass), saddleY, line.y, line.width];
  if (!figures.every(Number.isFinite)) throw new RangeError('Expected finite places, diameters and widths.');
  if (saddleY <= 0) throw new RangeError(`Expected the saddle beyond the nut, got ${saddleY}.`);
  const at = ({ nutX, saddleX }: OuterString): number => nutX + ((saddleX - nutX) * line.y) / saddleY;
  return {
    treble: line.width / 2 - at(treble) - treble.diameter / 2,
    bass: line.width / 2 + at(bass) - bass.diameter / 2,
  };
};
