import type { Path, Point } from '../core/geom/types';

/** Coordinates beyond this are not of a drawing: ten thousand kilometres, when a unit is a millimetre. */
const FARTHEST = 1e10;

const sound = ({ x, y }: Point): boolean => Math.abs(x) <= FARTHEST && Math.abs(y) <= FARTHEST;

/** Whether every coordinate of a path is a number that can be worked with. */
export const isFinitePath = ({ start, segments }: Path): boolean =>
  sound(start) &&
  segments.every((segment) => {
    if (!sound(segment.to)) return false;
    if (segment.kind === 'arc') return sound(segment.centre);
    return segment.kind === 'line' || (sound(segment.c1) && sound(segment.c2));
  });
