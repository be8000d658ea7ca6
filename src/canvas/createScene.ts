import type { Item, PartName } from '../core/drawing/types';
import { pathBounds } from '../core/geom/pathBounds';
import type { Bounds, Point } from '../core/geom/types';
import { makeText, paintItem } from './itemLook';
import type { Theme } from './theme';
import { toPaperPath } from './toPaperPath';

/** How near a line a pointer must come to pick it, screen pixels. */
const REACH = 6;

/** What the shapes on the canvas must agree with. */
export interface SceneState {
  readonly items: readonly Item[];
  readonly theme: Theme;
  readonly zoom: number;
  readonly selection: PartName | null;
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

const sameItem = (one: Item, other: Item): boolean => one === other || JSON.stringify(one) === JSON.stringify(other);

/** The smallest rectangle around all lines of a display list; null when it has none. */
export const drawingBounds = (items: readonly Item[]): Bounds | null => {
  const all = items.flatMap((item) => (item.kind === 'path' ? [pathBounds(item.path)] : []));
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
      const next = new Map<string, Drawn>();
      for (const item of state.items) {
        const before = drawn.get(item.id);
        const kept = before !== undefined && sameItem(before.item, item) ? before : null;
        const shape = kept?.shape ?? makeShape(item);
        const chosen = item.part === state.selection;
        const look = `${state.coat} ${state.zoom} ${chosen}`;
        if (kept?.look !== look) paintItem(scope, shape, item, { theme: state.theme, zoom: state.zoom, chosen });
        shape.name = item.id;
        shape.data = item.part;
        next.set(item.id, { item, shape, look });
      }
      for (const [id, { shape }] of drawn) if (next.get(id)?.shape !== shape) shape.remove();
      const shapes = [...next.values()].map(({ shape }) => shape);
      const layer = scope.project.activeLayer;
      if (shapes.length !== layer.children.length || shapes.some((shape, index) => layer.children[index] !== shape))
        layer.insertChildren(0, shapes);
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
