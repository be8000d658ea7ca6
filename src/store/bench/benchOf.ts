import type { DeviceMemory } from '../types';
import { type Bench, createBench } from './createBench';

const benches = new WeakMap<DeviceMemory, Bench>();

/** The bench that is kept in this memory: the same one for everyone who asks. */
export const benchOf = (memory: DeviceMemory): Bench => {
  const bench = benches.get(memory) ?? createBench(memory);
  benches.set(memory, bench);
  return bench;
};
