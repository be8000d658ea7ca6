import { useSyncExternalStore } from 'react';

/** Whether the screen answers to a media query, kept up to date. */
export const useMedia = (query: string): boolean =>
  useSyncExternalStore(
    (changed) => {
      const list = matchMedia(query);
      list.addEventListener('change', changed);
      return () => list.removeEventListener('change', changed);
    },
    () => matchMedia(query).matches,
  );
