import { expose } from 'comlink';
import { runSamplings } from './runSamplings';

const samplingWorker = { runSamplings };

/** What the worker offers to the page. */
export type SamplingWorker = typeof samplingWorker;

expose(samplingWorker);
