import type { Path, Point } from '../../geom/types';
import { polyline } from '../polyline';
import { TEXT_HEIGHT } from '../textHeights';
import type { Item, PathItem, Role, TextItem } from '../types';

/** A place of a side view: along, and height above the sole, mm. On the page y grows downward. */
export const at = (along: number, height: number): Point => ({ x: along, y: 0 - height });

/** A line of a side view. */
const sidePath = (id: string, part: string, role: Role, path: Path): PathItem => ({
  kind: 'path',
  id,
  part,
  role,
  layer: 'sheet',
  path,
});

/** Straight lines from place to place. */
export const sideLine = (id: string, part: string, role: Role, ...[start, ...rest]: readonly Point[]): PathItem =>
  sidePath(id, part, role, polyline(start ?? at(0, 0), ...rest));

/** Straight lines round a shape. */
export const sideShape = (id: string, part: string, role: Role, ...[start, ...rest]: readonly Point[]): PathItem =>
  sidePath(id, part, role, { ...polyline(start ?? at(0, 0), ...rest), closed: true });

/** Level words. */
export const sideText = (
  id: string,
  part: string,
  role: 'label' | 'note' | 'heading',
  place: Point,
  text: string,
  anchor: TextItem['anchor'],
): Item => ({
  kind: 'text',
  id,
  part,
  role,
  layer: 'sheet',
  at: place,
  text,
  height: role === 'note' ? TEXT_HEIGHT.note : TEXT_HEIGHT.label,
  anchor,
  angle: 0,
});

/** Even steps from one number to another, both included. */
export const steps = (from: number, to: number, count: number): readonly number[] =>
  Array.from({ length: count + 1 }, (_, index) => from + ((to - from) * index) / count);
