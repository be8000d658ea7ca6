import { proxy, transfer, wrap } from 'comlink';
import type { SetFile, SetJob, SetRun } from '../core/ports';
import { fail, type Result } from '../core/result';
import type { PdfWorker } from './pdfWorker';
import type { SetWorker } from './setWorker';
import { whenBroken } from './whenBroken';

/**
 * Makes a set in two workers of its own, one that lays the pages and one that writes them; both end with it, and cancelling
 * ends them. Codes: those of `runSet`, worker.failed.
 *
 * @param fontBase absolute address of the folder of the printed font, ending in a slash
 */
export const startSet = (job: SetJob, onProgress: (share: number) => void, fontBase: string): SetRun => {
  const layer = new Worker(new URL('./setWorker.ts', import.meta.url), { type: 'module' });
  const writer = new Worker(new URL('./pdfWorker.ts', import.meta.url), { type: 'module' });
  const end = (): void => {
    layer.terminate();
    writer.terminate();
  };
  const { port1, port2 } = new MessageChannel();
  const lay = async (): Promise<Result<SetFile>> => {
    await wrap<PdfWorker>(writer).serve(transfer(port1, [port1]));
    return wrap<SetWorker>(layer).makeSet(job, transfer(port2, [port2]), fontBase, proxy(onProgress));
  };
  const result = Promise.race([lay(), whenBroken(layer), whenBroken(writer)])
    .catch((error: unknown): Result<SetFile> => {
      const reason = error instanceof Error ? error.message : String(error);
      return fail('', 'worker.failed', `The set could not be made (${reason}). Reload the page and try again.`);
    })
    .finally(end);
  return { result, cancel: end };
};
