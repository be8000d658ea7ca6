import type { SetJob, SetOutline, SetView, Workshop } from '../../../core/ports';
import type { Page } from '../../../core/sheets/types';

/** What is shown of a set before it is made. */
export type SetPreviewState =
  | { readonly kind: 'closed' }
  /** share: how far it is laid out, 0 to 1. */
  | { readonly kind: 'laying'; readonly share: number }
  /** index: of the page looked at, from 0. page: the one shown, which may still be the one before. */
  | { readonly kind: 'open'; readonly outline: SetOutline; readonly index: number; readonly page: Page | null }
  | { readonly kind: 'failed'; readonly message: string };

/** A look through a set: its pages are laid in the background and come one at a time. */
export interface SetPreview {
  getState(): SetPreviewState;
  subscribe(changed: () => void): () => void;
  open(job: SetJob): Promise<void>;
  /** Turns to a page, from 0; one that is not there is left alone. */
  turnTo(index: number): Promise<void>;
  close(): void;
}

const CLOSED: SetPreviewState = { kind: 'closed' };

/** A preview that shows nothing yet. One set is looked at at a time. */
export const createSetPreview = (workshop: () => Promise<Pick<Workshop, 'viewSet'>>): SetPreview => {
  let state: SetPreviewState = CLOSED;
  let view: SetView | null = null;
  /** Which opening is the last: what an earlier one still tells no longer counts. */
  let last = 0;
  const listeners = new Set<() => void>();
  const set = (next: SetPreviewState): void => {
    state = next;
    for (const changed of listeners) changed();
  };
  const end = (): void => {
    last += 1;
    view?.end();
    view = null;
  };

  const turnTo = async (index: number): Promise<void> => {
    if (state.kind !== 'open' || view === null || index < 0 || index >= state.outline.pages) return;
    const mine = last;
    set({ ...state, index });
    const page = await view.page(index);
    if (mine === last && state.kind === 'open' && state.index === index) set({ ...state, page });
  };

  return {
    getState: () => state,
    subscribe: (changed) => {
      listeners.add(changed);
      return () => listeners.delete(changed);
    },
    open: async (job) => {
      end();
      const mine = last;
      set({ kind: 'laying', share: 0 });
      const { viewSet } = await workshop();
      if (mine !== last) return;
      view = viewSet(job, (share) => {
        if (mine === last && state.kind === 'laying') set({ kind: 'laying', share });
      });
      const laid = await view.result;
      if (mine !== last) return;
      if (!laid.ok) return set({ kind: 'failed', message: laid.issues.map(({ message }) => message).join(' ') });
      set({ kind: 'open', outline: laid.value, index: 0, page: null });
      await turnTo(0);
    },
    turnTo,
    close: () => {
      end();
      if (state.kind !== 'closed') set(CLOSED);
    },
  };
};
