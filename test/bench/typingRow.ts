import type { Page } from 'playwright';
import { type Row, row } from './row';
import { percentile } from './statistics';

const KEYS = ['2', '.', '5', 'Control+A'];
const TIMES = 20;

/** Gaps between frames, ms, while figures are typed into a field of Measure and taken back. */
export async function typeFigures(page: Page): Promise<readonly number[]> {
  await page.getByRole('textbox', { name: 'Action at 12th fret, bass', exact: true }).click();
  const gaps = page.evaluate(
    (milliseconds) =>
      new Promise<number[]>((resolve) => {
        const found: number[] = [];
        const began = performance.now();
        let last = began;
        const frame = (now: number): void => {
          found.push(now - last);
          last = now;
          if (now - began < milliseconds) requestAnimationFrame(frame);
          else resolve(found.slice(1));
        };
        requestAnimationFrame(frame);
      }),
    2000,
  );
  for (let key = 0; key < TIMES * KEYS.length; key += 1) await page.keyboard.press(KEYS[key % KEYS.length] ?? '');
  return gaps;
}

/** Whether typing ever holds up a frame, at the two rates. */
export const typingRow = (gaps: readonly (readonly number[])[]): Row =>
  row(
    'gap between frames while typing, p95',
    'ms',
    gaps.map((each) => percentile(each, 0.95)),
    [17, 20],
    `largest ${gaps.map((each) => Math.max(...each).toFixed(1)).join(' / ')}`,
  );
