import { createContext } from 'react';

/** Text that was typed but could not be taken, with the reason and the value that the box showed before. */
export interface KeptDraft {
  readonly text: string;
  readonly wrong: string | null;
  readonly shown: string;
}

/** Drafts of the work in hand by the path of their field: they outlive a change of station. */
export type Drafts = Map<string, KeptDraft>;

export const DraftsContext = createContext<Drafts>(new Map());
