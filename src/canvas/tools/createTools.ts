import { remember } from '../../core/derive/remember';
import { bridgeMarks } from '../../core/drawing/nodes/bridgeMarks';
import type { KeyPress } from '../../core/ports';
import { showLength } from '../../core/units/showLength';
import type { Store } from '../../store/createStore';
import { lengthStyle } from '../../store/device';
import type { AppState } from '../../store/types';
import type { HandTools, Press, ToolView } from '../handTools';
import { announceWhenStill } from './announceWhenStill';
import { createDrag, type Drag, type Movable } from './createDrag';
import { createNodeTools } from './createNodeTools';
import { frameOf } from './frame';
import { createNudge } from './nudge';
import { overlayBoxes } from './overlayBoxes';
import { overlayState } from './overlayState';
import { paintOverlay, wordsWidth } from './paintOverlay';
import { type MovableNeeds, partMovable } from './partMovable';
import { pickBetween } from './pickBetween';
import { roundTo } from './roundTo';

/** The tools that work on the drawing of a store through a view. */
export const createTools = (store: Store, view: ToolView): HandTools => {
  const { actions, getState } = store;
  const nudge = createNudge(store);
  const nodes = createNodeTools(store, view);
  const announcer = announceWhenStill(actions.say);
  const context = view.canvas.getContext('2d');
  let drag: Drag | null = null;

  const style = () => lengthStyle(getState().device);
  const show = (mm: number): string => showLength(mm, style());

  const look = remember((state: AppState, ..._seen: readonly unknown[]) => overlayState(state, view, drag, show));

  const needs = (): MovableNeeds | null => {
    const { project, derived } = getState();
    const { bridge, slot, strings } = derived;
    if (!bridge.ok || !slot.ok) return null;
    const marks = bridgeMarks(bridge.value, slot.value, strings.ok ? strings.value : null);
    return { project, bridge: bridge.value, slot: slot.value, marks, show, round: roundTo(style()) };
  };
  const movableAt = (press: Press, from: MovableNeeds): Movable | null => {
    const node = nodes.movableAt(press, from);
    if (node !== null) return node;
    const part = view.partAt(press.at);
    return part !== null && getState().selection.includes(part) ? partMovable(part, from) : null;
  };

  return {
    grab: (press) => {
      const from = getState().handwork.tool === 'move' ? needs() : null;
      const movable = from && movableAt(press, from);
      if (from === null || movable === null) return null;
      view.hold();
      const frame = frameOf(view, from.project.instrument.hand, from.bridge.front);
      const started = createDrag(
        store,
        frame,
        press,
        () => view.camera().zoom,
        movable,
        () => {
          drag = null;
          announcer.stop();
          view.redraw();
        },
      );
      drag = started;
      return {
        ...started,
        move: (at, keys) => {
          started.move(at, keys);
          view.redraw();
        },
      };
    },
    pick: (press, more) => {
      const { tool } = getState().handwork;
      if (tool === 'between') {
        pickBetween(store, view, press);
        return true;
      }
      return nodes.pick(press, more);
    },
    press: (key: KeyPress) => {
      const { handwork } = getState();
      if (key.key === 'Escape' && handwork.tool !== 'move') {
        actions.setHandwork({ tool: 'move', picks: [] });
        return true;
      }
      return nodes.press(key) || nudge(key);
    },
    step: () => {
      drag?.step();
      announcer.hear(drag?.shown()?.reason ?? '');
    },
    look: () => look(getState(), view.camera(), view.size(), view.scheme(), drag?.shown() ?? null),
    changed: (before, after) =>
      overlayBoxes(before, after, (text) => (context === null ? 0 : wordsWidth(context, text))),
    show: (over, box) => {
      if (context !== null) paintOverlay(context, over, box);
    },
    stop: () => {
      drag?.cancel();
      announcer.stop();
    },
  };
};
