import { between, distance, dot, subtract } from '../geom/points';
import type { Point } from '../geom/types';
import type { BracePlace } from './types';

type Middle = Pick<BracePlace, 'from' | 'to'>;

/** The point of a brace's middle that is nearest to a point; an end where the point lies beyond it. */
const nearestOnBrace = ({ from, to }: Middle, point: Point): Point => {
  const along = subtract(to, from);
  const share = dot(subtract(point, from), along) / dot(along, along);
  return between(from, to, Math.min(1, Math.max(0, share)));
};

/** Wood between the rim of a hole and the side of a brace, mm, − when the hole runs into it. Exact along the brace, round at its ends. */
export const braceGap = (brace: BracePlace, centre: Point, diameter: number): number =>
  distance(centre, nearestOnBrace(brace, centre)) - (brace.width + diameter) / 2;

/** x of a brace's middle where it crosses a line square to the centreline; null where it does not. */
export const braceAcross = ({ from, to }: Middle, y: number): number | null => {
  if (from.y === to.y || y < Math.min(from.y, to.y) || y > Math.max(from.y, to.y)) return null;
  return from.x + ((to.x - from.x) * (y - from.y)) / (to.y - from.y);
};
