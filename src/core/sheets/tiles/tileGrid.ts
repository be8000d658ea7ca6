import type { Bounds } from '../../geom/types';
import type { Frame } from '../frame';

/** How far neighbouring tiles show the same, mm: room for a join mark and for tape. Common practice, no source. */
export const TILE_OVERLAP = 15;

/** One tile of a part: its place among the others, from 0, and what it shows of the part, mm. */
export interface Tile {
  readonly column: number;
  readonly row: number;
  readonly shows: Bounds;
}

export interface TileGrid {
  readonly columns: number;
  readonly rows: number;
  /** From one tile's left edge, or top, to the next. */
  readonly stepX: number;
  readonly stepY: number;
  /** Row by row from the top left. */
  readonly tiles: readonly Tile[];
}

/** As many tiles as a length takes, each `size` long. */
const count = (length: number, size: number): number =>
  Math.max(1, Math.ceil((length - TILE_OVERLAP) / (size - TILE_OVERLAP) - 1e-9));

/** Smaller tiles would not hold the ticks by which a join is checked, mm. */
const SMALLEST_TILE = 65;

/** A part cut into tiles that fill the frame under a head of this height; null when the frame is too small for any. */
export const tileGrid = (
  part: { readonly width: number; readonly height: number },
  frame: Frame,
  head: number,
): TileGrid | null => {
  const width = frame.right - frame.left;
  const height = frame.bottom - frame.top - head;
  if (width < SMALLEST_TILE || height < SMALLEST_TILE) return null;
  const [columns, rows] = [count(part.width, width), count(part.height, height)];
  const [stepX, stepY] = [width - TILE_OVERLAP, height - TILE_OVERLAP];
  const tiles = Array.from({ length: columns * rows }, (_, index): Tile => {
    const [column, row] = [index % columns, Math.floor(index / columns)];
    const [minX, minY] = [column * stepX, row * stepY];
    return { column, row, shows: { minX, minY, maxX: minX + width, maxY: minY + height } };
  });
  return { columns, rows, stepX, stepY, tiles };
};

/** "A1" for the top left tile, "B1" to its right, "A2" below. */
export const tileName = ({ column, row }: Pick<Tile, 'column' | 'row'>): string => {
  const letters = column < 26 ? '' : String.fromCharCode(64 + Math.floor(column / 26));
  return `${letters}${String.fromCharCode(65 + (column % 26))}${row + 1}`;
};
