const CHANNEL = 'saddlemark-library';

/** Every other tab, and every other part of this one, is told of changes. */
export const createBell = () => {
  const out = typeof BroadcastChannel === 'undefined' ? null : new BroadcastChannel(CHANNEL);
  return {
    ring: (): void => out?.postMessage('changed'),
    watch: (changed: () => void): (() => void) => {
      if (typeof BroadcastChannel === 'undefined') return () => {};
      const into = new BroadcastChannel(CHANNEL);
      into.addEventListener('message', changed);
      return () => into.close();
    },
  };
};
