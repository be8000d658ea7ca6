import { createStore, type StoreApi } from 'zustand/vanilla';
import type { Clock } from '../../core/ports';
import type { DeviceMemory } from '../types';
import { MOST_TIMERS, readTimers } from './readTimers';
import { secondsLeft } from './secondsLeft';
import type { KeptTimers, Timer } from './types';

/** A device that sets its clock by the network may go back by this much; more is told, ms. */
const SMALL_STEP = 2000;

export interface TimersState extends KeptTimers {
  /** The clock of this device when it was last looked at. */
  readonly now: number;
}

/** The clocks of this device, of all projects. */
export interface Timers extends Pick<StoreApi<TimersState>, 'getState' | 'subscribe'> {
  /** Begins a clock; the same one of the same project begins anew. */
  start(timer: Omit<Timer, 'startedAt' | 'heard'>): void;
  /** Takes a clock away. */
  stop(id: string): void;
  /** The maker read that the clock of this device went back. */
  takeNote(): void;
  /** Looks at the clock; answers with those whose time is up since it was last looked at. */
  tick(): readonly Timer[];
}

/** Clocks that this device kept go on; another tab's are found at each look. */
export const createTimers = (memory: DeviceMemory, clock: Pick<Clock, 'now'>): Timers => {
  const at = (): number => Date.parse(clock.now());
  const nothing: KeptTimers = { timers: [], seen: 0, movedBack: 0 };
  const { getState, setState, subscribe } = createStore<TimersState>(() => ({
    ...(readTimers(memory.read()) ?? nothing),
    now: at(),
  }));

  /** What is kept now, by this tab or another; a clock that went back is noticed, and the count goes on from what it was. */
  const look = (): KeptTimers & { readonly now: number } => {
    const kept = readTimers(memory.read()) ?? getState();
    const now = at();
    const back = kept.timers.length === 0 ? 0 : kept.seen - now;
    if (back <= SMALL_STEP) return { ...kept, now };
    return {
      timers: kept.timers.map((timer) => ({ ...timer, startedAt: Math.max(0, timer.startedAt - back) })),
      seen: now,
      movedBack: kept.movedBack + back / 1000,
      now,
    };
  };
  const keep = ({ timers, movedBack, now }: Omit<TimersState, 'seen'>): void => {
    setState({ timers, movedBack, now, seen: now });
    memory.write(JSON.stringify({ timers, seen: now, movedBack }));
  };

  return {
    getState,
    subscribe,
    start: (timer) => {
      const seen = look();
      const others = seen.timers.filter(({ project, what }) => project !== timer.project || what !== timer.what);
      const begun = { ...timer, startedAt: seen.now, heard: false };
      keep({ ...seen, timers: [...others, begun].slice(-MOST_TIMERS) });
    },
    stop: (id) => {
      const seen = look();
      keep({ ...seen, timers: seen.timers.filter((timer) => timer.id !== id) });
    },
    takeNote: () => keep({ ...look(), movedBack: 0 }),
    tick: () => {
      const seen = look();
      if (seen.timers.length === 0) {
        if (getState().timers.length > 0) setState(seen);
        return [];
      }
      const ended = seen.timers.filter((timer) => !timer.heard && secondsLeft(timer, seen.now) <= 0);
      const timers = seen.timers.map((timer) => (ended.includes(timer) ? { ...timer, heard: true } : timer));
      keep({ ...seen, timers });
      return ended;
    },
  };
};
