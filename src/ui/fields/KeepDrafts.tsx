import { type ReactNode, useState } from 'react';
import { type Drafts, DraftsContext } from './drafts';

/** Holds the drafts of everything inside it for as long as it stands. */
export function KeepDrafts({ children }: { readonly children: ReactNode }) {
  const [drafts] = useState<Drafts>(() => new Map());
  return <DraftsContext value={drafts}>{children}</DraftsContext>;
}
