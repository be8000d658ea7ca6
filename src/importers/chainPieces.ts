import { distance } from '../core/geom/points';
import type { Path, Point, Segment } from '../core/geom/types';
import { reversePath } from './reversePath';
import { JOIN_MM, refit } from './tidyPath';

/** One end of an open piece. */
interface End {
  readonly piece: number;
  readonly at: Point;
  /** Whether the piece is run backward when it is entered here. */
  readonly backward: boolean;
}

const endOf = ({ start, segments }: Path): Point => segments.at(-1)?.to ?? start;

/** Where more ends than this meet, no outline can be followed. */
const MOST_MEETING = 8;

/** Ends of pieces by squares as wide as the tolerance, so that only neighbours are looked at. */
const gridOf = (pieces: readonly Path[]): ((at: Point) => End[]) => {
  const grid = new Map<string, End[]>();
  const square = (value: number): number => Math.floor(value / JOIN_MM);
  const put = (end: End): void => {
    const key = `${square(end.at.x)} ${square(end.at.y)}`;
    const there = grid.get(key);
    if (there === undefined) grid.set(key, [end]);
    else if (there.length <= MOST_MEETING) there.push(end);
  };
  for (const [piece, path] of pieces.entries()) {
    put({ piece, at: path.start, backward: false });
    put({ piece, at: endOf(path), backward: true });
  }
  return (at) => {
    const near: End[] = [];
    for (let x = square(at.x) - 1; x <= square(at.x) + 1; x++)
      for (let y = square(at.y) - 1; y <= square(at.y) + 1; y++) near.push(...(grid.get(`${x} ${y}`) ?? []));
    const meeting = near.filter((end) => distance(end.at, at) <= JOIN_MM);
    return meeting.length > MOST_MEETING ? [] : meeting;
  };
};

/**
 * Open pieces joined where their ends meet within JOIN_MM, each used once, the nearest first. A chain that comes back to
 * its start is closed.
 */
export const chainPieces = (pieces: readonly Path[]): Path[] => {
  const near = gridOf(pieces);
  const used = pieces.map(() => false);
  const next = (at: Point): End | undefined =>
    near(at)
      .filter(({ piece }) => !used[piece])
      .sort((one, other) => distance(one.at, at) - distance(other.at, at))[0];

  const closes = (path: Path): boolean => distance(endOf(path), path.start) <= JOIN_MM;

  /** The path with every piece that goes on from its end. */
  const grow = (path: Path): Path => {
    const segments: Segment[] = [...path.segments];
    for (;;) {
      const from = segments.at(-1)?.to ?? path.start;
      const end = next(from);
      const piece = end && pieces[end.piece];
      if (end === undefined || piece === undefined) break;
      used[end.piece] = true;
      const { start, segments: added } = end.backward ? reversePath(piece) : piece;
      for (const [index, segment] of added.entries())
        segments.push(index === 0 ? refit(segment, start, from) : segment);
      if (closes({ ...path, segments })) break;
    }
    return { ...path, segments };
  };

  return pieces.flatMap((piece, index) => {
    if (used[index]) return [];
    used[index] = true;
    const forward = grow(piece);
    const whole = closes(forward) ? forward : grow(reversePath(forward));
    return [{ ...whole, closed: closes(whole) }];
  });
};
