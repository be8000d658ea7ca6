import { demoProject } from '../core/kinds/demo';
import type { Clock, NewId, Workshop } from '../core/ports';
import { fail } from '../core/result';
import { browserFiles } from '../persistence/browserFiles';
import { browserMemory } from '../persistence/browserMemory';
import { calmStore } from '../store/calmStore';
import { createStore, type StoreNeeds } from '../store/createStore';
import type { DeriveAreas } from '../store/keepAreas';
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
 * Puts together what the screen works with, on the demo instrument. Everything heavy is loaded from here when it is first
 * asked for, so that what it shares with the screen stays in one file.
 */
export const startServices = (): Services => {
  const memory = browserMemory('saddlemark-device');
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
  const store = createStore({ start: demoProject(newId(), clock.now()), clock, memory, deriveAreas, loadAround });
  const stop = store.subscribe(({ zoom, device }) => {
    if (zoom === 0 && device.station !== 'print') return;
    stop();
    release();
  });
  let workshop: Promise<Workshop> | undefined;
  return {
    store,
    shown: calmStore(store),
    clock,
    newId,
    files: browserFiles(),
    benchMemory: browserMemory('saddlemark-bench'),
    codec: async () => {
      const [{ encodeProject }, { decodeProject }] = await Promise.all([
        import('../persistence/encodeProject'),
        import('../persistence/decodeProject'),
      ]);
      return { encode: encodeProject, decode: decodeProject };
    },
    surface: async () => (await import('../canvas/createSurface')).createSurface(store),
    workshop: () => {
      workshop ??= import('../workers/createWorkshop').then(({ createWorkshop }) =>
        createWorkshop(new URL('fonts/', document.baseURI).href),
      );
      return workshop;
    },
  };
};
