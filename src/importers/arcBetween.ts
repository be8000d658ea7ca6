import { distance } from '../core/geom/points';
import { COINCIDENT_MM } from '../core/geom/tolerances';
import type { Point, Segment } from '../core/geom/types';

/** An arc that bulges less than this, mm, is a straight line. */
const FLAT_MM = 1e-6;

/**
 * The arc from one point to another that turns by `sweep` (radians, + clockwise as seen on the page, within one turn):
 * its centre stands at ½·chord/tan(sweep/2) from the middle of the chord. A flat one comes as a line.
 */
export const arcBetween = (from: Point, to: Point, sweep: number): Segment => {
  const chord = distance(from, to);
  const rise = (chord / 2) * Math.tan(sweep / 4);
  if (chord <= COINCIDENT_MM || !(Math.abs(rise) > FLAT_MM)) return { kind: 'line', to };
  const off = 1 / (2 * Math.tan(sweep / 2));
  const centre: Point = {
    x: (from.x + to.x) / 2 - (to.y - from.y) * off,
    y: (from.y + to.y) / 2 + (to.x - from.x) * off,
  };
  return { kind: 'arc', to, centre, clockwise: sweep > 0 };
};
