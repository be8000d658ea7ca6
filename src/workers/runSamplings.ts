import { monteCarloSetback, type SetbackSampling } from '../core/intonation/monteCarloSetback';
import type { SetbackRange } from '../core/ports';
import { ok, type Result } from '../core/result';

/**
 * Samples one request after the other and tells the share that is done, 0 to 1, after every chunk. The first request that
 * cannot be sampled ends it with its issues. Codes: as monteCarloSetback.
 */
export const runSamplings = (
  requests: readonly SetbackSampling[],
  onProgress: (share: number) => void,
): Result<readonly SetbackRange[]> => {
  const all = requests.reduce((sum, { samples }) => sum + samples, 0);
  const ranges: SetbackRange[] = [];
  let before = 0;
  for (const request of requests) {
    const sampling = monteCarloSetback(request);
    let step = sampling.next();
    for (; !step.done; step = sampling.next()) onProgress((before + step.value) / all);
    if (!step.value.ok) return step.value;
    const { mean, sigma, low, high } = step.value.value;
    ranges.push({ mean, sigma, low, high });
    before += request.samples;
  }
  onProgress(1);
  return ok(ranges);
};
