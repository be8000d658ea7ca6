/** Never fulfils; fails when the worker does, for instance because its script did not load. */
export const whenBroken = (worker: Worker): Promise<never> =>
  new Promise((_, reject) => {
    worker.addEventListener('error', (event) => reject(new Error(event.message || 'its script did not load')));
  });
