import { aroundAll } from '../../core/geom/aroundAll';
import type { Bounds } from '../../core/geom/types';

/** The box made larger on every side. */
export const widened = ({ minX, minY, maxX, maxY }: Bounds, by: number): Bounds => ({
  minX: minX - by,
  minY: minY - by,
  maxX: maxX + by,
  maxY: maxY + by,
});

/** Whether two boxes have a point in common. */
export const meet = (one: Bounds, other: Bounds): boolean =>
  one.minX <= other.maxX && other.minX <= one.maxX && one.minY <= other.maxY && other.minY <= one.maxY;

/** What two boxes that meet have in common. */
export const common = (one: Bounds, other: Bounds): Bounds => ({
  minX: Math.max(one.minX, other.minX),
  minY: Math.max(one.minY, other.minY),
  maxX: Math.min(one.maxX, other.maxX),
  maxY: Math.min(one.maxY, other.maxY),
});

const area = ({ minX, minY, maxX, maxY }: Bounds): number => (maxX - minX) * (maxY - minY);

/** What painting a box costs beyond its area, in square pixels: so far apart, two are cheaper than one around both. Measured: as much as 200,000 square pixels. */
const PER_BOX = 200_000;
/** So many boxes are not looked at one by one. */
const MANY = 40;

/** Fewer boxes that cover all of them, in pixels: two are joined where one around both is cheaper to paint. */
export const joined = (boxes: readonly Bounds[]): readonly Bounds[] => {
  if (boxes.length > MANY) return [aroundAll(boxes)];
  let left: readonly Bounds[] = [];
  for (const box of boxes) {
    let grown = box;
    for (;;) {
      const partner = left.find((each) => area(aroundAll([each, grown])) <= area(each) + area(grown) + PER_BOX);
      if (partner === undefined) break;
      grown = aroundAll([partner, grown]);
      left = left.filter((each) => each !== partner);
    }
    left = [...left, grown];
  }
  return left;
};
