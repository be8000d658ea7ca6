import { createDerive } from '../../../core/derive/createDerive';
import type { Project } from '../../../core/document/types';
import { drawBoard, drawOuterStrings } from '../../../core/drawing/drawBoard';
import { drawBridge } from '../../../core/drawing/drawBridge';
import { handedItem } from '../../../core/drawing/handed';
import type { Item } from '../../../core/drawing/types';
import { pathBounds } from '../../../core/geom/pathBounds';
import { svgPath } from '../../items/svgPath';

/** What two drawings are laid over each other by: the nut, or where the strings break over the saddle. */
export type LaidBy = 'nut' | 'break-point';

/** Two drawings in one picture; mm. */
export interface Overlay {
  readonly viewBox: string;
  /** `d` of SVG paths of each, and how far each is moved along the centreline. */
  readonly drawings: readonly { readonly lines: string; readonly moved: number }[];
}

/** How far board and strings are shown ahead of the bridge, and the margin around all, mm. */
const AHEAD = 30;
const MARGIN = 6;

interface Drawn {
  readonly items: readonly Item[];
  /** y of the middle of the break-point line. */
  readonly centre: number;
  readonly top: number;
  readonly bottom: number;
  readonly half: number;
}

const drawn = (project: Project): Drawn | null => {
  const { board, strings, saddle, slot, bridge } = createDerive()(project);
  if (!board.ok || !strings.ok || !saddle.ok || !slot.ok || !bridge.ok) return null;
  const parts = drawBridge(bridge.value, slot.value).filter(({ role }) => role !== 'centreline');
  const bounds = parts.flatMap((item) => (item.kind === 'path' ? [pathBounds(item.path)] : []));
  const top = Math.min(...bounds.map(({ minY }) => minY)) - AHEAD;
  const bottom = Math.max(...bounds.map(({ maxY }) => maxY));
  const half = Math.max(...bounds.map(({ minX, maxX }) => Math.max(-minX, maxX)));
  const lines = [
    ...drawBoard(board.value, top, bottom),
    ...drawOuterStrings(strings.value, saddle.value, top),
    ...parts,
  ].filter(({ kind }) => kind === 'path');
  const { hand } = project.instrument;
  return { items: lines.map((item) => handedItem(hand, item)), centre: saddle.value.centre, top, bottom, half };
};

/** Two projects' bridges with boards and outer strings, laid over each other; null when one cannot be computed. */
export const overlay = (one: Project, other: Project, by: LaidBy): Overlay | null => {
  const both = [drawn(one), drawn(other)];
  const [first, second] = both;
  if (!first || !second) return null;
  const moved = [0, by === 'nut' ? 0 : first.centre - second.centre];
  const top = Math.min(first.top, second.top + (moved[1] ?? 0)) - MARGIN;
  const bottom = Math.max(first.bottom, second.bottom + (moved[1] ?? 0)) + MARGIN;
  const half = Math.max(first.half, second.half) + MARGIN;
  const round = (mm: number): number => Number(mm.toFixed(2));
  return {
    viewBox: [-half, top, 2 * half, bottom - top].map(round).join(' '),
    drawings: [first, second].map(({ items }, index) => ({
      lines: items.map((item) => (item.kind === 'path' ? svgPath(item.path) : '')).join(' '),
      moved: round(moved[index] ?? 0),
    })),
  };
};
