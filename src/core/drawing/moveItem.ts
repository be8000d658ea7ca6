import { add } from '../geom/points';
import { transformPath } from '../geom/transformPath';
import type { Point } from '../geom/types';
import type { Item } from './types';

/** The same item elsewhere on the page. */
export const moveItem = (item: Item, by: Point): Item =>
  item.kind === 'path' ? { ...item, path: transformPath(item.path, 0, by) } : { ...item, at: add(item.at, by) };
