import { useEffect, useMemo, useRef, useState } from 'react';
import type { Project } from '../../../core/document/types';
import type { LibraryEntry } from '../../../core/ports';
import { useServices } from '../../services';
import { useStore } from '../../useStore';
import { useShelf } from '../shelf/useShelf';

/** What the library holds of strung instruments. */
export type ShopState =
  | { readonly kind: 'reading' }
  | { readonly kind: 'problem'; readonly words: string }
  /** unread: how many could not be read. */
  | { readonly kind: 'read'; readonly projects: readonly Project[]; readonly unread: number };

type Kept = Map<string, { readonly revision: number; readonly project: Project }>;

const words = (error: unknown): string => (error instanceof Error ? error.message : String(error));

/** Every instrument of the library, each read once for each of its revisions; the one in hand as it stands here. */
export const useShop = (): ShopState => {
  const { library } = useServices();
  const { entries, problem } = useShelf().state;
  const inHand = useStore(({ project }) => project);
  const kept = useRef<Kept>(new Map());
  const [shop, setShop] = useState<ShopState>({ kind: 'reading' });

  useEffect(() => {
    if (entries === null) return;
    let stopped = false;
    const readAll = async (listed: readonly LibraryEntry[]): Promise<void> => {
      const shelf = await library();
      let unread = 0;
      for (const { id, revision } of listed) {
        if (kept.current.get(id)?.revision === revision) continue;
        const project = await shelf.read(id);
        if (stopped) return;
        if (project.ok) kept.current.set(id, { revision, project: project.value });
        else unread += 1;
      }
      const projects = listed.flatMap(({ id }) => kept.current.get(id)?.project ?? []);
      if (!stopped) setShop({ kind: 'read', projects, unread });
    };
    readAll(entries.filter(({ serial }) => serial !== null)).catch((error: unknown) => {
      if (!stopped) setShop({ kind: 'problem', words: words(error) });
    });
    return () => {
      stopped = true;
    };
  }, [entries, library]);

  const others = shop.kind === 'read' ? shop.projects : null;
  const projects = useMemo(() => {
    const rest = (others ?? []).filter(({ id }) => id !== inHand.id);
    return inHand.build === null ? rest : [...rest, inHand];
  }, [others, inHand]);

  if (problem !== null) return { kind: 'problem', words: problem };
  return shop.kind === 'read' ? { ...shop, projects } : shop;
};
