/** The value that this share of the values does not exceed: 0.5 the median, 0.95 the 95th percentile; nearest rank. */
export function percentile(values: readonly number[], share: number): number {
  const sorted = [...values].sort((one, other) => one - other);
  return sorted[Math.max(0, Math.ceil(share * sorted.length) - 1)] ?? Number.NaN;
}

/** Milliseconds that the work took. */
export function timed(work: () => void): number {
  const start = performance.now();
  work();
  return performance.now() - start;
}

/** Milliseconds of each of so many runs; the work is told which run it is, from 0. */
export const timedRuns = (runs: number, work: (run: number) => void): readonly number[] =>
  Array.from({ length: runs }, (_, run) => timed(() => work(run)));
