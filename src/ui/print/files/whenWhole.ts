import type { Store } from '../../../store/createStore';
import type { AppState } from '../../../store/types';

/** How long the parts that come after the first drawing are waited for, ms: they take a tenth of it. */
const LONGEST_MS = 5000;

const isWhole = ({ around, areas, project }: AppState): boolean => {
  if (around === null || (project.bridge.rim > 0 && areas === null)) return false;
  return around.repair === null || !around.repair.place.ok || around.repair.areas !== null;
};

/** The state once everything that belongs in the drawing is there; null when it did not come. The bridge must be one that could be placed. */
export const whenWhole = ({ getState, subscribe }: Pick<Store, 'getState' | 'subscribe'>): Promise<AppState | null> => {
  if (isWhole(getState())) return Promise.resolve(getState());
  return new Promise((resolve) => {
    const end = (state: AppState | null): void => {
      clearTimeout(timer);
      stop();
      resolve(state);
    };
    const timer = setTimeout(() => end(null), LONGEST_MS);
    const stop = subscribe((state) => {
      if (isWhole(state)) end(state);
    });
  });
};
