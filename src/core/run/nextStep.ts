import type { RunStep } from './types';

/** The step to go on with: the first that is not ticked; null when all are. ticked: instants by the step's id. */
export const nextStep = (steps: readonly RunStep[], ticked: Readonly<Record<string, string>>): RunStep | null =>
  steps.find(({ id }) => ticked[id] === undefined) ?? null;
