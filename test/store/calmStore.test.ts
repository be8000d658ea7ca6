import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { ok } from '../../src/core/result';
import { calmStore } from '../../src/store/calmStore';
import { startStore } from './startStore';

beforeEach(() => {
  vi.useFakeTimers();
});
afterEach(() => {
  vi.useRealTimers();
});

const start = () => {
  const { store } = startStore();
  const calm = calmStore({ ...store, actions: store.actions as never });
  const thickness: number[] = [];
  calm.subscribe(({ preview, project }) => thickness.push((preview ?? project).bridge.thickness));
  const preview = (to: number) =>
    store.actions.preview((project) => ok({ ...project, bridge: { ...project.bridge, thickness: to } }));
  return { store, calm, thickness, preview };
};

describe('the state that the screen shows', () => {
  it('follows every change at once', () => {
    const { store, calm, thickness } = start();
    store.actions.setField('bridge.thickness', 8);
    expect(thickness.at(-1)).toBe(8);
    expect(calm.getState()).toBe(store.getState());
  });

  it('follows a drag now and then, and its end at once', () => {
    const { store, calm, thickness, preview } = start();
    const before = calm.getState();
    for (const to of [8, 8.1, 8.2]) preview(to);
    expect(calm.getState()).toBe(before);
    vi.advanceTimersByTime(450);
    expect(thickness).toEqual([8.2]);
    expect(calm.getState()).toBe(store.getState());
    preview(8.3);
    store.actions.preview(null);
    expect(thickness).toHaveLength(2);
    expect(calm.getState()).toBe(store.getState());
    // Nothing comes late.
    vi.advanceTimersByTime(1000);
    expect(thickness).toHaveLength(2);
  });

  it('follows a hand that never rests about once a second', () => {
    const { calm, thickness, preview } = start();
    const before = calm.getState();
    let to = 8;
    const move = (milliseconds: number): void => {
      for (let passed = 0; passed < milliseconds; passed += 16) {
        to += 0.01;
        preview(to);
        vi.advanceTimersByTime(16);
      }
    };
    move(900);
    expect(calm.getState()).toBe(before);
    move(300);
    expect(thickness).toHaveLength(1);
    move(4000);
    expect(thickness.length).toBeGreaterThanOrEqual(4);
    expect(thickness.length).toBeLessThanOrEqual(6);
  });

  it('tells no one who has left', () => {
    const { store, calm } = start();
    const heard = vi.fn();
    calm.subscribe(heard)();
    store.actions.setField('bridge.thickness', 8);
    expect(heard).not.toHaveBeenCalled();
  });
});
