import { expose, wrap } from 'comlink';
import type { SetJob } from '../core/ports';
import type { PdfWorker } from './pdfWorker';
import { runSet } from './runSet';

const setWorker = {
  /** Lays a set in this worker; the one behind `writer` writes its pages, with the font from `fontBase`. */
  makeSet(job: SetJob, writer: MessagePort, fontBase: string, onProgress: (share: number) => void) {
    const { makePdf } = wrap<PdfWorker>(writer);
    return runSet(job, (document) => makePdf(document, fontBase), onProgress);
  },
};

/** What the worker offers to the page. */
export type SetWorker = typeof setWorker;

expose(setWorker);
