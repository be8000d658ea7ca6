import { circlePath } from '../../geom/circlePath';
import type { Path, Point } from '../../geom/types';
import { polyline } from '../polyline';
import { TEXT_HEIGHT } from '../textHeights';
import type { Item, Role } from '../types';

const HEAD = { length: 3, half: 1.2 } as const;
/** Around a number, mm of the picture. */
export const SPOT = 2.7;

export const placePathItem = (id: string, role: Role, path: Path): Item => ({
  kind: 'path',
  id,
  part: 'place',
  role,
  layer: 'lines',
  path,
});

export const placeWords = (
  id: string,
  role: 'note' | 'heading',
  at: Point,
  text: string,
  anchor: 'start' | 'middle' | 'end' = 'middle',
): Item => ({
  kind: 'text',
  id,
  part: 'place',
  role,
  layer: 'text',
  at,
  text,
  height: role === 'note' ? TEXT_HEIGHT.note : TEXT_HEIGHT.label,
  anchor,
  angle: 0,
});

/** A line with a head at its end; nothing for one too short to have it. */
export const placeArrow = (id: string, from: Point, to: Point): readonly Item[] => {
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  if (length < HEAD.length / 2) return [];
  const [ux, uy] = [(to.x - from.x) / length, (to.y - from.y) / length];
  const back = { x: to.x - ux * HEAD.length, y: to.y - uy * HEAD.length };
  const wing = (side: number): Point => ({ x: back.x - side * uy * HEAD.half, y: back.y + side * ux * HEAD.half });
  return [
    placePathItem(`${id}-shaft`, 'mark', polyline(from, back)),
    placePathItem(`${id}-head`, 'plot-mark', { ...polyline(to, wing(1), wing(-1)), closed: true }),
  ];
};

/** A number in a circle, which is bold for the line in hand and grey for one that was read. */
export const placeSpot = (id: string, at: Point, number: number, look: 'held' | 'read' | 'plain'): readonly Item[] => [
  placePathItem(`${id}-spot`, look === 'read' ? 'plot-bar' : 'window', circlePath(at, SPOT)),
  ...(look === 'held' ? [placePathItem(`${id}-ring`, 'mark', circlePath(at, SPOT + 0.5))] : []),
  placeWords(`${id}-number`, 'heading', at, `${number}`),
];
