import { useSyncExternalStore } from 'react';
import type { RoundStage } from '../../../core/document/buildTypes';

/** What the maker has in hand on Place, for this visit: the line being read, when in the work, and a round opened again. */
export interface InHand {
  readonly line: string | null;
  readonly stage: RoundStage;
  /** Id of an earlier round that was opened again; null for the one that is open by itself. */
  readonly round: string | null;
}

let now: InHand = { line: null, stage: 'taped', round: null };
const watchers = new Set<() => void>();

/** Takes something else in hand. */
export const takeInHand = (change: Partial<InHand>): void => {
  now = { ...now, ...change };
  for (const watcher of watchers) watcher();
};

const watch = (watcher: () => void): (() => void) => {
  watchers.add(watcher);
  return () => watchers.delete(watcher);
};

/** What is in hand, kept up to date. */
export const useInHand = (): InHand => useSyncExternalStore(watch, () => now);
