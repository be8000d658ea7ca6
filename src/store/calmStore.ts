import type { Store } from './createStore';
import type { AppState } from './types';

/** While something is dragged, it is looked this often, ms, whether the hand rests: nothing changed since the last time. */
const LOOK = 150;
/** So many looks after it last did, the screen around the drawing follows even so: about a second. */
const LATEST = 7;

/**
 * The state as the screen around the drawing shows it: at once, but while something is dragged when the hand rests, or now
 * and then, so that tables hold up few frames of the drawing, which follows each.
 */
export const calmStore = (store: Store): Pick<Store, 'getState' | 'getInitialState' | 'subscribe'> => {
  const listeners = new Set<(state: AppState, before: AppState) => void>();
  let shown = store.getState();
  let seen = shown;
  let looks = 0;
  let timer: ReturnType<typeof setTimeout> | undefined;
  const show = (): void => {
    clearTimeout(timer);
    timer = undefined;
    looks = 0;
    const before = shown;
    shown = store.getState();
    for (const listener of [...listeners]) listener(shown, before);
  };
  const look = (): void => {
    const state = store.getState();
    looks += 1;
    if (state === seen || looks >= LATEST) {
      show();
      return;
    }
    seen = state;
    timer = setTimeout(look, LOOK);
  };
  store.subscribe((state) => {
    if (state.preview === null) show();
    else if (timer === undefined) {
      seen = state;
      timer = setTimeout(look, LOOK);
    }
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
