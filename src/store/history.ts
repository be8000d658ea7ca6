import type { Project } from '../core/document/types';

/** One change that can be undone; label names it for people: "Nut width 44.5". */
export interface Step {
  readonly before: Project;
  readonly after: Project;
  readonly label: string;
  /** Steps that follow one another with the same burst count as one: nudges without a pause. */
  readonly burst?: string | undefined;
}

export interface History {
  readonly past: readonly Step[];
  /** What was undone, next to redo last. */
  readonly future: readonly Step[];
}

export const EMPTY_HISTORY: History = { past: [], future: [] };

/** Far more than an afternoon's work; steps share what they did not change, so each costs little. */
const MOST_STEPS = 500;

/** The history with one more step, or with its last one carried on; what was undone before is gone. */
export const recordStep = ({ past }: History, step: Step): History => {
  const last = past.at(-1);
  const joined = step.burst !== undefined && last?.burst === step.burst;
  const next = joined ? [...past.slice(0, -1), { ...step, before: last.before }] : [...past, step];
  return { past: next.slice(-MOST_STEPS), future: [] };
};

/** The history one step back, and that step; null when there is none. */
export const stepBack = ({ past, future }: History): { readonly history: History; readonly step: Step } | null => {
  const step = past.at(-1);
  return step === undefined ? null : { step, history: { past: past.slice(0, -1), future: [...future, step] } };
};

/** The history one step forward again, and that step; null when there is none. */
export const stepForward = ({ past, future }: History): { readonly history: History; readonly step: Step } | null => {
  const step = future.at(-1);
  return step === undefined ? null : { step, history: { past: [...past, step], future: future.slice(0, -1) } };
};
