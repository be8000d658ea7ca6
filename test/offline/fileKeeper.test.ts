import { describe, expect, it } from 'vitest';
import { fileKeeper, type KeeperNeeds } from '../../src/main/offline/fileKeeper';
import { memoryCaches } from './memoryCaches';

// What must hold is worked out here from what the browser promises of service workers (W3C, Service Workers, 4.3 and 5.4).

const SCOPE = 'https://bench.example/apps/saddlemark/';

/** A host that holds these files, by their addresses after the scope, and notes what it was asked. */
const host = (files: Readonly<Record<string, string>>) => {
  const asked: Request[] = [];
  const fetch = async (request: Request): Promise<Response> => {
    asked.push(request);
    const text = files[request.url.slice(SCOPE.length)];
    return text === undefined ? new Response('none', { status: 404 }) : new Response(text);
  };
  return { asked, fetch };
};

const V1 = { '': 'page 1', 'assets/draw-1.js': 'draw 1' };
const V2 = { '': 'page 2', 'assets/draw-2.js': 'draw 2' };

const keeperOf = (version: string, files: Readonly<Record<string, string>>, needs: Partial<KeeperNeeds>) =>
  fileKeeper({
    scope: SCOPE,
    version,
    files: Object.keys(files).map((address) => ({ address, integrity: 'sha256-x' })),
    caches: memoryCaches().caches,
    fetch: host(files).fetch,
    countWindows: async () => 1,
    hasNewer: () => false,
    ...needs,
  });

const gone = async (): Promise<Response> => {
  throw new TypeError('no network');
};

const textOf = async (answer: Promise<Response>): Promise<string> => (await answer).text();

describe('keeping a version', () => {
  it('asks for every file past what the browser keeps by itself, and for its hash', async () => {
    const { asked, fetch } = host(V1);
    await keeperOf('one', V1, { fetch }).keepAll();
    expect(asked.map(({ url, cache, integrity }) => [url, cache, integrity])).toEqual([
      [SCOPE, 'no-cache', 'sha256-x'],
      [`${SCOPE}assets/draw-1.js`, 'no-cache', 'sha256-x'],
    ]);
  });

  it('answers without a network: the page by both of its names, a file whatever is asked of it', async () => {
    const { caches } = memoryCaches();
    await keeperOf('one', V1, { caches }).keepAll();
    const offline = keeperOf('one', V1, { caches, fetch: gone });
    for (const address of ['', 'index.html', '?from=home', '#measure'])
      expect(await textOf(offline.answer(new Request(SCOPE + address)))).toBe('page 1');
    expect(await textOf(offline.answer(new Request(`${SCOPE}assets/draw-1.js?again`)))).toBe('draw 1');
    await expect(offline.answer(new Request(`${SCOPE}other.html`))).rejects.toThrow('no network');
  });

  it('keeps nothing when one file is missing, and leaves the version before as it was', async () => {
    const { caches, names } = memoryCaches();
    await keeperOf('one', V1, { caches }).keepAll();
    const broken = keeperOf('two', { ...V2, 'assets/lost.js': '' }, { caches, fetch: host(V2).fetch });
    await expect(broken.keepAll()).rejects.toThrow('assets/lost.js: 404');
    expect(names()).toEqual([`saddlemark ${SCOPE} one`]);
  });
});

describe('two versions', () => {
  const both = async () => {
    const memory = memoryCaches();
    await keeperOf('one', V1, memory).keepAll();
    await keeperOf('two', V2, memory).keepAll();
    await memory.caches.open('saddlemark https://bench.example/apps/other/ one');
    await memory.caches.open('of another program');
    return memory;
  };

  it('a page of the older one still gets its parts from the newer one', async () => {
    const keeper = keeperOf('two', V2, { ...(await both()), fetch: gone });
    expect(await textOf(keeper.answer(new Request(`${SCOPE}assets/draw-1.js`)))).toBe('draw 1');
    expect(await textOf(keeper.answer(new Request(SCOPE)))).toBe('page 2');
  });

  it('the older one stays while a window is open, and goes when none is; what others keep stays', async () => {
    const { caches, names } = await both();
    await keeperOf('two', V2, { caches, countWindows: async () => 1 }).dropOlder();
    expect(names()).toHaveLength(4);
    await keeperOf('two', V2, { caches, countWindows: async () => 0 }).dropOlder();
    expect(names()).toEqual([
      `saddlemark ${SCOPE} two`,
      'saddlemark https://bench.example/apps/other/ one',
      'of another program',
    ]);
  });

  it('the older one drops nothing of a newer one that waits', async () => {
    const { caches, names } = await both();
    await keeperOf('one', V1, { caches, countWindows: async () => 0, hasNewer: () => true }).dropOlder();
    expect(names()).toHaveLength(4);
  });
});

describe('what is answered', () => {
  it.each([
    [new Request(`${SCOPE}assets/draw-1.js`), true],
    [new Request(SCOPE, { method: 'POST' }), false],
    [new Request('https://bench.example/apps/'), false],
    [new Request('https://elsewhere.example/apps/saddlemark/'), false],
  ])('%#', (request, own) => {
    expect(keeperOf('one', V1, {}).isOwn(request)).toBe(own);
  });
});
