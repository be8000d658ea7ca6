import { fileKeeper, type KeptFile } from './fileKeeper';

/** Put in by the build: every file of it, and a hash of them all. */
declare const KEPT_FILES: readonly KeptFile[];
declare const KEPT_VERSION: string;

interface LastingEvent extends Event {
  waitUntil(work: Promise<unknown>): void;
}

interface FetchEvent extends LastingEvent {
  readonly request: Request;
  respondWith(answer: Promise<Response>): void;
}

/** The part of a service worker's own names that is used here; the compiler knows a page's only. */
interface WorkerNames {
  readonly registration: { readonly scope: string; readonly installing: unknown; readonly waiting: unknown };
  readonly clients: {
    matchAll(choice: { type: 'window'; includeUncontrolled: boolean }): Promise<readonly unknown[]>;
    claim(): Promise<void>;
  };
  skipWaiting(): Promise<void>;
  addEventListener(kind: 'install' | 'activate', listener: (event: LastingEvent) => void): void;
  addEventListener(kind: 'fetch', listener: (event: FetchEvent) => void): void;
  addEventListener(kind: 'message', listener: (event: MessageEvent & LastingEvent) => void): void;
}

const worker = self as unknown as WorkerNames;

const keeper = fileKeeper({
  scope: worker.registration.scope,
  version: KEPT_VERSION,
  files: KEPT_FILES,
  caches,
  fetch: (request) => fetch(request),
  countWindows: async () => (await worker.clients.matchAll({ type: 'window', includeUncontrolled: true })).length,
  hasNewer: () => worker.registration.installing !== null || worker.registration.waiting !== null,
});

// No skipWaiting here: a version that is in use stays in use until its windows are closed, or until the maker asks.
worker.addEventListener('install', (event) => event.waitUntil(keeper.keepAll()));

worker.addEventListener('activate', (event) => event.waitUntil(keeper.dropOlder().then(() => worker.clients.claim())));

worker.addEventListener('message', (event) => {
  if (event.data === 'take-over') event.waitUntil(worker.skipWaiting());
});

worker.addEventListener('fetch', (event) => {
  if (!keeper.isOwn(event.request)) return;
  event.respondWith(keeper.answer(event.request));
  if (event.request.mode === 'navigate') event.waitUntil(keeper.dropOlder());
});
