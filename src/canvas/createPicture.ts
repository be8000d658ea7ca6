import type { Item } from '../core/drawing/types';
import type { Bounds } from '../core/geom/types';
import { type Camera, toScreen } from './camera';
import type { Glass } from './createGlass';
import type { HandTools } from './handTools';
import { type Look, paintItems, tracedOf } from './paintItems';
import { common, joined, meet, widened } from './repaint/boxes';
import { changedItems } from './repaint/changedItems';
import { LINE_MARGIN } from './repaint/itemBox';
import type { OverlayState } from './tools/paintOverlay';

/** What is to be seen on the glass. */
export interface Seen {
  readonly camera: Camera;
  readonly items: readonly Item[];
  readonly scheme: 'light' | 'dark';
  readonly look: Look;
  /** null while they are not loaded. */
  readonly tools: HandTools | null;
  readonly over: OverlayState | null;
}

/** The picture on a glass. */
export interface Picture {
  /** Finds what the glass must be painted with to show this; once for the same. */
  prepare(seen: Seen): void;
  /** Paints what was prepared last, only where it looks different. */
  paint(): void;
  /** Nothing of what is painted counts any longer. */
  forget(): void;
}

interface Prepared {
  readonly seen: Seen;
  /** The items; those that did not change are what they were. */
  readonly items: readonly Item[];
  /** Where to paint, pixels; null everywhere. */
  readonly boxes: readonly Bounds[] | null;
}

const sameView = (one: Seen, other: Seen): boolean =>
  one.camera.zoom === other.camera.zoom &&
  one.camera.centre.x === other.camera.centre.x &&
  one.camera.centre.y === other.camera.centre.y &&
  one.scheme === other.scheme &&
  one.look.selection === other.look.selection &&
  one.tools === other.tools;

/** An empty picture. */
export const createPicture = (glass: Glass): Picture => {
  let painted: Prepared | null = null;
  let prepared: Prepared | null = null;

  const onScreen = ({ camera }: Seen, { minX, minY, maxX, maxY }: Bounds): Bounds => {
    const from = toScreen(camera, glass.size(), { x: minX, y: minY });
    const to = toScreen(camera, glass.size(), { x: maxX, y: maxY });
    return widened({ minX: from.x, minY: from.y, maxX: to.x, maxY: to.y }, LINE_MARGIN);
  };
  const toPaint = (seen: Seen): Prepared => {
    const before = painted !== null && sameView(painted.seen, seen) ? painted : null;
    const changed = before && changedItems(before.items, seen.items, seen.camera.zoom);
    if (before === null || changed === null) return { seen, items: seen.items, boxes: null };
    const { width, height } = glass.size();
    const view = { minX: 0, minY: 0, maxX: width, maxY: height };
    const over = seen.tools?.changed(before.seen.over, seen.over) ?? [];
    const boxes = [...changed.boxes.map((box) => onScreen(seen, box)), ...over].filter((box) => meet(view, box));
    return { seen, items: changed.items, boxes: joined(boxes.map((box) => common(view, box))) };
  };

  return {
    prepare: (seen) => {
      const known = prepared?.seen ?? painted?.seen;
      if (known?.items === seen.items && known.over === seen.over && sameView(known, seen)) return;
      prepared = toPaint(seen);
      for (const item of prepared.items) if (item.kind === 'path') tracedOf(item.path);
    },
    paint: () => {
      if (prepared === null) return;
      const { seen, items, boxes } = prepared;
      [painted, prepared] = [prepared, null];
      glass.paint(seen.camera, boxes, {
        drawing: (context, box) => paintItems(context, items, box, seen.look),
        over: (box) => seen.over && seen.tools?.show(seen.over, box),
      });
    },
    forget: () => {
      [painted, prepared] = [null, null];
    },
  };
};
