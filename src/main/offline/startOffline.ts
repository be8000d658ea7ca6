import type { Autosave } from '../../core/ports';
import type { Store } from '../../store/createStore';
import { showUpdateStrip } from './updateStrip';
import { whatFirst } from './whatFirst';

/** A page that stays open asks for a new version when it is looked at again after this many milliseconds. */
const ASK_AGAIN = 3_600_000;

/** Asks for new versions while the page stays open; without a network there are none. */
const askNowAndThen = (registration: ServiceWorkerRegistration): void => {
  let asked = performance.now();
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState !== 'visible' || performance.now() - asked < ASK_AGAIN) return;
    asked = performance.now();
    registration.update().catch(() => {});
  });
};

/**
 * Keeps the app on this device, so that it opens and works without a network, and offers new versions when they are
 * there. Nothing is changed under the maker's work: the page goes on with its own version until they ask.
 *
 * @param loadAutosave what keeps the work in this browser; null where nothing does
 */
export const startOffline = async (store: Store, loadAutosave: (() => Promise<Autosave>) | null): Promise<void> => {
  // Browsers offer this on https and localhost alone.
  if (!('serviceWorker' in navigator)) return;
  const { serviceWorker } = navigator;
  const autosave = (await loadAutosave?.().catch(() => null)) ?? null;
  const shared = {
    whatFirst: () => whatFirst(store.getState(), autosave?.state() ?? null),
    watch: (changed: () => void) => {
      const stops = [store.subscribe(changed), autosave?.subscribe(changed)];
      return () => {
        for (const stop of stops) stop?.();
      };
    },
  };

  let taking = false;
  let controlled = serviceWorker.controller !== null;
  serviceWorker.addEventListener('controllerchange', () => {
    if (taking) location.reload();
    else if (controlled)
      showUpdateStrip({
        ...shared,
        words: 'Saddlemark was renewed in another tab; this one still runs the version before.',
        button: 'Reload',
        take: () => location.reload(),
      });
    controlled = true;
  });

  const address = new URL('offline.js', document.baseURI);
  const registration = await serviceWorker.register(address, { updateViaCache: 'none' });
  const offer = (): void => {
    if (registration.waiting === null || serviceWorker.controller === null) return;
    showUpdateStrip({
      ...shared,
      words: 'A new version of Saddlemark is ready.',
      button: 'Take the new version',
      take: () => {
        taking = true;
        registration.waiting?.postMessage('take-over');
      },
    });
  };
  registration.addEventListener('updatefound', () => {
    const { installing } = registration;
    installing?.addEventListener('statechange', offer);
  });
  offer();
  askNowAndThen(registration);
};
