import { lazy, StrictMode, Suspense } from 'react';
import { createRoot } from 'react-dom/client';
import type { Clock, NewId, Workshop } from './core/ports';
import { browserFiles } from './persistence/browserFiles';
import { browserMemory } from './persistence/browserMemory';
import { Opening } from './ui/frame/Opening';
import type { Services } from './ui/services';

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

let workshop: Promise<Workshop> | undefined;

/** Everything behind the first paint: what core computes, and the screen that shows it. */
const Workbench = lazy(async () => {
  const [{ App }, { createStore }, { demoProject }] = await Promise.all([
    import('./ui/App'),
    import('./store/createStore'),
    import('./core/kinds/demo'),
  ]);
  const memory = browserMemory('saddlemark-device');
  const store = createStore({ start: demoProject(newId(), clock.now()), clock, memory });
  const services: Services = {
    store,
    clock,
    newId,
    files: browserFiles(),
    codec: async () => {
      const [{ encodeProject }, { decodeProject }] = await Promise.all([
        import('./persistence/encodeProject'),
        import('./persistence/decodeProject'),
      ]);
      return { encode: encodeProject, decode: decodeProject };
    },
    surface: async () => (await import('./canvas/createSurface')).createSurface(store),
    workshop: () => {
      workshop ??= import('./workers/createWorkshop').then(({ createWorkshop }) =>
        createWorkshop(new URL('fonts/', document.baseURI).href),
      );
      return workshop;
    },
  };
  return { default: () => <App services={services} /> };
});

const root = document.getElementById('root');
if (root === null) throw new Error('index.html must hold an element with the id "root"');

createRoot(root).render(
  <StrictMode>
    <Suspense fallback={<Opening />}>
      <Workbench />
    </Suspense>
  </StrictMode>,
);
