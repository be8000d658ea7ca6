import type { Clock } from '../../core/ports';
import type { DeviceMemory } from '../types';
import { createTimers, type Timers } from './createTimers';

const known = new WeakMap<DeviceMemory, Timers>();

/** The clocks that are kept in this memory: the same ones for everyone who asks. */
export const timersOf = (memory: DeviceMemory, clock: Pick<Clock, 'now'>): Timers => {
  const timers = known.get(memory) ?? createTimers(memory, clock);
  known.set(memory, timers);
  return timers;
};
