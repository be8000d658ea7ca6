/** One file of the build: its address from the app's folder on, and the hash that its bytes must have. */
export interface KeptFile {
  /** '' is the page itself. */
  readonly address: string;
  /** As in HTML's integrity attribute: sha256-… */
  readonly integrity: string;
}

/** What a version of the app keeps, and what it needs of the browser for that. */
export interface KeeperNeeds {
  /** Address of the app's folder; ends in a slash. */
  readonly scope: string;
  /** Changes with any file. */
  readonly version: string;
  readonly files: readonly KeptFile[];
  readonly caches: CacheStorage;
  readonly fetch: (request: Request) => Promise<Response>;
  /** How many windows of the app are open. */
  readonly countWindows: () => Promise<number>;
  /** Whether a newer version is being fetched, or waits for its turn. */
  readonly hasNewer: () => boolean;
}

/** Keeps a whole version of the app on this device, and answers from it. */
export interface FileKeeper {
  /** Fetches every file; one that is missing, or is not of this version, undoes it all and rejects. */
  keepAll(): Promise<void>;
  /** Lets go of older versions, unless a window is open that may still ask for their files. */
  dropOlder(): Promise<void>;
  /** Whether a request can be answered from what is kept: the app's own addresses, read only. */
  isOwn(request: Request): boolean;
  /** The kept file; one of another version where this one has none by that address; else what the network says. */
  answer(request: Request): Promise<Response>;
}

/** A response that came by way of another address may not answer for a page: the same one without that mark. */
const plain = async (response: Response): Promise<Response> =>
  response.redirected ? new Response(await response.blob(), { headers: response.headers }) : response;

/** Works on caches named after the app's folder and version, so that two apps on one host never meet. */
export const fileKeeper = ({
  scope,
  version,
  files,
  caches,
  fetch,
  countWindows,
  hasNewer,
}: KeeperNeeds): FileKeeper => {
  const family = `saddlemark ${scope} `;
  const own = family + version;
  const page = new Set([scope, `${scope}index.html`]);

  return {
    async keepAll() {
      const cache = await caches.open(own);
      const keep = async ({ address, integrity }: KeptFile): Promise<void> => {
        const response = await fetch(new Request(scope + address, { cache: 'no-cache', integrity }));
        if (!response.ok) throw new Error(`${address}: ${response.status}`);
        await cache.put(scope + address, await plain(response));
      };
      try {
        await Promise.all(files.map(keep));
      } catch (error) {
        await caches.delete(own);
        throw error;
      }
    },

    async dropOlder() {
      // Names first: a version that begins to be fetched from here on is not among them.
      const others = (await caches.keys()).filter((name) => name.startsWith(family) && name !== own);
      if (hasNewer() || (await countWindows()) > 0) return;
      await Promise.all(others.map((name) => caches.delete(name)));
    },

    isOwn: ({ method, url }) => method === 'GET' && url.startsWith(scope),

    async answer(request) {
      const { origin, pathname } = new URL(request.url);
      const address = page.has(origin + pathname) ? scope : origin + pathname;
      const cache = await caches.open(own);
      const kept = await cache.match(address, { ignoreVary: true });
      return kept ?? (await caches.match(address, { ignoreVary: true })) ?? fetch(request);
    },
  };
};
