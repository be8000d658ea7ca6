import AxeBuilder from '@axe-core/playwright';
import { expect, type Page, test } from '@playwright/test';
import { openWorkbench, rowsOf, type } from './workbench';

const checks = (page: Page) => page.getByRole('table', { name: 'Design checks' });
const dialog = (page: Page) => page.getByRole('dialog', { name: 'Side view and saddle' });

/** The demo's bridge, whose sole is to be fitted, on Draw. */
const fitSole = async (page: Page): Promise<void> => {
  await openWorkbench(page);
  await page.getByRole('tab', { name: 'Draw' }).click();
  await page.getByRole('checkbox', { name: 'Fit the sole to the top' }).check();
  await expect(page.getByRole('table', { name: 'Gaps under the sole' })).toBeVisible();
};

test('a flat sole on a dome: gaps, advice, checks, and the radius typed in feet', async ({ page }) => {
  await fitSole(page);
  await type(page, 'Bridge length', '6 in');
  await type(page, 'Dome of the top, along the strings', '');
  await type(page, 'Centreline to the wings', '38.1');
  // 76.2²/(2·8534.4) = 0.340 and a quarter of it half way, from the trade’s table for 28 ft.
  expect(await rowsOf(page, 'Gaps under the sole')).toEqual({
    'Bass tip': ['0.34', '0.00'],
    'Bass wing': ['0.09', '0.26'],
    Centre: ['0.00', '0.34'],
    'Treble wing': ['0.09', '0.26'],
    'Treble tip': ['0.34', '0.00'],
    'Front and back edge': ['0.00', ''],
  });
  await expect(page.getByText('The sole rests on its centre and rocks')).toBeVisible();
  await expect(checks(page).getByRole('row', { name: 'Gap of 0.34 mm' })).toContainText('Look');

  await test.step('25 ft is understood and shown', async () => {
    await type(page, 'Dome of the top, across the instrument', '25 ft');
    await expect(page.getByRole('textbox', { name: 'Dome of the top, across the instrument' })).toHaveValue('7620.0');
    await expect(checks(page).getByRole('row', { name: 'Gap of 0.38 mm' })).toBeVisible();
  });

  await test.step('a sole of the same hollow lies on it all over', async () => {
    await type(page, 'Hollow of the sole, along its length', '25 ft');
    await expect(page.getByText('The sole lies on the top all over.')).toBeVisible();
    await expect(checks(page).getByRole('row', { name: 'Gap of 0.00 mm (0.000 in) under the wings' })).toContainText(
      'Good',
    );
  });

  await test.step('sloped sides shrink the footprint', async () => {
    await type(page, 'Slope of the sides', '10');
    await type(page, 'To sand off the sole, all over', '1');
    // 2 · 1 · tan 10° = 0.353
    await expect(page.getByText('cost 0.35 of the length and 0.35 of the width')).toBeVisible();
  });

  await test.step('as read with feeler gauges', async () => {
    await type(page, 'Hollow of the sole, along its length', '');
    await page.getByRole('combobox', { name: 'The top under the bridge' }).selectOption('gaps');
    await type(page, 'Gap read at the centre', '0.4');
    await type(page, 'Gap read at the bass wing', '0.2');
    await type(page, 'Gap read at the treble wing', '0.2');
    await expect(page.getByText('The sole stands on its wings, with a gap between them.')).toBeVisible();
  });

  await test.step('taken out again, and undone', async () => {
    await page.getByRole('checkbox', { name: 'Fit the sole to the top' }).uncheck();
    await expect(page.getByRole('table', { name: 'Gaps under the sole' })).toHaveCount(0);
    await page.getByRole('button', { name: 'Undo' }).click();
    await expect(page.getByRole('textbox', { name: 'Gap read at the centre' })).toHaveValue('0.4');
  });
});

test('break angle and wood under the slot are checked before the straightedge is read', async ({ page }) => {
  await openWorkbench(page);
  await expect(checks(page)).toContainText('Break angle of the treble E4 string');
  await expect(checks(page)).toContainText('Straightedge not read: 1.0 mm over the bridge is taken.');
  // 9.525 − 6.5
  await expect(checks(page).getByRole('row', { name: 'Wood under the slot 3.0 mm' })).toContainText('Good');
  await type(page, 'Slot depth', '8');
  await expect(checks(page).getByRole('row', { name: 'Wood under the slot 1.5 mm' })).toContainText('Wrong');
  await type(page, 'Straightedge to bridge top', '0.5');
  await expect(checks(page)).not.toContainText('Straightedge not read');
});

test('the side view beside its fields: a figure leads to its field, keys alone work', async ({ page }) => {
  await fitSole(page);
  const open = page.getByRole('button', { name: 'Side view and saddle …' });
  await open.focus();
  await page.keyboard.press('Enter');
  await expect(dialog(page)).toBeVisible();
  for (const name of [
    /^Section along the centreline\. Bridge 9\.5 mm thick/,
    /^Sole and top, seen from the tail\./,
    /^Saddle blank\. 76\.0 mm long/,
  ])
    await expect(dialog(page).getByRole('img', { name })).toBeVisible();

  await test.step('a press on a figure', async () => {
    await dialog(page).getByTitle('Change this figure').first().click();
    const field = await page.evaluate(() => document.activeElement?.getAttribute('data-path') ?? '');
    expect(field).not.toBe('');
  });

  await test.step('a figure typed beside it is drawn', async () => {
    const box = dialog(page).getByRole('textbox', { name: 'Bridge thickness' });
    await box.fill('10.5');
    await box.press('Enter');
    await expect(dialog(page).getByRole('img', { name: /Bridge 10\.5 mm thick/ })).toBeVisible();
  });

  await test.step('the saddle by string', async () => {
    const rows = await rowsOf(page, 'Saddle by string');
    expect(Object.keys(rows)).toHaveLength(6);
    for (const [floor = '', bridge = ''] of Object.values(rows))
      expect(Math.abs(Number(floor) - Number(bridge) - 6.5)).toBeLessThan(0.11);
  });

  await test.step('along a string', async () => {
    await dialog(page).getByRole('combobox', { name: 'Section along' }).selectOption({ index: 6 });
    await expect(dialog(page).getByRole('img', { name: /^Section along string 6/ })).toBeVisible();
  });

  await page.keyboard.press('Escape');
  await expect(dialog(page)).toHaveCount(0);
  await expect(open).toBeFocused();
});

for (const colorScheme of ['light', 'dark'] as const)
  test(`sole and side have no fault that axe finds, ${colorScheme}`, async ({ page }) => {
    await page.emulateMedia({ colorScheme });
    await fitSole(page);
    const panel = await new AxeBuilder({ page }).analyze();
    expect(panel.violations.map(({ id }) => id)).toEqual([]);
    await page.getByRole('button', { name: 'Side view and saddle …' }).click();
    await expect(dialog(page)).toBeVisible();
    const large = await new AxeBuilder({ page }).analyze();
    expect(large.violations.map(({ id }) => id)).toEqual([]);
  });
