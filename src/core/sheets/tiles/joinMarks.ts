import type { Item } from '../../drawing/types';
import { circlePath } from '../../geom/circlePath';
import type { Point } from '../../geom/types';
import { sheetLine, sheetPath, sheetText } from '../sheetItems';
import { TILE_OVERLAP, type Tile, type TileGrid, tileName } from './tileGrid';

/** Half a join mark's cross, and the radius of its ring, mm. */
const ARM = 5;
const RING = 2;
/** From a join to each of its check ticks, mm: 100 mm, or 4 in, from tick to tick. */
const CHECK = { mm: 50, in: 50.8 } as const;
const TICK = 3;
/** Where along a join its two marks stand, shares of the tile's side. */
const MARKS = [0.22, 0.78];
/** Where along a join the distance across it is checked: aside, so that its words stand clear of a narrow drawing. */
const CHECKED = 0.86;

/** A join between a tile and the next one to its right, or below it. */
interface Join {
  readonly name: string;
  /** Along the join. */
  readonly way: 'x' | 'y';
  /** The place a share along the join, `aside` from its middle. */
  readonly at: (share: number, aside: number) => Point;
}

const joinOf = (grid: TileGrid, tile: Tile, way: 'x' | 'y'): Join => {
  const { minX, minY, maxX, maxY } = tile.shows;
  const middle = way === 'y' ? maxX - TILE_OVERLAP / 2 : maxY - TILE_OVERLAP / 2;
  const other = way === 'y' ? { column: tile.column + 1, row: tile.row } : { column: tile.column, row: tile.row + 1 };
  const side = way === 'y' ? grid.stepY : grid.stepX;
  return {
    name: `${tileName(tile)}-${tileName(other)}`,
    way,
    at: (share, aside) =>
      way === 'y' ? { x: middle + aside, y: minY + share * side } : { x: minX + share * side, y: middle + aside },
  };
};

const mark = (id: string, { x, y }: Point): readonly Item[] => [
  sheetLine(`${id}-level`, 'cross', { x: x - ARM, y }, { x: x + ARM, y }),
  sheetLine(`${id}-upright`, 'cross', { x, y: y - ARM }, { x, y: y + ARM }),
  sheetPath(`${id}-ring`, 'cross', circlePath({ x, y }, RING)),
];

const tick = (id: string, { at, way }: Join, aside: number): Item => {
  const { x, y } = at(CHECKED, aside);
  return way === 'y'
    ? sheetLine(id, 'rule-line', { x, y: y - TICK }, { x, y: y + TICK })
    : sheetLine(id, 'rule-line', { x: x - TICK, y }, { x: x + TICK, y });
};

/**
 * Marks by which tiles are joined, in the part's own place: on every join two crossed marks, which both tiles show, and two
 * ticks whose distance across the join is read with a rule once it is taped. has: whether there is a tile of this place.
 */
export const joinMarks = (
  grid: TileGrid,
  has: (column: number, row: number) => boolean,
  unit: 'mm' | 'in',
): readonly Item[] =>
  grid.tiles
    .filter(({ column, row }) => has(column, row))
    .flatMap((tile) => [
      ...(has(tile.column + 1, tile.row) ? [joinOf(grid, tile, 'y')] : []),
      ...(has(tile.column, tile.row + 1) ? [joinOf(grid, tile, 'x')] : []),
    ])
    .flatMap((join): readonly Item[] => {
      const id = `join-${join.name}`;
      const words = unit === 'mm' ? '100.0 mm' : '4 in';
      const told = join.at(CHECKED, -CHECK[unit]);
      return [
        ...MARKS.flatMap((share, index) => mark(`${id}-${index + 1}`, join.at(share, 0))),
        tick(`${id}-before`, join, -CHECK[unit]),
        tick(`${id}-after`, join, CHECK[unit]),
        sheetText(
          `${id}-check`,
          'note',
          { x: told.x, y: told.y - TICK - 2.4 },
          `across join ${join.name.replace('-', '–')}: ${words}`,
          'middle',
        ),
      ];
    });
