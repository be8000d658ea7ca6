import { expect, type Page, test } from '@playwright/test';
import { painted } from './painted';
import { openWorkbench, statusOf } from './workbench';

/** Where a part is painted on screen: it is chosen by its button, found by the colour of a chosen part, and let go again. */
const placeOf = async (page: Page, name: string): Promise<{ x: number; y: number }> => {
  const button = page.getByRole('button', { name, exact: true });
  await expect.poll(() => painted(page)).toBeNull();
  await button.click();
  await expect.poll(() => painted(page)).not.toBeNull();
  const place = await painted(page);
  await button.click();
  await expect(button).toHaveAttribute('aria-pressed', 'false');
  if (place === null) throw new Error(`${name} is not painted`);
  return place;
};

const openDraw = async (page: Page, hand: 'Right' | 'Left'): Promise<void> => {
  await openWorkbench(page);
  if (hand === 'Left') await page.getByRole('radio', { name: 'Left', exact: true }).check();
  await page.getByRole('tab', { name: 'Draw' }).click();
  await expect(page.getByRole('button', { name: 'Distance between', exact: true })).toBeVisible();
};

const figureOf = (page: Page, name: string): Promise<number> =>
  page
    .getByRole('textbox', { name, exact: true })
    .inputValue()
    .then((text) => Number(text));

/** One or two fingers on the glass, by the browser's own touch input. */
const fingers = async (page: Page) => {
  const session = await page.context().newCDPSession(page);
  const send = (
    type: 'touchStart' | 'touchMove' | 'touchEnd' | 'touchCancel',
    points: readonly (readonly [number, number])[],
  ) =>
    session.send('Input.dispatchTouchEvent', {
      type,
      touchPoints: points.map(([x, y], id) => ({ x: Math.round(x), y: Math.round(y), id })),
    });
  return send;
};

const undo = (page: Page) => page.getByRole('button', { name: 'Undo', exact: true });

for (const dots of [1, 1.25, 2, 3])
  for (const hand of ['Right', 'Left'] as const)
    test.describe(`${dots} dots to a pixel, ${hand.toLowerCase()} hand`, () => {
      test.use({ deviceScaleFactor: dots });

      test('what is pressed is chosen, what is chosen is dragged, and a broken off drag leaves nothing', async ({
        page,
      }) => {
        await openDraw(page, hand);
        const pin = await placeOf(page, 'Pin 1');
        const middle = await placeOf(page, 'Slot');
        // The first pin stands on the treble side: to the right of the slot's middle for a right hand.
        expect(Math.sign(pin.x - middle.x)).toBe(hand === 'Right' ? 1 : -1);
        await page.mouse.click(pin.x, pin.y);
        await expect(page.getByRole('button', { name: 'Pin 1', exact: true })).toHaveAttribute('aria-pressed', 'true');

        const before = await figureOf(page, 'Pin spacing, outer');
        const outward = hand === 'Right' ? 1 : -1;
        const drag = async (): Promise<void> => {
          await page.mouse.move(pin.x, pin.y);
          await page.mouse.down();
          await page.keyboard.down('Alt');
          await page.mouse.move(pin.x + 30 * outward, pin.y, { steps: 5 });
          await page.keyboard.up('Alt');
        };
        await test.step('Escape', async () => {
          await drag();
          await page.keyboard.press('Escape');
          await page.mouse.up();
        });
        await test.step('a cancelled pointer', async () => {
          await drag();
          await page.locator('canvas').dispatchEvent('pointercancel', { pointerId: 1 });
          await page.mouse.up();
        });
        await test.step('a window that loses the focus', async () => {
          await drag();
          await page.evaluate(() => window.dispatchEvent(new Event('blur')));
          await page.mouse.up();
        });
        expect(await figureOf(page, 'Pin spacing, outer')).toBe(before);
        await expect(undo(page)).toHaveAttribute('title', hand === 'Left' ? 'Undo: Hand: left' : 'Nothing to undo');
        await expect.poll(() => painted(page)).not.toBeNull();
        const still = await painted(page);
        expect(Math.abs((still?.x ?? 0) - pin.x)).toBeLessThanOrEqual(1);

        await test.step('the next drag is a fresh one, and one step', async () => {
          await drag();
          await page.mouse.up();
          await expect(statusOf(page)).toHaveText('Move pin 1 and its row');
          // 30 px at the scale of the view, both ends of the row.
          const zoom = Number.parseInt((await page.locator('.zoom').textContent()) ?? '', 10) / 100;
          const grown = (await figureOf(page, 'Pin spacing, outer')) - before;
          expect(grown).toBeGreaterThan(0);
          expect(Math.abs(grown - (2 * 30) / (zoom * (96 / 25.4)))).toBeLessThan(0.4);
          await undo(page).click();
          expect(await figureOf(page, 'Pin spacing, outer')).toBe(before);
        });
      });
    });

test.describe('by touch', () => {
  test.use({ hasTouch: true, viewport: { width: 420, height: 800 } });

  test('a finger on the drawing never scrolls the page; a second one pinches and takes the drag back', async ({
    page,
  }) => {
    await openDraw(page, 'Right');
    await page.locator('.drawing-host').scrollIntoViewIfNeeded();
    const pin = await placeOf(page, 'Pin 1');
    const touch = await fingers(page);
    const scrolled = () =>
      page.evaluate(() => [document.scrollingElement?.scrollTop, document.querySelector('main')?.scrollTop]);
    const at = await scrolled();
    const before = await figureOf(page, 'Pin spacing, outer');
    const zoom = await page.locator('.zoom').textContent();

    await touch('touchStart', [[pin.x, pin.y]]);
    await touch('touchEnd', []);
    await expect(page.getByRole('button', { name: 'Pin 1', exact: true })).toHaveAttribute('aria-pressed', 'true');

    await touch('touchStart', [[pin.x, pin.y]]);
    for (const step of [10, 20, 30]) await touch('touchMove', [[pin.x + step, pin.y + step]]);
    await touch('touchStart', [
      [pin.x + 30, pin.y + 30],
      [pin.x - 70, pin.y + 30],
    ]);
    for (const step of [10, 20, 30])
      await touch('touchMove', [
        [pin.x + 30 + step, pin.y + 30],
        [pin.x - 70 - step, pin.y + 30],
      ]);
    await touch('touchEnd', []);
    await expect(page.locator('.zoom')).not.toHaveText(zoom ?? '');
    expect(await figureOf(page, 'Pin spacing, outer')).toBe(before);
    await expect(undo(page)).toHaveAttribute('title', 'Nothing to undo');
    expect(await scrolled()).toEqual(at);
  });

  test('a finger that the browser takes away leaves everything as it was', async ({ page }) => {
    await openDraw(page, 'Right');
    await page.locator('.drawing-host').scrollIntoViewIfNeeded();
    await page.getByRole('button', { name: 'Footprint', exact: true }).click();
    await expect.poll(() => painted(page)).not.toBeNull();
    const middle = (await painted(page)) ?? { x: 0, y: 0 };
    const before = await figureOf(page, 'Front edge to slot');
    const touch = await fingers(page);
    await touch('touchStart', [[middle.x - 60, middle.y]]);
    for (const step of [10, 20, 30]) await touch('touchMove', [[middle.x - 60, middle.y + step]]);
    await touch('touchCancel', []);
    await expect(undo(page)).toHaveAttribute('title', 'Nothing to undo');
    expect(await figureOf(page, 'Front edge to slot')).toBe(before);
  });
});

test('Tab goes in and out of the drawing, and Escape leaves it', async ({ page }) => {
  await openDraw(page, 'Right');
  const view = page.getByRole('group', { name: 'View of the bridge' });
  await view.focus();
  await page.keyboard.press('Tab');
  await expect(page.getByRole('button', { name: 'Whole bridge' })).toBeFocused();
  await page.keyboard.press('Shift+Tab');
  await expect(view).toBeFocused();
  await page.keyboard.press('Escape');
  await expect(view).not.toBeFocused();
});

test('the view stays as large as its place through changes of size while a drag is under way', async ({ page }) => {
  await openDraw(page, 'Right');
  await page.getByRole('button', { name: 'Footprint', exact: true }).click();
  await expect.poll(() => painted(page)).not.toBeNull();
  const middle = (await painted(page)) ?? { x: 0, y: 0 };
  await page.mouse.move(middle.x - 150, middle.y - 10);
  await page.mouse.down();
  await page.mouse.move(middle.x - 150, middle.y + 20, { steps: 4 });
  for (const width of [1300, 1200, 1350]) await page.setViewportSize({ width, height: 820 });
  await page.keyboard.press('Escape');
  await page.mouse.up();
  await expect(undo(page)).toHaveAttribute('title', 'Nothing to undo');
  const off = await page.locator('canvas').evaluate((canvas) => {
    const host = canvas.parentElement?.getBoundingClientRect();
    const { width, height } = canvas.getBoundingClientRect();
    return Math.max(Math.abs(width - (host?.width ?? 0)), Math.abs(height - (host?.height ?? 0)));
  });
  expect(off).toBeLessThanOrEqual(1);
});

test('the drawing follows when the screen turns dark and light again', async ({ page }) => {
  await openWorkbench(page);
  const picture = (): Promise<string> => page.evaluate(() => document.querySelector('canvas')?.toDataURL() ?? '');
  const light = await picture();
  await page.emulateMedia({ colorScheme: 'dark' });
  await expect.poll(picture).not.toBe(light);
  await page.emulateMedia({ colorScheme: 'light' });
  await expect.poll(picture).toBe(light);
});
