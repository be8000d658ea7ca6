import { linearDimension } from '../dimensions/linearDimension';
import { radiusDimension } from '../dimensions/radiusDimension';
import type { DimensionWords } from '../dimensions/types';
import type { Item } from '../types';
import type { LeaderEdge } from './measureParameter';
import { PICTURE } from './pictureLayout';
import { type Shelved, shelfRows } from './shelfRows';
import type { Dimensioned } from './types';

/** A dimension that can be drawn once the level of its shelf is known. */
interface ToShelf extends Shelved {
  readonly draw: (level: number) => readonly Item[];
}

const wordsOf = ({ name, text }: Omit<Dimensioned, 'measure'>): DimensionWords => ({
  id: name,
  part: name,
  layer: 'dimensions',
  text,
});

/** Leaders to a hollow come from its centre's side, those to a corner from outside past the tip. */
const radiusToShelf = (dimensioned: Dimensioned<'radius'>): ToShelf => {
  const { centre, radius, angle, hollow } = dimensioned.measure;
  const tip = centre.x + radius * Math.cos(angle);
  const reach = hollow ? -PICTURE.toHollow : (PICTURE.half + PICTURE.pastTip - tip) / Math.cos(angle);
  const options = { ...wordsOf(dimensioned), reach, side: 'left' } as const;
  return {
    text: dimensioned.text,
    x: tip + reach * Math.cos(angle),
    side: 'left',
    draw: (level) => radiusDimension(centre, radius, angle, { ...options, level }),
  };
};

/** Dimension lines along the bridge beyond its bass tip, running on to their shelf. */
const depthToShelf = (dimensioned: Dimensioned<'depth'>, column: number, leaders: LeaderEdge): ToShelf => {
  const { from: front, to: back } = dimensioned.measure;
  const [from, to] = leaders === 'back' ? [front, back] : [back, front];
  const x = -PICTURE.half - PICTURE.firstDepth - column * PICTURE.nextDepth;
  return {
    text: dimensioned.text,
    x,
    side: 'right',
    draw: (level) =>
      linearDimension(from, to, {
        ...wordsOf(dimensioned),
        direction: 'along',
        offset: x - Math.min(from.x, to.x),
        shelf: { beyond: Math.abs(level - to.y), side: 'right' },
      }),
  };
};

/** Radii and dimensions along the bridge, their words on shelves at the edge that has the leaders. */
export const shelfDimensions = (
  radii: readonly Dimensioned<'radius'>[],
  depths: readonly Dimensioned<'depth'>[],
  leaders: LeaderEdge,
  depth: number,
): readonly Item[] => {
  const inner = [...depths].sort((a, b) => a.measure.to.y - a.measure.from.y - (b.measure.to.y - b.measure.from.y));
  const shelves = [
    ...radii.map(radiusToShelf).sort((a, b) => a.x - b.x),
    ...inner.map((dimensioned, column) => depthToShelf(dimensioned, column, leaders)),
  ];
  const rows = shelfRows(shelves);
  return shelves.flatMap(({ draw }, index) => {
    const further = (rows[index] ?? 0) * PICTURE.nextShelf;
    return draw(leaders === 'back' ? depth + PICTURE.firstShelf + further : -PICTURE.firstShelfAbove - further);
  });
};
