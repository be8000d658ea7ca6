import { expose } from 'comlink';
import type { SetJob, SetOutline } from '../core/ports';
import { ok, type Result } from '../core/result';
import type { Page } from '../core/sheets/types';
import { layPages } from './laySetPages';

let laid: readonly Page[] = [];

const viewWorker = {
  /** Lays a set in this worker and keeps its pages here. */
  async lay(job: SetJob, onProgress: (share: number) => void): Promise<Result<SetOutline>> {
    const made = await layPages(job, onProgress);
    if (!made.ok) return made;
    laid = made.value.pages;
    return ok({ ...made.value, pages: laid.length });
  },
  /** One of the pages kept, from 0. */
  page: (index: number): Page | null => laid[index] ?? null,
};

/** What the worker offers to the page. */
export type ViewWorker = typeof viewWorker;

expose(viewWorker);
