import { proxy, wrap } from 'comlink';
import type { SamplingJob, SetbackRange, Workshop } from '../core/ports';
import { fail, type Result } from '../core/result';
import type { SamplingWorker } from './samplingWorker';
import { whenBroken } from './whenBroken';

/** Starts a sampling in a worker of its own, which ends with it: cancelling ends the worker. Code worker.failed when it breaks down. */
export const startSampling: Workshop['sampleSetbacks'] = (requests, onProgress): SamplingJob => {
  const worker = new Worker(new URL('./samplingWorker.ts', import.meta.url), { type: 'module' });
  const remote = wrap<SamplingWorker>(worker);
  const sampled: Promise<Result<readonly SetbackRange[]>> = remote.runSamplings(requests, proxy(onProgress));
  const result = Promise.race([sampled, whenBroken(worker)])
    .catch((error: unknown): Result<readonly SetbackRange[]> => {
      const reason = error instanceof Error ? error.message : String(error);
      return fail('', 'worker.failed', `The sampling could not be done (${reason}). Reload the page and try again.`);
    })
    .finally(() => worker.terminate());
  return { result, cancel: () => worker.terminate() };
};
