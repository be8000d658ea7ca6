import type { Item } from '../core/drawing/types';

/** Whether two plain values hold the same. Stops at the first difference, and goes no deeper where both are one object. */
const same = (one: unknown, other: unknown): boolean => {
  if (Object.is(one, other)) return true;
  if (typeof one !== 'object' || typeof other !== 'object' || one === null || other === null) return false;
  const keys = Object.keys(one);
  return (
    keys.length === Object.keys(other).length &&
    keys.every((key) => same(one[key as keyof typeof one], other[key as keyof typeof other]))
  );
};

/** Whether two items of a display list look the same and lie at the same place. */
export const sameItem = (one: Item, other: Item): boolean => same(one, other);
