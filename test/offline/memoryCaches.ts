/** What of the browser's CacheStorage the app uses, in memory: named caches that match by address. */
export const memoryCaches = (): { readonly caches: CacheStorage; readonly names: () => readonly string[] } => {
  const stores = new Map<string, Map<string, Response>>();
  const addressOf = (request: RequestInfo | URL): string =>
    request instanceof Request ? request.url : String(request);
  const storeOf = (name: string): Map<string, Response> => {
    const store = stores.get(name) ?? new Map<string, Response>();
    stores.set(name, store);
    return store;
  };
  const caches = {
    open: async (name: string) => {
      const store = storeOf(name);
      return {
        put: async (request: RequestInfo, response: Response) => void store.set(addressOf(request), response),
        match: async (request: RequestInfo) => store.get(addressOf(request))?.clone(),
      };
    },
    match: async (request: RequestInfo) =>
      [...stores.values()]
        .map((store) => store.get(addressOf(request)))
        .find((found) => found !== undefined)
        ?.clone(),
    keys: async () => [...stores.keys()],
    delete: async (name: string) => stores.delete(name),
  };
  return { caches: caches as unknown as CacheStorage, names: () => [...stores.keys()] };
};
