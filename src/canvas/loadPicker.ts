import type { Picker } from './picking/createPicker';

/** The picker once it is there: what knows shapes by their places is large, and loads when the drawing is up. */
export interface LoadedPicker {
  /** null until it is there. */
  now(): Picker | null;
  /** Calls back as soon as it is there, for the last of those who asked. */
  whenThere(use: () => void): void;
  stop(): void;
}

/** Begins to load it. failed: called when it cannot be loaded. */
export const loadPicker = (failed: () => void): LoadedPicker => {
  let picker: Picker | null = null;
  let waiting: (() => void) | null = null;
  let stopped = false;
  import('./picking/createPicker').then(({ createPicker }) => {
    if (stopped) return;
    picker = createPicker();
    waiting?.();
  }, failed);
  return {
    now: () => picker,
    whenThere: (use) => {
      if (picker === null) waiting = use;
      else use();
    },
    stop: () => {
      stopped = true;
      picker?.stop();
    },
  };
};
