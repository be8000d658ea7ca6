import { moveItem } from '../../drawing/moveItem';
import { TEXT_HEIGHT } from '../../drawing/textHeights';
import type { Item, PathItem, TextItem } from '../../drawing/types';
import { rectanglePath } from '../../geom/rectanglePath';
import type { Bounds, Point } from '../../geom/types';
import { measureText } from '../../text/measureText';
import { fittedText } from '../fittedText';
import type { Frame } from '../frame';
import { boundsOfItems } from '../parts/items/partOfItems';
import type { SheetPart } from '../parts/types';
import { sheetLine, sheetPath, sheetText } from '../sheetItems';
import { clipPath } from './clipPath';
import { joinMarks } from './joinMarks';
import { type Tile, type TileGrid, tileGrid, tileName } from './tileGrid';

/** From the top of the frame to the tile: the page's head, the part's name and how to join. */
const HEAD = 10;
const NAME = 12;
/** As the part's name is set. */
const KEY = [TEXT_HEIGHT.key, 'bold'] as const;
/** The map's cells, and all of it, at most, mm: it stands in the head at the right. */
const CELL = 4;
const MAP = { width: 36, height: 9.5 } as const;

/** The part of a line that a tile shows. A piece of a filled area is its edge alone. */
const clipped = (item: PathItem, bounds: Bounds): readonly PathItem[] => {
  const pieces = clipPath(item.path, bounds);
  if (pieces.length === 1 && pieces[0] === item.path) return [item];
  const role = item.role === 'window' ? 'cross' : item.role;
  return pieces.map((path, index) => ({ ...item, id: `${item.id}-${index + 1}`, role, path }));
};

/** How far a stretch has to move to lie between two places. */
const shift = (from: number, to: number, least: number, most: number): number =>
  from < least ? least - from : to > most ? most - to : 0;

interface Shown {
  readonly tile: Tile;
  readonly by: Point;
}

/** The tile that shows a text whole, else the one with its middle, into which it is moved; null when no tile can hold it. */
const tileOf = (text: TextItem, { tiles }: TileGrid): Shown | null => {
  const box = boundsOfItems([text]);
  const moves = tiles.map(
    ({ shows }): Point => ({
      x: shift(box.minX, box.maxX, shows.minX, shows.maxX),
      y: shift(box.minY, box.maxY, shows.minY, shows.maxY),
    }),
  );
  const lengths = moves.map(({ x, y }) => Math.hypot(x, y));
  const nearest = lengths.indexOf(Math.min(...lengths));
  const [tile, by] = [tiles[nearest], moves[nearest]];
  if (tile === undefined || by === undefined) return null;
  const { minX, minY, maxX, maxY } = tile.shows;
  const fits = box.maxX - box.minX <= maxX - minX && box.maxY - box.minY <= maxY - minY;
  return fits ? { tile, by } : null;
};

const pageMap = (id: string, frame: Frame, grid: TileGrid, kept: readonly Tile[], here: Tile): readonly Item[] => {
  const size = Math.min(CELL, MAP.height / grid.rows, MAP.width / grid.columns);
  const left = frame.right - grid.columns * size;
  const corner = ({ column, row }: Tile): Point => ({ x: left + column * size, y: frame.top + row * size });
  const { x, y } = corner(here);
  return [
    ...kept.map((tile) => {
      const at = corner(tile);
      return sheetPath(`${id}-map-${tileName(tile)}`, 'cross', rectanglePath(at.x, at.y, size, size));
    }),
    sheetLine(`${id}-map-here-1`, 'cross', { x, y }, { x: x + size, y: y + size }),
    sheetLine(`${id}-map-here-2`, 'cross', { x, y: y + size }, { x: x + size, y }),
  ];
};

/**
 * A part that is larger than the frame, on pages that are joined: neighbours show 15 mm of the same with two crossed marks,
 * each page has a map of all, and each join a distance across it to be read with a rule. Pages with nothing of the part on
 * them are dropped. Null when the part may not be cut, or the frame is too small for its words.
 */
export const tilePages = (part: SheetPart, frame: Frame, unit: 'mm' | 'in'): readonly (readonly Item[])[] | null => {
  const grid = part.whole ? null : tileGrid(part, frame, HEAD + NAME);
  if (grid === null) return null;
  const texts = part.items.flatMap((item) => (item.kind === 'text' ? [{ item, shown: tileOf(item, grid) }] : []));
  if (texts.some(({ shown }) => shown === null)) return null;
  const drawn = grid.tiles.map((tile) => ({
    tile,
    items: [
      ...part.items.flatMap((item) => (item.kind === 'path' ? clipped(item, tile.shows) : [])),
      ...texts.flatMap(({ item, shown }) => (shown?.tile === tile ? [moveItem(item, shown.by)] : [])),
    ],
  }));
  const pages = drawn.filter(({ items }) => items.length > 0);
  const kept = pages.map(({ tile }) => tile);
  const has = (column: number, row: number): boolean => kept.some((tile) => tile.column === column && tile.row === row);
  const marks = joinMarks(grid, has, unit);
  return pages.map(({ tile, items }): readonly Item[] => {
    const { minX, minY } = tile.shows;
    const place = (item: Item): Item => moveItem(item, { x: frame.left - minX, y: frame.top + HEAD + NAME - minY });
    const shown = marks.flatMap((mark): readonly Item[] => {
      if (mark.kind === 'path') return clipped(mark, tile.shows);
      const to = tileOf(mark, grid);
      return to?.tile === tile ? [moveItem(mark, to.by)] : [];
    });
    const where = `, tile ${tileName(tile)} of ${grid.columns} × ${grid.rows}`;
    const name = { x: frame.left, y: frame.top + HEAD };
    return [
      sheetText(
        `${part.id}-page-title`,
        'key',
        { x: name.x, y: name.y + 2.6 },
        fittedText(part.name, frame.right - frame.left - measureText(where, ...KEY), ...KEY) + where,
      ),
      sheetText(
        `${part.id}-join-how`,
        'note',
        { x: name.x, y: name.y + 7.6 },
        'Join dry: cut one page through the middle of its marks, lay them on the other’s, tape, read across the join.',
      ),
      ...pageMap(part.id, frame, grid, kept, tile),
      ...[...items, ...shown].map(place),
    ];
  });
};
