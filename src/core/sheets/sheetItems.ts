import { polyline } from '../drawing/polyline';
import { TEXT_HEIGHT } from '../drawing/textHeights';
import type { PathItem, Role, TextItem } from '../drawing/types';
import type { Path, Point } from '../geom/types';

/** A line or outline that belongs to the paper, not to the instrument. */
export const sheetPath = (id: string, role: Role, path: Path): PathItem => ({
  kind: 'path',
  id,
  part: 'sheet',
  role,
  layer: 'sheet',
  path,
});

/** A straight line that belongs to the paper. */
export const sheetLine = (id: string, role: Role, from: Point, to: Point): PathItem =>
  sheetPath(id, role, polyline(from, to));

type TextRole = 'note' | 'label' | 'heading' | 'key';

/** Font size of each text role, mm. */
const HEIGHT: Readonly<Record<TextRole, number>> = {
  note: TEXT_HEIGHT.note,
  label: TEXT_HEIGHT.label,
  heading: TEXT_HEIGHT.label,
  key: TEXT_HEIGHT.key,
};

/** Words that belong to the paper. angle: radians, + clockwise. */
export const sheetText = (
  id: string,
  role: TextRole,
  at: Point,
  text: string,
  anchor: TextItem['anchor'] = 'start',
  angle = 0,
): TextItem => ({
  kind: 'text',
  id,
  part: 'sheet',
  role,
  layer: 'sheet',
  at,
  text,
  height: HEIGHT[role],
  anchor,
  angle,
});
