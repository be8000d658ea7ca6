import { expect, type Page, test } from '@playwright/test';
import { chosenNode } from './chosenNode';
import { painted } from './painted';
import { openWorkbench } from './workbench';

/** Lets a full row of frames and the worker's answers pass, until the canvas stays as it is. */
const still = async (page: Page): Promise<void> => {
  const picture = (): Promise<string> => page.evaluate(() => document.querySelector('canvas')?.toDataURL() ?? '');
  let before = '';
  await expect
    .poll(async () => {
      await page.evaluate(
        () =>
          new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(() => requestAnimationFrame(done)))),
      );
      const now = await picture();
      const same = now === before;
      before = now;
      return same;
    })
    .toBe(true);
};

/** Keeps the canvas as it is now in the page. */
const keep = (page: Page): Promise<void> =>
  page.evaluate(() => {
    const canvas = document.querySelector('canvas');
    const pixels = canvas?.getContext('2d')?.getImageData(0, 0, canvas.width, canvas.height).data;
    Object.assign(window, { kept: pixels });
  });

/**
 * How many pixels differ strongly between the canvas now and as it was kept. Edges of lines blend a little otherwise where
 * they are cut off at the side of what is painted anew, so that single pixels may differ; a line or a mark that was left
 * behind is hundreds.
 */
const differing = (page: Page): Promise<number> =>
  page.evaluate(() => {
    const canvas = document.querySelector('canvas');
    const now = canvas?.getContext('2d')?.getImageData(0, 0, canvas.width, canvas.height).data ?? [];
    const { kept } = window as unknown as { kept: Uint8ClampedArray };
    if (kept.length !== now.length) return now.length;
    let count = 0;
    for (let index = 0; index < now.length; index += 4) {
      const off = (channel: number): number => Math.abs((now[index + channel] ?? 0) - (kept[index + channel] ?? 0));
      if (Math.max(off(0), off(1), off(2), off(3)) > 128) count += 1;
    }
    return count;
  });
const FEW = 10;

/** The whole canvas painted anew: a screen that turns dark and light again asks for it. */
const paintAnew = async (page: Page): Promise<void> => {
  await page.emulateMedia({ colorScheme: 'dark' });
  await still(page);
  // The other colours differ all over, so that what is not painted anew shows.
  expect(await differing(page)).toBeGreaterThan(500);
  await page.emulateMedia({ colorScheme: 'light' });
  await still(page);
};

for (const [dots, hand] of [
  [1, 'Right'],
  [1.25, 'Left'],
  [2, 'Right'],
  [3, 'Left'],
] as const)
  test.describe(`${dots} dots to a pixel, ${hand.toLowerCase()} hand`, () => {
    test.use({ deviceScaleFactor: dots });

    test('what a drag leaves on the canvas is what a fresh painting shows', async ({ page }) => {
      await openWorkbench(page);
      if (hand === 'Left') await page.getByRole('radio', { name: 'Left', exact: true }).check();
      await page.getByRole('tab', { name: 'Draw' }).click();
      const rim = page.getByRole('textbox', { name: 'Finish left under the rim', exact: true });
      await rim.fill('1.5');
      await rim.press('Enter');
      await page.getByRole('button', { name: 'Edit the outline freely' }).click();
      await page.getByText(/^Nodes of the outline/).click();

      const follow = async (what: string, at: { x: number; y: number } | null): Promise<void> => {
        if (at === null) throw new Error(`${what} is not painted`);
        await page.mouse.move(at.x, at.y);
        await page.mouse.down();
        for (const [x, y] of [
          [9, 4],
          [-11, 10],
          [3, 17],
        ] as const) {
          await page.mouse.move(at.x + x, at.y + y, { steps: 4 });
          await still(page);
          await keep(page);
          await paintAnew(page);
          expect(await differing(page), what).toBeLessThan(FEW);
        }
        await page.mouse.up();
      };

      await page.getByRole('button', { name: /^Node 3,/ }).click();
      await expect.poll(() => chosenNode(page)).not.toBeNull();
      await still(page);
      await follow('the node', await chosenNode(page));

      await page.getByRole('button', { name: 'Pin 1', exact: true }).click();
      await expect.poll(() => painted(page)).not.toBeNull();
      await still(page);
      await follow('the pin', await painted(page));
    });
  });
