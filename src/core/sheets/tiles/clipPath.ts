import { arcGeometry } from '../../geom/arcGeometry';
import { bernsteinRoots } from '../../geom/bernsteinRoots';
import { closedSegments } from '../../geom/closedSegments';
import { splitSegment } from '../../geom/edit/splitSegment';
import { pathBounds } from '../../geom/pathBounds';
import { segmentPoint } from '../../geom/snap/segmentPoint';
import { COINCIDENT_MM } from '../../geom/tolerances';
import type { Bounds, Path, Point, Segment } from '../../geom/types';

/** Shares of a segment, between 0 and 1, at which it meets an upright or level line. */
const meets = (start: Point, segment: Segment, axis: 'x' | 'y', side: number): readonly number[] => {
  const from = start[axis] - side;
  const until = segment.to[axis] - side;
  switch (segment.kind) {
    case 'line':
      return from * until < 0 ? [from / (from - until)] : [];
    case 'cubic':
      return bernsteinRoots([from, segment.c1[axis] - side, segment.c2[axis] - side, until]);
    case 'arc': {
      const { radius, startAngle, sweep } = arcGeometry(start, segment);
      const cosine = (side - segment.centre[axis]) / radius;
      if (Math.abs(cosine) >= 1) return [];
      const turn = Math.acos(cosine);
      const middle = axis === 'x' ? 0 : Math.PI / 2;
      return [middle + turn, middle - turn].map((angle) => {
        const along = (angle - startAngle) * Math.sign(sweep);
        return (along - 2 * Math.PI * Math.floor(along / (2 * Math.PI))) / Math.abs(sweep);
      });
    }
  }
};

const within = ({ x, y }: Point, { minX, minY, maxX, maxY }: Bounds): boolean =>
  x >= minX - COINCIDENT_MM && x <= maxX + COINCIDENT_MM && y >= minY - COINCIDENT_MM && y <= maxY + COINCIDENT_MM;

interface Piece {
  readonly start: Point;
  readonly segment: Segment;
}

/** A segment cut where it meets the rectangle's sides. */
const cut = (start: Point, segment: Segment, { minX, minY, maxX, maxY }: Bounds): readonly Piece[] => {
  const shares = [
    ...meets(start, segment, 'x', minX),
    ...meets(start, segment, 'x', maxX),
    ...meets(start, segment, 'y', minY),
    ...meets(start, segment, 'y', maxY),
  ]
    .filter((share) => share > 1e-9 && share < 1 - 1e-9)
    .sort((one, other) => one - other);
  const pieces: Piece[] = [];
  let [from, rest, done] = [start, segment, 0];
  for (const share of shares) {
    if (share - done < 1e-9) continue;
    const [first, last] = splitSegment(from, rest, (share - done) / (1 - done));
    pieces.push({ start: from, segment: first });
    [from, rest, done] = [first.to, last, share];
  }
  return [...pieces, { start: from, segment: rest }];
};

/**
 * What of a path lies within an upright rectangle, in the path's order; the path itself when all of it does. Lines, arcs and
 * cubics stay what they are. Pieces of an outline are open: an area is not cut, only its edge.
 *
 * @throws RangeError when the path is not valid
 */
export const clipPath = (path: Path, bounds: Bounds): readonly Path[] => {
  const { minX, minY, maxX, maxY } = pathBounds(path);
  if (within({ x: minX, y: minY }, bounds) && within({ x: maxX, y: maxY }, bounds)) return [path];
  if (maxX < bounds.minX || minX > bounds.maxX || maxY < bounds.minY || minY > bounds.maxY) return [];
  const found: Path[] = [];
  let joins = false;
  for (const { start, segment } of closedSegments(path))
    for (const piece of cut(start, segment, bounds)) {
      const inside = within(segmentPoint(piece.start, piece.segment, 0.5), bounds);
      const last = found.at(-1);
      if (inside && joins && last !== undefined)
        found.splice(-1, 1, { ...last, segments: [...last.segments, piece.segment] });
      else if (inside) found.push({ start: piece.start, segments: [piece.segment], closed: false });
      joins = inside;
    }
  return found;
};
