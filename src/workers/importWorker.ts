import { expose } from 'comlink';
import { readOutlines } from '../importers/readOutlines';

const importWorker = { readOutlines };

/** What the worker offers to the page. */
export type ImportWorker = typeof importWorker;

expose(importWorker);
