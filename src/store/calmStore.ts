import type { Store } from './createStore';
import type { AppState } from './types';

/** While something is dragged, the screen around the drawing follows this often, ms; the drawing itself follows each frame. */
const PAUSE = 400;

/**
 * The state as the screen around the drawing shows it: at once, but while something is dragged now and then, and between
 * frames, so that tables hold up no frame.
 */
export const calmStore = (store: Store): Pick<Store, 'getState' | 'getInitialState' | 'subscribe'> => {
  const listeners = new Set<(state: AppState, before: AppState) => void>();
  let shown = store.getState();
  let timer: ReturnType<typeof setTimeout> | undefined;
  const show = (): void => {
    clearTimeout(timer);
    timer = undefined;
    const before = shown;
    shown = store.getState();
    for (const listener of [...listeners]) listener(shown, before);
  };
  store.subscribe((state) => {
    if (state.preview === null) show();
    else timer ??= setTimeout(show, PAUSE);
  });
  return {
    getState: () => shown,
    getInitialState: store.getInitialState,
    subscribe: (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
  };
};
