import type { Autosave } from '../../core/ports';
import { encodeProject } from '../../persistence/encodeProject';
import { type AutosaveNeeds, createAutosave } from './createAutosave';

/** Starts keeping the work in hand, and keeps what is left when the page is hidden or left. */
export const startAutosave = (needs: Omit<AutosaveNeeds, 'askToLast' | 'encode'>): Autosave => {
  const autosave = createAutosave({
    ...needs,
    encode: encodeProject,
    askToLast: () => {
      navigator.storage?.persist?.().catch(() => {});
    },
  });
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState === 'hidden') autosave.leave();
  });
  window.addEventListener('pagehide', autosave.leave);
  return autosave;
};
