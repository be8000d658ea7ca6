import { type Remote, wrap } from 'comlink';
import type { Workshop } from '../core/ports';
import { fail } from '../core/result';
import type { PdfWorker } from './pdfWorker';
import { startDrawing } from './startDrawing';
import { startImport } from './startImport';
import { startSampling } from './startSampling';
import { startSet } from './startSet';
import { startView } from './startView';
import { whenBroken } from './whenBroken';

/**
 * The heavy work, in a worker that starts with the first job. A worker that breaks down fails its job with the code
 * worker.failed; the next job starts a new one.
 *
 * @param fontBase absolute address of the folder of the printed font, of the app's own origin, ending in a slash
 */
export function createWorkshop(fontBase: string): Workshop {
  let helper: Helper | undefined;

  return {
    makeReady() {
      helper ??= startHelper();
    },
    async makePdf(sheet) {
      helper ??= startHelper();
      const { worker, remote, broken } = helper;
      try {
        return await Promise.race([remote.makePdf(sheet, fontBase), broken]);
      } catch (error) {
        worker.terminate();
        if (helper?.worker === worker) helper = undefined;
        const reason = error instanceof Error ? error.message : String(error);
        return fail('', 'worker.failed', `The PDF could not be made (${reason}). Reload the page and try again.`);
      }
    },
    makeDrawing: (drawing, format) => startDrawing(drawing, format, fontBase),
    makeSet: (job, onProgress) => startSet(job, onProgress, fontBase),
    viewSet: startView,
    sampleSetbacks: startSampling,
    readOutlines: startImport,
  };
}

interface Helper {
  readonly worker: Worker;
  readonly remote: Remote<PdfWorker>;
  /** Never fulfils; fails when the worker does, for instance because its script did not load. */
  readonly broken: Promise<never>;
}

function startHelper(): Helper {
  const worker = new Worker(new URL('./pdfWorker.ts', import.meta.url), { type: 'module' });
  return { worker, remote: wrap<PdfWorker>(worker), broken: whenBroken(worker) };
}
