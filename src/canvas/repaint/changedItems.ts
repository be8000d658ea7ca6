import { LINE_STYLES } from '../../core/drawing/lineStyles';
import type { Item, PathItem } from '../../core/drawing/types';
import { aroundAll } from '../../core/geom/aroundAll';
import { pathBounds } from '../../core/geom/pathBounds';
import type { Bounds, Path, Point, Segment } from '../../core/geom/types';
import { itemBox } from './itemBox';
import { same } from './same';

/** What became of a display list. */
export interface ChangedItems {
  /** The list after; what did not change is what it was. */
  readonly items: readonly Item[];
  /** Where it looks different, mm; lines reach LINE_MARGIN pixels farther. */
  readonly boxes: readonly Bounds[];
}

/** Where two lists of the same items look different at a magnification; null when they are not the same items. */
export const changedItems = (before: readonly Item[], after: readonly Item[], zoom: number): ChangedItems | null => {
  if (before.length !== after.length) return null;
  const boxes: Bounds[] = [];
  const items: Item[] = [];
  for (const [index, item] of after.entries()) {
    const old = before[index];
    if (old?.id !== item.id) return null;
    const isSame = same(old, item);
    items.push(isSame ? old : item);
    if (!isSame) boxes.push(...changedBoxes(old, item, zoom));
  }
  return { items, boxes };
};

const changedBoxes = (old: Item, item: Item, zoom: number): readonly Bounds[] => {
  if (old.kind === 'path' && item.kind === 'path' && isAlike(old, item)) {
    if (LINE_STYLES[item.role].dash.length > 0) return changedEnd(old.path, item.path);
    if (old.path.segments.length === item.path.segments.length) return changedSegments(old.path, item.path);
  }
  return [itemBox(old, zoom), itemBox(item, zoom)];
};

const isAlike = (old: PathItem, item: PathItem): boolean =>
  old.role === item.role && old.part === item.part && old.path.closed === item.path.closed;

/**
 * A box around everything from the first segment that changed on, before and after: dashes are counted from the start of a
 * path.
 */
const changedEnd = (old: Path, path: Path): readonly Bounds[] => {
  if (!same(old.start, path.start)) return [pathBounds(old), pathBounds(path)];
  let from = path.start;
  let kept = 0;
  for (const segment of path.segments) {
    if (!same(segment, old.segments[kept])) break;
    from = segment.to;
    kept += 1;
  }
  const end = ({ start, segments, closed }: Path): Path => ({
    start: from,
    segments: [...segments.slice(kept), ...(closed ? [{ kind: 'line', to: start } as const] : [])],
    closed: false,
  });
  return [aroundAll([pathBounds(end(old)), pathBounds(end(path))])];
};

/**
 * A box around all segments that changed, before and after. What is filled otherwise than before lies between the two, and
 * so within it.
 */
const changedSegments = (old: Path, path: Path): readonly Bounds[] => {
  const boxes: Bounds[] = [];
  let [from, to] = [old.start, path.start];
  for (const [index, segment] of path.segments.entries()) {
    const before = old.segments[index] ?? segment;
    if (!same(from, to) || !same(before, segment)) boxes.push(segmentBox(from, before), segmentBox(to, segment));
    [from, to] = [before.to, segment.to];
  }
  // The line that closes a path which does not end at its start.
  if (path.closed && !(same(from, to) && same(old.start, path.start)))
    boxes.push(segmentBox(from, { kind: 'line', to: old.start }), segmentBox(to, { kind: 'line', to: path.start }));
  return boxes.length === 0 ? [] : [aroundAll(boxes)];
};

const segmentBox = (start: Point, segment: Segment): Bounds =>
  pathBounds({ start, segments: [segment], closed: false });
