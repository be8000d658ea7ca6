import type { Item, Layer } from '../core/drawing/types';
import { pathBounds } from '../core/geom/pathBounds';
import type { Bounds } from '../core/geom/types';

/** Layers that the view does not make room for. */
const ASIDE: readonly Layer[] = ['body', 'dimensions'];

/** The smallest rectangle around the lines of a display list that a view makes room for; null when it has none. */
export const drawingBounds = (items: readonly Item[]): Bounds | null => {
  const all = items.flatMap((item) =>
    item.kind === 'path' && !ASIDE.includes(item.layer) ? [pathBounds(item.path)] : [],
  );
  if (all.length === 0) return null;
  return {
    minX: Math.min(...all.map(({ minX }) => minX)),
    minY: Math.min(...all.map(({ minY }) => minY)),
    maxX: Math.max(...all.map(({ maxX }) => maxX)),
    maxY: Math.max(...all.map(({ maxY }) => maxY)),
  };
};
