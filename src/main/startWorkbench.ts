import { createSurface } from '../canvas/createSurface';
import { demoProject } from '../core/kinds/demo';
import type { Autosave, Clock, Library, NewId, Workshop } from '../core/ports';
import { fail } from '../core/result';
import { browserFiles } from '../persistence/browserFiles';
import { browserMemory } from '../persistence/browserMemory';
import type { HandKeeper } from '../persistence/library/handKeeper';
import { calmStore } from '../store/calmStore';
import { createStore, type StoreNeeds } from '../store/createStore';
import type { DeriveAreas } from '../store/keepAreas';
import type { AppState } from '../store/types';
import type { Services } from '../ui/services';

export { App } from '../ui/App';

const twoDigits = (n: number): string => String(n).padStart(2, '0');

const clock: Clock = {
  now: () => new Date().toISOString(),
  today: () => {
    const day = new Date();
    return `${day.getFullYear()}-${twoDigits(day.getMonth() + 1)}-${twoDigits(day.getDate())}`;
  },
};
// Not crypto.randomUUID: a page that a maker serves to the bench over plain http does not have it.
const newId: NewId = () =>
  Array.from(crypto.getRandomValues(new Uint8Array(16)), (byte) => byte.toString(16).padStart(2, '0')).join('');

/**
 * Puts together what the screen works with, on what was last in hand or on the demo instrument. Everything heavy is loaded
 * from here when it is first asked for, so that what it shares with the screen stays in one file. visited: an earlier visit
 * may have left something.
 */
export const startServices = async (visited: boolean): Promise<Services> => {
  const memory = browserMemory('saddlemark-device');
  const benchMemory = browserMemory('saddlemark-bench');
  const last = browserMemory('saddlemark-last');
  let opening: Promise<Library & HandKeeper> | undefined;
  const library = (): Promise<Library & HandKeeper> => {
    opening ??= import('../persistence/library/createLibrary').then(({ createLibrary }) =>
      createLibrary({ clock, newId, bench: benchMemory }),
    );
    return opening;
  };
  const pending = browserMemory('saddlemark-pending');
  const visit = visited
    ? await Promise.all([library(), import('./autosave/openLast')])
        .then(([of, { openLast }]) => openLast(of, last, pending))
        .catch(() => ({
          found: null,
          left: null,
          unread: { id: last.read() ?? '', reason: 'The part of the program that keeps it could not be loaded.' },
        }))
    : null;
  const start = visit?.found ?? demoProject(newId(), clock.now());
  let release = (): void => {};
  const drawn = new Promise<void>((resolve) => {
    release = resolve;
  });
  let areas: DeriveAreas | undefined;
  /** All that is not the drawing itself waits until it is up, or the screen shows none. */
  const deriveAreas: DeriveAreas = async (...bridge) => {
    await drawn;
    try {
      areas ??= (await import('../workers/startAreas')).startAreas();
      return areas(...bridge);
    } catch {
      return fail('', 'areas.notLoaded', 'The part of the program that finds areas could not be loaded.');
    }
  };
  const loadAround: StoreNeeds['loadAround'] = async (arrived) => {
    await drawn;
    try {
      return (await import('../store/makeAround')).makeAround(arrived);
    } catch {
      return null;
    }
  };
  const store = createStore({ start: visit?.left ?? start, clock, memory, deriveAreas, loadAround });
  const isUp = ({ zoom, device }: AppState): boolean =>
    zoom > 0 || (device.station !== 'measure' && device.station !== 'draw');
  const stop = store.subscribe((state) => {
    if (!isUp(state)) return;
    stop();
    release();
  });
  // A visit that goes on at a station without the drawing has nothing to wait for.
  if (isUp(store.getState())) release();
  let keeping: Promise<Autosave> | undefined;
  const autosave = (): Promise<Autosave> => {
    keeping ??= Promise.all([library(), import('./autosave/startAutosave')]).then(([of, { startAutosave }]) =>
      startAutosave({ store, library: of, clock, newId, start, visit, last, pending }),
    );
    return keeping;
  };
  drawn.then(autosave).catch(() => {});
  if (import.meta.env.PROD)
    drawn.then(async () => (await import('./offline/startOffline')).startOffline(store, autosave)).catch(() => {});
  let workshop: Promise<Workshop> | undefined;
  return {
    store,
    shown: calmStore(store),
    clock,
    newId,
    files: browserFiles(),
    benchMemory,
    library,
    autosave,
    timerMemory: browserMemory('saddlemark-timers'),
    codec: async () => import('../persistence/codec'),
    surface: createSurface(store),
    workshop: () => {
      workshop ??= import('../workers/createWorkshop').then(({ createWorkshop }) =>
        createWorkshop(new URL('fonts/', document.baseURI).href),
      );
      return workshop;
    },
  };
};
