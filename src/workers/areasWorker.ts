import { expose } from 'comlink';
import { deriveAreas } from '../core/derive/deriveAreas';

const areasWorker = { deriveAreas };

/** What the worker offers to the page. */
export type AreasWorker = typeof areasWorker;

expose(areasWorker);
