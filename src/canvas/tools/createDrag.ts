import type { Project } from '../../core/document/types';
import { add, subtract } from '../../core/geom/points';
import { snapPoint } from '../../core/geom/snap/snapPoint';
import type { SnapLine } from '../../core/geom/snap/types';
import type { Point } from '../../core/geom/types';
import type { Result } from '../../core/result';
import type { EditMode } from '../../store/commands/outline/editOutline';
import type { Store } from '../../store/createStore';
import type { Grab, Press } from '../handTools';
import type { Frame } from './frame';
import { SNAP_PIXELS } from './reach';

/** Something that a drag moves. */
export interface Movable {
  /** Names the step in the history. */
  readonly label: string;
  /** The place that follows the pointer, footprint frame. */
  readonly origin: Point;
  readonly lines: readonly SnapLine[];
  /** The place as it may come to lie, before it snaps: a pin row moves only as the row does. */
  readonly keep?: (to: Point) => Point;
  /** Where it lies, in words. */
  readonly tell: (to: Point) => string;
  /** Rounds a figure that nothing holds. */
  readonly round: (mm: number) => number;
  /** What it takes to bring the place there; a preview shows outlines that would not be kept. */
  readonly move: (to: Point, mode: EditMode) => (project: Project) => Result<Project>;
}

/** What is shown beside a drag. */
export interface DragShown {
  readonly at: Point;
  readonly lines: readonly SnapLine[];
  /** Why it lies where it does, and where that is; or why it goes no farther. */
  readonly words: readonly string[];
  /** Why it lies there alone. */
  readonly reason: string;
}

/** A drag whose work is done between frames. */
export interface Drag extends Grab {
  /** The frame in which it began. */
  readonly frame: Frame;
  /** Previews where the pointer has come to since the last frame. */
  step(): void;
  shown(): DragShown | null;
}

/** A drag of something from a press on: each frame a preview, at the end one step or, when broken off, nothing. */
export const createDrag = (
  { actions, getState }: Store,
  frame: Frame,
  press: Press,
  zoom: () => number,
  { label, origin, lines, keep = (to) => to, round, move, tell }: Movable,
  ended: () => void,
): Drag => {
  const from = frame.toFootprint(press.at);
  let wanted: { readonly at: Point; readonly free: boolean } | null = null;
  let last: Point | null = null;
  let shown: DragShown | null = null;

  const step = (): void => {
    if (wanted === null) return;
    const { at, free } = wanted;
    wanted = null;
    const pulled = keep(add(origin, subtract(frame.toFootprint(at), from)));
    const snapped = free ? { at: pulled, reasons: [], lines: [] } : snapPoint(pulled, lines, SNAP_PIXELS / zoom());
    const held = (kind: 'x' | 'y'): boolean => snapped.lines.some((line) => line.kind === kind || line.kind === 'line');
    const to = free
      ? pulled
      : keep({
          x: held('x') ? snapped.at.x : round(snapped.at.x),
          y: held('y') ? snapped.at.y : round(snapped.at.y),
        });
    const [issue] = actions.preview(move(to, 'preview'));
    if (issue === undefined) last = to;
    const reason = issue === undefined ? snapped.reasons.join(', ') : '';
    shown = {
      at: to,
      lines: issue === undefined ? snapped.lines : [],
      words: issue === undefined ? [reason, tell(to)].filter((words) => words !== '') : [issue.message],
      reason,
    };
  };

  return {
    frame,
    move: (at, { altKey, ctrlKey, metaKey }) => {
      wanted = { at, free: altKey || ctrlKey || metaKey || !getState().handwork.snapping };
    },
    step,
    shown: () => shown,
    drop: () => {
      step();
      ended();
      actions.preview(null);
      const [issue] = last === null ? [] : actions.change(label, move(last, 'commit'));
      if (issue !== undefined) actions.warn(issue.message);
    },
    cancel: () => {
      ended();
      actions.preview(null);
    },
  };
};
