import { parentPort, workerData } from 'node:worker_threads';
import { fuzzDrawings } from './fuzzDrawings';
import { fuzzProjects } from './fuzzProjects';
import type { FuzzRun } from './fuzzRun';

/** What the worker is asked for. */
interface Work {
  readonly kind: 'svg' | 'dxf' | 'project';
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
const run: FuzzRun = kind === 'project' ? fuzzProjects(count, seed, begin) : fuzzDrawings(kind, count, seed, begin);
parentPort?.postMessage(run);
