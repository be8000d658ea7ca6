import { describe, expect, it, vi } from 'vitest';
import type { ToolView } from '../../../src/canvas/handTools';
import { createDrag, type Movable } from '../../../src/canvas/tools/createDrag';
import { frameOf } from '../../../src/canvas/tools/frame';
import { nodeAt } from '../../../src/canvas/tools/nodeAt';
import { createNudge } from '../../../src/canvas/tools/nudge';
import { roundTo } from '../../../src/canvas/tools/roundTo';
import { nodesOf } from '../../../src/core/geom/edit/nodesOf';
import type { Path } from '../../../src/core/geom/types';
import { demoProject } from '../../../src/core/kinds/demo';
import { moveOther } from '../../../src/store/commands/hand/moveOther';
import type { Store } from '../../../src/store/createStore';
import { MORNING, startStore } from '../../store/startStore';

/** 400 by 300 px, 4 px to a millimetre, (0, 610) in its middle; by hand. */
const VIEW = {
  camera: () => ({ centre: { x: 0, y: 610 }, zoom: 4 }),
  size: () => ({ width: 400, height: 300 }),
} as unknown as ToolView;
const NO_KEYS = { shiftKey: false, altKey: false, ctrlKey: false, metaKey: false };
const demo = demoProject('test', MORNING);

const start = (hand: 'right' | 'left' = 'right') => {
  const { store } = startStore(null, { ...demo, instrument: { ...demo.instrument, hand } });
  return store as unknown as Store;
};

describe('frameOf', () => {
  it.each([
    // 20 px right of the middle is 5 mm on the screen's right: the treble side of a right-handed instrument.
    ['right', 5],
    ['left', -5],
  ] as const)('brings the screen to the footprint of a %s-handed instrument, and back', (hand, x) => {
    const frame = frameOf(VIEW, hand, 600);
    // 40 px above the middle of the view is y 600, the front edge.
    expect(frame.toFootprint({ x: 220, y: 110 })).toEqual({ x, y: 0 });
    expect(frame.onScreen({ x, y: 0 })).toEqual({ x: 220, y: 110 });
  });
});

describe('roundTo', () => {
  it('rounds to what the maker reads', () => {
    expect(roundTo({ unit: 'mm', decimals: 1 })(12.3456)).toBe(12.3);
    expect(roundTo({ unit: 'mm', decimals: 1 })(-0.04)).toBe(0);
    // 12 3/64 in is 305.990625 mm.
    expect(roundTo({ unit: 'in', denominator: 64 })(306.05)).toBeCloseTo(305.990625, 9);
    // 0.505 in is 12.827 mm.
    expect(roundTo({ unit: 'in', decimals: 3 })(12.8)).toBeCloseTo(12.827, 9);
  });
});

describe('a drag', () => {
  const begin = (store: Store, change: Partial<Movable> = {}) => {
    const ended = vi.fn();
    const drag = createDrag(
      store,
      frameOf(VIEW, store.getState().project.instrument.hand, 600),
      { at: { x: 200, y: 150 }, by: 'mouse', keys: NO_KEYS },
      () => 4,
      {
        label: 'Move the bridge',
        origin: { x: 0, y: 0 },
        lines: [{ kind: 'y', value: -2, reason: 'margins equal' }],
        keep: ({ y }) => ({ x: 0, y }),
        round: (mm) => Math.round(mm * 10) / 10,
        tell: ({ y }) => `${y}`,
        move: (to) => (project) => moveOther(project, 'footprint', to),
        ...change,
      },
      ended,
    );
    return { drag, ended };
  };
  const fromFront = (store: Store, of: 'project' | 'preview') => store.getState()[of]?.bridge.slot.fromFront;
  const { fromFront: before } = demo.bridge.slot;

  it('shows the last place of each frame and keeps one step at its end', () => {
    const store = start();
    const { drag, ended } = begin(store);
    // 8 px up is 2 mm, 21 px is 5.25: rounded 5.3 toward the nut (−5.25 goes to −5.2), farther from the slot.
    drag.move({ x: 200, y: 142 }, NO_KEYS);
    drag.move({ x: 200, y: 129 }, NO_KEYS);
    expect(fromFront(store, 'preview')).toBeUndefined();
    drag.step();
    expect(fromFront(store, 'preview')).toBeCloseTo(before + 5.2, 9);
    expect(fromFront(store, 'project')).toBe(before);
    expect(store.getState().history.past).toEqual([]);
    drag.drop();
    expect(ended).toHaveBeenCalledOnce();
    expect(fromFront(store, 'project')).toBeCloseTo(before + 5.2, 9);
    expect(store.getState().preview).toBeNull();
    expect(store.getState().history.past.map(({ label }) => label)).toEqual(['Move the bridge']);
  });

  it('snaps within six pixels and says why; Alt, Ctrl or the switch put that off', () => {
    const store = start();
    const { drag } = begin(store);
    // 12 px up is 3 mm: 1 mm or 4 px off the line.
    drag.move({ x: 200, y: 138 }, NO_KEYS);
    drag.step();
    expect(drag.shown()).toMatchObject({
      at: { x: 0, y: -2 },
      words: ['margins equal', '-2'],
      reason: 'margins equal',
    });
    for (const key of ['altKey', 'ctrlKey', 'metaKey'] as const) {
      drag.move({ x: 200, y: 138 }, { ...NO_KEYS, [key]: true });
      drag.step();
      expect(drag.shown()).toMatchObject({ at: { x: 0, y: -3 }, reason: '' });
    }
    // 15 px up: 7 px off.
    drag.move({ x: 200, y: 135 }, NO_KEYS);
    drag.step();
    expect(drag.shown()?.reason).toBe('');
    store.actions.setHandwork({ snapping: false });
    drag.move({ x: 200, y: 138 }, NO_KEYS);
    drag.step();
    expect(drag.shown()?.reason).toBe('');
  });

  it('leaves nothing when it is broken off', () => {
    const store = start();
    const state = store.getState();
    const { drag, ended } = begin(store);
    drag.move({ x: 200, y: 120 }, NO_KEYS);
    drag.step();
    expect(store.getState().drawing).not.toEqual(state.drawing);
    drag.cancel();
    expect(ended).toHaveBeenCalledOnce();
    expect(store.getState().project).toBe(state.project);
    expect(store.getState().preview).toBeNull();
    expect(store.getState().drawing).toEqual(state.drawing);
    expect(store.getState().history.past).toEqual([]);
  });

  it('stays at the last place that is allowed, and says why', () => {
    const store = start();
    const { drag } = begin(store);
    drag.move({ x: 200, y: 158 }, NO_KEYS);
    drag.step();
    // 400 px down would put the front edge behind the slot.
    drag.move({ x: 200, y: 550 }, NO_KEYS);
    drag.step();
    expect(drag.shown()?.words.join()).toContain('Front edge to slot');
    drag.drop();
    // 8 px down: 2 mm nearer.
    expect(fromFront(store, 'project')).toBeCloseTo(before - 2, 9);
  });

  it('that goes nowhere is no step', () => {
    const store = start();
    begin(store).drag.drop();
    expect(store.getState().history.past).toEqual([]);
  });
});

describe('arrow keys', () => {
  const pins = demo.bridge.pins;
  if (pins === null) throw new Error('the demo has pins');

  it('move what is chosen by 0.1, 1 and 0.01 mm, as one step until a pause', () => {
    const store = start();
    const nudge = createNudge(store);
    expect(nudge({ key: 'ArrowDown', ...NO_KEYS })).toBe(false);
    store.actions.select(['pin 3']);
    const clock = vi.spyOn(performance, 'now').mockReturnValue(1000);
    nudge({ key: 'ArrowDown', ...NO_KEYS });
    clock.mockReturnValue(1600);
    nudge({ key: 'ArrowDown', ...NO_KEYS, shiftKey: true });
    clock.mockReturnValue(2200);
    nudge({ key: 'ArrowUp', ...NO_KEYS, altKey: true });
    // 0.1 + 1 − 0.01
    expect(store.getState().project.bridge.pins?.from).toBeCloseTo(pins.from + 1.09, 9);
    expect(store.getState().history.past.map(({ label }) => label)).toEqual(['Move pin 3: 1.09 mm toward the tail']);
    clock.mockReturnValue(2901);
    nudge({ key: 'ArrowUp', ...NO_KEYS });
    expect(store.getState().history.past).toHaveLength(2);
    store.actions.undo();
    store.actions.undo();
    expect(store.getState().project.bridge.pins).toEqual(pins);
    clock.mockRestore();
  });

  it.each([
    // The first pin stands on the treble side; an arrow to the right moves it outward for a right hand only.
    ['right', 0.2],
    ['left', -0.2],
  ] as const)('go the way they point on the screen, %s hand', (hand, grown) => {
    const store = start(hand);
    store.actions.select(['pin 1']);
    createNudge(store)({ key: 'ArrowRight', ...NO_KEYS });
    expect(store.getState().project.bridge.pins?.spread).toBeCloseTo(pins.spread + grown, 9);
  });

  it('say why something stays', () => {
    const store = start();
    store.actions.select(['slot']);
    expect(createNudge(store)({ key: 'ArrowUp', ...NO_KEYS })).toBe(true);
    expect(store.getState().message.text).toContain('The slot stays where the strings break');
    expect(store.getState().history.past).toEqual([]);
  });

  it('leave keys with Ctrl, and all others, to whoever wants them', () => {
    const store = start();
    store.actions.select(['pin 1']);
    const nudge = createNudge(store);
    expect(nudge({ key: 'ArrowUp', ...NO_KEYS, ctrlKey: true })).toBe(false);
    expect(nudge({ key: '+', ...NO_KEYS })).toBe(false);
  });
});

describe('nodeAt', () => {
  const path: Path = {
    start: { x: 0, y: 0 },
    segments: [
      { kind: 'cubic', c1: { x: 3, y: 0 }, c2: { x: 20, y: 10 }, to: { x: 20, y: 20 } },
      { kind: 'line', to: { x: 0, y: 20 } },
    ],
    closed: true,
  };
  const frame = frameOf(VIEW, 'right', 600);
  const hit = (x: number, y: number, by: string, chosen: readonly number[]) => {
    const at = frame.onScreen({ x, y });
    return nodeAt(nodesOf(path), chosen, frame, { at, by, keys: NO_KEYS });
  };

  it('finds a node within the reach of mouse, pen and finger', () => {
    // 1.9 mm are 7.6 px, 2.4 are 9.6, 4.4 are 17.6.
    expect(hit(-1.9, 0, 'mouse', [])).toMatchObject({ kind: 'node', node: { index: 0 } });
    expect(hit(-2.4, 0, 'mouse', [])).toBeNull();
    expect(hit(-2.4, 0, 'pen', [])).toMatchObject({ kind: 'node', node: { index: 0 } });
    expect(hit(-4.4, 0, 'touch', [])).toMatchObject({ kind: 'node', node: { index: 0 } });
  });

  it('finds handles of chosen nodes alone, and of node and handle the nearer', () => {
    expect(hit(20, 10, 'mouse', [])).toBeNull();
    expect(hit(20, 10, 'mouse', [1])).toMatchObject({ kind: 'handle', side: 'before', node: { index: 1 } });
    expect(hit(1, 0, 'mouse', [0])).toMatchObject({ kind: 'node', node: { index: 0 } });
    expect(hit(2, 0, 'mouse', [0])).toMatchObject({ kind: 'handle', side: 'after', node: { index: 0 } });
  });
});
