import { lineCrossings } from '../../../geom/lineCrossings';
import { pathContains } from '../../../geom/pathContains';
import { add, between, distance, scale, subtract } from '../../../geom/points';
import type { Path, Point } from '../../../geom/types';

/** A straight piece of a line, mm. */
export interface LinePiece {
  readonly from: Point;
  readonly to: Point;
}

/** Shorter pieces are left out, mm. */
const SHORTEST = 1e-3;

/** Whether a point lies within closed outlines, holes in them left out (even-odd). */
const within = (outlines: readonly Path[], point: Point): boolean =>
  outlines.filter((outline) => pathContains(outline, point)).length % 2 === 1;

/** The pieces of a straight line from point to point that lie within closed outlines, or those that lie outside of them. */
export const linePieces = (
  outlines: readonly Path[],
  from: Point,
  to: Point,
  side: 'inside' | 'outside',
): readonly LinePiece[] => {
  const length = distance(from, to);
  if (length < SHORTEST) return [];
  const way = scale(subtract(to, from), 1 / length);
  const crossings = outlines
    .flatMap((outline) => lineCrossings(outline, from, way))
    .filter((along) => along > 0 && along < length)
    .sort((one, other) => one - other);
  const at = (along: number): Point => add(from, scale(way, along));
  const pieces: { begin: number; end: number }[] = [];
  let begin = 0;
  for (const end of [...crossings, length]) {
    const wanted =
      end - begin >= SHORTEST && within(outlines, between(at(begin), at(end), 0.5)) === (side === 'inside');
    const last = pieces.at(-1);
    if (wanted && last !== undefined && begin - last.end < SHORTEST) last.end = end;
    else if (wanted) pieces.push({ begin, end });
    begin = end;
  }
  return pieces.map((piece) => ({ from: at(piece.begin), to: at(piece.end) }));
};
