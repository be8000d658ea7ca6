import { circlePath } from '../geom/circlePath';
import { pathToCubics } from '../geom/pathToCubics';
import type { Path, Point, Segment } from '../geom/types';

/**
 * An upright oval, closed, mm: a true circle when it is as long as it is wide, else a circle in cubics of at most 30°
 * stretched along y.
 *
 * @throws RangeError when a number is not finite, or a side is not above 0
 */
export const ovalPath = (centre: Point, across: number, along: number): Path => {
  const circle = circlePath(centre, across / 2);
  if (!Number.isFinite(along) || along <= 0) throw new RangeError(`Expected an oval longer than 0, got ${along}.`);
  if (along === across) return circle;
  const stretched = ({ x, y }: Point): Point => ({ x, y: centre.y + ((y - centre.y) * along) / across });
  const { start, segments, closed } = pathToCubics(circle);
  return {
    start: stretched(start),
    segments: segments.map(
      (segment): Segment =>
        segment.kind === 'cubic'
          ? { kind: 'cubic', to: stretched(segment.to), c1: stretched(segment.c1), c2: stretched(segment.c2) }
          : { kind: 'line', to: stretched(segment.to) },
    ),
    closed,
  };
};
