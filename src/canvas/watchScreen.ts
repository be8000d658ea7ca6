import { watchPixelRatio } from './watchPixelRatio';

/** What may change about the screen behind a drawing. */
export interface ScreenChanges {
  /** The host has another size, or the screen another number of dots to a pixel. */
  resized(): void;
  /** Light or dark changed, or a font came in. */
  restyled(): void;
}

/** Tells of changes until stopped; the size watched is the host's, never the canvas's own. */
export const watchScreen = (
  host: HTMLElement,
  { resized, restyled }: ScreenChanges,
): { scheme(): 'light' | 'dark'; stop(): void } => {
  const stop = new AbortController();
  const { signal } = stop;
  const dark = matchMedia('(prefers-color-scheme: dark)');
  dark.addEventListener('change', restyled, { signal });

  const observer = new ResizeObserver(resized);
  observer.observe(host);
  const stopRatio = watchPixelRatio(resized);

  for (const font of ['16px "DejaVu Sans Condensed"', 'bold 16px "DejaVu Sans Condensed"'])
    document.fonts.load(font).then(
      () => signal.aborted || restyled(),
      () => undefined, // Without the font the drawing is worded in the browser's own.
    );

  return {
    scheme: () => (dark.matches ? 'dark' : 'light'),
    stop: () => {
      stop.abort();
      stopRatio();
      observer.disconnect();
    },
  };
};
