import { proxy, wrap } from 'comlink';
import type { SetJob, SetOutline, SetView } from '../core/ports';
import { fail, type Result } from '../core/result';
import type { ViewWorker } from './viewWorker';
import { whenBroken } from './whenBroken';

/** Lays a set in a worker of its own, which keeps the pages and hands them out one by one. Codes: those of `layPages`, worker.failed. */
export const startView = (job: SetJob, onProgress: (share: number) => void): SetView => {
  const worker = new Worker(new URL('./viewWorker.ts', import.meta.url), { type: 'module' });
  const view = wrap<ViewWorker>(worker);
  const result = Promise.race([view.lay(job, proxy(onProgress)), whenBroken(worker)]).catch(
    (error: unknown): Result<SetOutline> => {
      const reason = error instanceof Error ? error.message : String(error);
      return fail('', 'worker.failed', `The set could not be laid out (${reason}). Reload the page and try again.`);
    },
  );
  return { result, page: (index) => view.page(index), end: () => worker.terminate() };
};
