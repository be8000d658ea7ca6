import { expect, type Page, test } from '@playwright/test';
import { painted } from './painted';
import { openWorkbench } from './workbench';

const chosen = (page: Page) => page.locator('.chosen-part');

/** Chooses a part by its button, finds where it is painted, and lets go of it again. */
const findPart = async (page: Page, name: string): Promise<{ x: number; y: number }> => {
  const button = page.getByRole('button', { name, exact: true });
  await expect.poll(() => painted(page)).toBeNull();
  await button.click();
  await expect(chosen(page)).toContainText(name);
  await expect.poll(() => painted(page)).not.toBeNull();
  const place = await painted(page);
  await button.click();
  await expect(chosen(page)).toContainText('Point at a part');
  return place ?? { x: 0, y: 0 };
};

for (const dots of [1, 1.25, 2, 3])
  test.describe(`${dots} dots to a pixel`, () => {
    test.use({ deviceScaleFactor: dots });

    test('the canvas fills its place, and a click at a hole chooses that hole', async ({ page }) => {
      await openWorkbench(page);
      for (const name of ['Pin 2', 'Pin 5']) {
        const place = await findPart(page, name);
        await page.mouse.click(place.x, place.y);
        const button = page.getByRole('button', { name, exact: true });
        await expect(button).toHaveAttribute('aria-pressed', 'true');
        await button.click();
      }
      const sizes = await page.locator('canvas').evaluate((canvas: HTMLCanvasElement) => ({
        host: canvas.parentElement?.getBoundingClientRect().width ?? 0,
        shown: canvas.getBoundingClientRect().width,
        dots: canvas.width,
      }));
      expect(Math.abs(sizes.shown - sizes.host)).toBeLessThanOrEqual(1);
      expect(Math.abs(sizes.dots - sizes.host * dots)).toBeLessThanOrEqual(dots);
    });
  });

test('the canvas follows fifty changes of size and never grows by itself', async ({ page }) => {
  await openWorkbench(page);
  for (let index = 0; index < 50; index += 1)
    await page.setViewportSize({ width: 1000 + (index % 7) * 60, height: 700 + (index % 5) * 40 });
  await page.setViewportSize({ width: 1200, height: 800 });
  await expect
    .poll(() =>
      page.locator('canvas').evaluate((canvas) => {
        const host = canvas.parentElement?.getBoundingClientRect();
        const { width, height } = canvas.getBoundingClientRect();
        return Math.max(Math.abs(width - (host?.width ?? 0)), Math.abs(height - (host?.height ?? 0)));
      }),
    )
    .toBeLessThanOrEqual(1);
});

test('the wheel magnifies at the pointer, a drag moves the view, Escape takes the drag back', async ({ page }) => {
  await openWorkbench(page);
  const pin = await findPart(page, 'Pin 1');
  const zoom = page.locator('.zoom');
  const before = await zoom.textContent();
  const button = page.getByRole('button', { name: 'Pin 1', exact: true });
  /** A click there chooses the pin; the button lets go of it again. */
  const expectPinAt = async (x: number, y: number): Promise<void> => {
    await page.mouse.click(x, y);
    await expect(button).toHaveAttribute('aria-pressed', 'true');
    await button.click();
    await expect(button).toHaveAttribute('aria-pressed', 'false');
  };
  const drag = async (): Promise<void> => {
    await page.mouse.move(pin.x, pin.y);
    await page.mouse.down();
    await page.mouse.move(pin.x + 60, pin.y - 40, { steps: 4 });
  };

  await page.mouse.move(pin.x, pin.y);
  await page.mouse.wheel(0, -400);
  await expect(zoom).not.toHaveText(before ?? '');
  await expectPinAt(pin.x, pin.y);

  await drag();
  await page.keyboard.press('Escape');
  await page.mouse.up();
  await expectPinAt(pin.x, pin.y);

  await drag();
  await page.mouse.up();
  await expectPinAt(pin.x + 60, pin.y - 40);

  await page.getByRole('button', { name: 'Whole bridge' }).click();
  await expect(zoom).toHaveText(before ?? '');
});

test('a chosen part leaves no trace in the saved file', async ({ page }) => {
  await openWorkbench(page);
  await page.getByRole('button', { name: 'Slot', exact: true }).click();
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Save', exact: true }).click(),
  ]);
  const { readFile } = await import('node:fs/promises');
  const saved = JSON.parse(await readFile(await download.path(), 'utf8'));
  expect(Object.keys(saved)).toEqual([
    'format',
    'version',
    'id',
    'revision',
    'about',
    'instrument',
    'strings',
    'setup',
    'height',
    'audit',
    'body',
    'dimensions',
    'sheets',
    'doubts',
    'limits',
    'build',
    'compensation',
    'bridge',
    'repair',
  ]);
});
