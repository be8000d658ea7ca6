/** Calls back when the screen's dots to a pixel change (another monitor, browser zoom), until the returned function is called. */
export const watchPixelRatio = (changed: () => void): (() => void) => {
  let query: MediaQueryList;
  const listen = (): void => {
    query = matchMedia(`(resolution: ${window.devicePixelRatio}dppx)`);
    query.addEventListener('change', heard, { once: true });
  };
  const heard = (): void => {
    listen();
    changed();
  };
  listen();
  return () => query.removeEventListener('change', heard);
};
