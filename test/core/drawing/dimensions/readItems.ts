import type { Item, TextItem } from '../../../../src/core/drawing/types';
import type { Point } from '../../../../src/core/geom/types';

/** Corners of a path of lines, in order. */
export const cornersOf = (items: readonly Item[], id: string): readonly Point[] => {
  const item = items.find((each) => each.id === id);
  if (item?.kind !== 'path') throw new Error(`No path ${id}.`);
  return [item.path.start, ...item.path.segments.map(({ to }) => to)];
};

/** The same as pairs of numbers, to the thousandth of a millimetre. */
export const pairsOf = (items: readonly Item[], id: string): readonly (readonly number[])[] =>
  cornersOf(items, id).map(({ x, y }) => [round(x), round(y)]);

const round = (value: number): number => Math.round(value * 1000) / 1000 + 0;

export const textOf = (items: readonly Item[], id: string): TextItem => {
  const item = items.find((each) => each.id === id);
  if (item?.kind !== 'text') throw new Error(`No text ${id}.`);
  return item;
};

export const idsOf = (items: readonly Item[]): readonly string[] => items.map(({ id }) => id);
