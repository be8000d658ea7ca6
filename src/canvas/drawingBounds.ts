import type { Item, Layer } from '../core/drawing/types';
import { aroundAll } from '../core/geom/aroundAll';
import { pathBounds } from '../core/geom/pathBounds';
import type { Bounds } from '../core/geom/types';

/** Layers that the view does not make room for. */
const ASIDE: readonly Layer[] = ['body', 'dimensions'];

/** The smallest rectangle around the lines of a display list that a view makes room for; null when it has none. */
export const drawingBounds = (items: readonly Item[]): Bounds | null => {
  const all = items.flatMap((item) =>
    item.kind === 'path' && !ASIDE.includes(item.layer) ? [pathBounds(item.path)] : [],
  );
  return all.length === 0 ? null : aroundAll(all);
};
