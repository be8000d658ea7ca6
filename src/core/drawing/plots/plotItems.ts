import type { Path, Point } from '../../geom/types';
import { polyline } from '../polyline';
import { TEXT_HEIGHT } from '../textHeights';
import type { PathItem, Role, TextItem } from '../types';

/** A line or a filled shape of a plot. */
export const plotPath = (id: string, part: string, role: Role, path: Path): PathItem => ({
  kind: 'path',
  id,
  part,
  role,
  layer: 'sheet',
  path,
});

/** A straight line of a plot. */
export const plotLine = (id: string, part: string, role: Role, from: Point, to: Point): PathItem =>
  plotPath(id, part, role, polyline(from, to));

/** Words of a plot: a note in the regular cut, a heading in bold. */
export const plotText = (
  id: string,
  part: string,
  role: 'note' | 'heading',
  at: Point,
  text: string,
  anchor: TextItem['anchor'],
): TextItem => ({
  kind: 'text',
  id,
  part,
  role,
  layer: 'sheet',
  at,
  text,
  height: role === 'note' ? TEXT_HEIGHT.note : TEXT_HEIGHT.label,
  anchor,
  angle: 0,
});
