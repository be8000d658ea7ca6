import type { Hand } from '../../core/document/types';
import { handed } from '../../core/drawing/handed';
import type { Item, PartName } from '../../core/drawing/types';
import { aroundAll } from '../../core/geom/aroundAll';
import { pathBounds } from '../../core/geom/pathBounds';
import type { Bounds } from '../../core/geom/types';

/** A part that can be chosen in the drawing, told in words. */
export interface DrawingPart {
  readonly part: PartName;
  /** "Pin 3" */
  readonly name: string;
  /** "638.20 mm from the nut, 27.80 mm to the treble side; 3.00 × 3.00 mm" */
  readonly place: string;
}

/** Nearer to the centreline than this, mm, counts as on it. */
const ON_CENTRELINE = 0.0005;

/** The roles that only help to read a part; they do not say how large it is. */
const AIDS: readonly Item['role'][] = ['cross', 'centreline'];

const boundsOf = (items: readonly Item[]): Bounds | null => {
  const paths = items.flatMap((item) => (item.kind === 'path' ? [item] : []));
  const own = paths.filter(({ role }) => !AIDS.includes(role));
  const all = (own.length > 0 ? own : paths).map(({ path }) => pathBounds(path));
  return all.length === 0 ? null : aroundAll(all);
};

const placeOf = (bounds: Bounds, hand: Hand, datum: string, show: (mm: number) => string): string => {
  const middle = { x: (bounds.minX + bounds.maxX) / 2, y: (bounds.minY + bounds.maxY) / 2 };
  const { x } = handed(hand, middle);
  const side =
    Math.abs(x) < ON_CENTRELINE ? 'on the centreline' : `${show(Math.abs(x))} to the ${x > 0 ? 'treble' : 'bass'} side`;
  const size = `${show(bounds.maxX - bounds.minX)} across, ${show(bounds.maxY - bounds.minY)} along`;
  return `Middle ${show(middle.y)} from the ${datum}, ${side}. ${size}.`;
};

/** Every part of a display list once, in painting order, with its place from the nut datum and the centreline. */
export const partsOfDrawing = (
  items: readonly Item[],
  hand: Hand,
  datum: string,
  show: (mm: number) => string,
): readonly DrawingPart[] => {
  const byPart = new Map<PartName, Item[]>();
  for (const item of items) byPart.set(item.part, [...(byPart.get(item.part) ?? []), item]);
  return [...byPart].flatMap(([part, own]) => {
    const bounds = boundsOf(own);
    const name = part.charAt(0).toUpperCase() + part.slice(1);
    return bounds === null ? [] : [{ part, name, place: placeOf(bounds, hand, datum, show) }];
  });
};
