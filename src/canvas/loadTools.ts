import type { Store } from '../store/createStore';
import type { HandTools, ToolView } from './handTools';

/** The tools for work by hand, once the maker first draws. */
export interface LoadedTools {
  /** null until they are there. */
  loaded(): HandTools | null;
  /** null as well where the maker does not draw. */
  now(): HandTools | null;
  stop(): void;
}

/** Loads them when the station is Draw for the first time; `there` is called when they come. */
export const loadTools = (store: Store, view: ToolView, there: () => void): LoadedTools => {
  let tools: HandTools | null | 'loading' = null;
  const draws = (): boolean => store.getState().device.station === 'draw';
  const load = (): void => {
    if (tools !== null || !draws()) return;
    tools = 'loading';
    import('./tools/createTools').then(
      ({ createTools }) => {
        if (!view.canvas.isConnected) return;
        tools = createTools(store, view);
        there();
      },
      () => {
        tools = null;
        store.actions.warn('The part of the program that works on the drawing by hand could not be loaded.');
      },
    );
  };
  const loaded = (): HandTools | null => (tools === 'loading' ? null : tools);
  const stopHearing = store.subscribe((state, before) => {
    if (state.device.station !== before.device.station) load();
  });
  load();
  return {
    loaded,
    now: () => (draws() ? loaded() : null),
    stop: () => {
      stopHearing();
      loaded()?.stop();
    },
  };
};
