import type { Autosave, Library } from '../../core/ports';
import type { HandKeeper } from '../../persistence/library/handKeeper';
import { type AutosaveNeeds, createAutosave } from './createAutosave';
import type { LastVisit } from './openLast';
import { pendingText } from './pendingText';

/** What keeping the work in hand is started with; visit: null for a first one. */
export interface StartNeeds extends Omit<AutosaveNeeds, 'askToLast' | 'encode' | 'opened' | 'unread' | 'library'> {
  readonly library: Library & HandKeeper;
  readonly visit: LastVisit | null;
}

/** Starts keeping the work in hand, and keeps what is left when the page is hidden or left. */
export const startAutosave = ({ visit, last, ...needs }: StartNeeds): Autosave => {
  const autosave = createAutosave({
    ...needs,
    opened: Boolean(visit?.found),
    unread: visit?.unread ?? null,
    last: {
      write: (id) => {
        last.write(id);
        needs.library.hold(id);
      },
    },
    encode: (project) => pendingText(needs.library, project),
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
