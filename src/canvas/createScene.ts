import type { Item, Layer, PartName } from '../core/drawing/types';
import { pathBounds } from '../core/geom/pathBounds';
import type { Bounds, Point } from '../core/geom/types';
import { makeText, paintItem } from './itemLook';
import { sameItem } from './sameItem';
import type { Theme } from './theme';
import { toPaperPath } from './toPaperPath';

/** How near a line a pointer must come to pick it, screen pixels. */
const REACH = 6;

/** Layers that the view does not make room for. */
const ASIDE: readonly Layer[] = ['body', 'dimensions'];

/** What the shapes on the canvas must agree with. */
export interface SceneState {
  readonly items: readonly Item[];
  readonly theme: Theme;
  readonly zoom: number;
  readonly selection: readonly PartName[];
  /** Another number: every shape is painted anew. */
  readonly coat: number;
}

/** The shapes that Paper.js draws. */
export interface Scene {
  /** Makes the shapes agree with the state, touching only those that differ. */
  reconcile(state: SceneState): void;
  /** The part at a point of the drawing, mm; null where there is none. */
  partAt(point: Point): PartName | null;
}

interface Drawn {
  readonly item: Item;
  readonly shape: paper.Item;
  readonly look: string;
}

/** The smallest rectangle around the lines of a display list that a view makes room for; null when it has none. */
export const drawingBounds = (items: readonly Item[]): Bounds | null => {
  const all = items.flatMap((item) =>
    item.kind === 'path' && !ASIDE.includes(item.layer) ? [pathBounds(item.path)] : [],
  );
  if (all.length === 0) return null;
  return {
    minX: Math.min(...all.map(({ minX }) => minX)),
    minY: Math.min(...all.map(({ minY }) => minY)),
    maxX: Math.max(...all.map(({ maxX }) => maxX)),
    maxY: Math.max(...all.map(({ maxY }) => maxY)),
  };
};

/** An empty scene in the scope's active project. */
export const createScene = (scope: paper.PaperScope): Scene => {
  let drawn: ReadonlyMap<string, Drawn> = new Map();
  let zoom = 1;

  const makeShape = (item: Item): paper.Item =>
    item.kind === 'path' ? toPaperPath(scope, item.path) : makeText(scope, item);

  return {
    reconcile(state) {
      scope.activate();
      zoom = state.zoom;
      const chosenParts = new Set(state.selection);
      const next = new Map<string, Drawn>();
      for (const item of state.items) {
        const before = drawn.get(item.id);
        const kept = before !== undefined && sameItem(before.item, item) ? before : null;
        const shape = kept?.shape ?? makeShape(item);
        const chosen = chosenParts.has(item.part);
        const look = `${state.coat} ${state.zoom} ${chosen}`;
        if (kept?.look !== look) paintItem(scope, shape, item, { theme: state.theme, zoom: state.zoom, chosen });
        if (kept === null) {
          shape.name = item.id;
          shape.data = item.part;
        }
        next.set(item.id, { item, shape, look });
      }
      for (const [id, { shape }] of drawn) if (next.get(id)?.shape !== shape) shape.remove();
      const layer = scope.project.activeLayer;
      let index = 0;
      for (const { shape } of next.values()) {
        if (layer.children[index] !== shape) layer.insertChild(index, shape);
        index += 1;
      }
      drawn = next;
    },

    partAt(point) {
      const hit = scope.project.hitTest(new scope.Point(point.x, point.y), {
        fill: true,
        stroke: true,
        tolerance: REACH / zoom,
      });
      return typeof hit?.item.data === 'string' ? hit.item.data : null;
    },
  };
};
