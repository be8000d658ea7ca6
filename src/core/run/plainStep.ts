import type { RunBlock, RunStep } from './types';

/** A step that starts no clock and takes no reading, unless it is given one. */
export const plainStep = (
  block: RunBlock,
  id: string,
  title: string,
  more: Partial<Omit<RunStep, 'block' | 'id' | 'title'>> = {},
): RunStep => ({ id, block, title, doing: [], cautions: [], timers: [], round: null, ...more });
