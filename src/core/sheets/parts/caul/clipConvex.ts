import { between, cross, distance, subtract } from '../../../geom/points';
import type { Point } from '../../../geom/types';

/** How far a point lies within the side of a clockwise outline, mm: − outside of it. */
const within = (from: Point, to: Point, point: Point): number =>
  cross(subtract(to, from), subtract(point, from)) / distance(from, to);

/** The part of a convex polygon that lies within a side moved outward by `grow`. */
const clipBySide = (polygon: readonly Point[], from: Point, to: Point, grow: number): readonly Point[] =>
  polygon.flatMap((point, index) => {
    const before = polygon.at(index - 1) ?? point;
    const [was, is] = [within(from, to, before) + grow, within(from, to, point) + grow];
    const crossed = was < 0 !== is < 0 ? [between(before, point, was / (was - is))] : [];
    return is < 0 ? crossed : [...crossed, point];
  });

/**
 * The part of a convex polygon that another covers when each of its sides is moved outward by `grow`, mm: its corners, none
 * when they lie apart. After Sutherland and Hodgman. cover: corners clockwise as seen on the page, no two alike.
 */
export const clipConvex = (polygon: readonly Point[], cover: readonly Point[], grow: number): readonly Point[] =>
  cover.reduce<readonly Point[]>((left, from, index) => {
    const to = cover[(index + 1) % cover.length] ?? from;
    return clipBySide(left, from, to, grow);
  }, polygon);
