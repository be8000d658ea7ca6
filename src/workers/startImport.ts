import { wrap } from 'comlink';
import type { ImportedOutlines, ImportJob, Workshop } from '../core/ports';
import { fail, type Result } from '../core/result';
import type { ImportWorker } from './importWorker';
import { whenBroken } from './whenBroken';

/** A bridge is read in a tenth of this, ms; the maker waits two seconds at most, the worker's start and end included. */
const LONGEST_MS = 1700;

/**
 * Reads a file in a worker of its own, which ends with it: cancelling ends the worker, and so does the clock. Codes: as
 * readOutlines, import.slow (not read in time), worker.failed (the worker broke down).
 */
export const startImport: Workshop['readOutlines'] = (name, bytes, scale): ImportJob => {
  const worker = new Worker(new URL('./importWorker.ts', import.meta.url), { type: 'module' });
  let timer: ReturnType<typeof setTimeout> | undefined;
  const late = new Promise<Result<ImportedOutlines>>((resolve) => {
    const message = `${name} is too large or too tangled to be read within two seconds. Save the bridge's outline alone, and try again.`;
    timer = setTimeout(() => resolve(fail('', 'import.slow', message)), LONGEST_MS);
  });
  const end = (): void => {
    clearTimeout(timer);
    worker.terminate();
  };
  const read: Promise<Result<ImportedOutlines>> = wrap<ImportWorker>(worker).readOutlines(name, bytes, scale);
  const result = Promise.race([read, late, whenBroken(worker)])
    .catch((error: unknown): Result<ImportedOutlines> => {
      const reason = error instanceof Error ? error.message : String(error);
      return fail('', 'worker.failed', `${name} could not be read (${reason}). Reload the page and try again.`);
    })
    .finally(end);
  return { result, cancel: end };
};
