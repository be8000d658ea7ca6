import { useEffect } from 'react';

/** Keeps the screen from going dark while this is shown, where the device allows it: no one taps it with glue on the hands. */
export const useAwake = (): void => {
  useEffect(() => {
    let over = false;
    let lock: WakeLockSentinel | null = null;
    const hold = async (): Promise<void> => {
      if (document.visibilityState !== 'visible' || !('wakeLock' in navigator)) return;
      try {
        const held = await navigator.wakeLock.request('screen');
        if (over) await held.release();
        else lock = held;
      } catch {
        // A battery that runs low, or a browser that forbids it: the screen goes dark as it always does.
      }
    };
    void hold();
    document.addEventListener('visibilitychange', hold);
    return () => {
      over = true;
      document.removeEventListener('visibilitychange', hold);
      void lock?.release();
    };
  }, []);
};
