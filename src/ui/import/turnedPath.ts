import { mirrorPath } from '../../core/geom/mirrorPath';
import type { Path, Point, Segment } from '../../core/geom/types';

/** A quarter turn clockwise as seen on the page, exactly. */
const quarter = ({ x, y }: Point): Point => ({ x: 0 - y, y: x });

const turnSegment = (segment: Segment): Segment => {
  const to = quarter(segment.to);
  switch (segment.kind) {
    case 'line':
      return { ...segment, to };
    case 'arc':
      return { ...segment, to, centre: quarter(segment.centre) };
    case 'cubic':
      return { ...segment, to, c1: quarter(segment.c1), c2: quarter(segment.c2) };
  }
};

/** How a path is laid before it is taken. */
export interface Turn {
  /** Quarter turns clockwise, 0 to 3. */
  readonly quarters: number;
  /** Turned over first, left to right. */
  readonly flipped: boolean;
}

/** A path turned about the origin. */
export const turnedPath = (path: Path, { quarters, flipped }: Turn): Path => {
  let turned = flipped ? mirrorPath(path) : path;
  for (let turn = 0; turn < quarters; turn++)
    turned = { ...turned, start: quarter(turned.start), segments: turned.segments.map(turnSegment) };
  return turned;
};
