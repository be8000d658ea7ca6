import { parentPort, workerData } from 'node:worker_threads';
import { fuzzDrawings } from './fuzzDrawings';
import { fuzzLibraries, fuzzProjects } from './fuzzProjects';
import type { FuzzRun } from './fuzzRun';

/** What the worker is asked for. */
interface Work {
  readonly kind: 'svg' | 'dxf' | 'project' | 'library';
  readonly count: number;
  readonly seed: number;
  /** Where it says which file it is at. */
  readonly at: SharedArrayBuffer;
}

const { kind, count, seed, at } = workerData as Work;
const place = new Int32Array(at);
const begin = (number: number): void => {
  Atomics.store(place, 0, number);
};
const readers: Readonly<Record<Work['kind'], () => FuzzRun>> = {
  svg: () => fuzzDrawings('svg', count, seed, begin),
  dxf: () => fuzzDrawings('dxf', count, seed, begin),
  project: () => fuzzProjects(count, seed, begin),
  library: () => fuzzLibraries(count, seed, begin),
};
parentPort?.postMessage(readers[kind]());
