import AxeBuilder from '@axe-core/playwright';
import { expect, type Page, test } from '@playwright/test';
import { openWorkbench, rowsOf, type } from './workbench';

const parts = (page: Page) => page.getByRole('list', { name: 'Parts of the drawing' });
const checks = (page: Page) => page.getByRole('table', { name: 'Design checks' });
const row = (page: Page, name: string) =>
  page
    .getByRole('table', { name: 'Areas' })
    .getByRole('row')
    .filter({ has: page.getByRole('rowheader', { name, exact: true }) })
    .getByRole('cell');

/** A square-cornered bridge 6 × 1 in without pins, a locating hole of 1 mm at each end of its slot. */
const drawPlainBridge = async (page: Page): Promise<void> => {
  await page.getByRole('tab', { name: 'Draw' }).click();
  await page.getByRole('combobox', { name: 'Bridge shape' }).selectOption({ label: 'Rectangular' });
  await type(page, 'Bridge length', '6 in');
  await type(page, 'Bridge width', '1 in');
  await type(page, 'Corner radius', '0');
  await page
    .getByRole('combobox', { name: 'The strings are held by' })
    .selectOption({ label: 'holes at the back edge' });
  await type(page, 'Locating-pin hole', '1');
};

test('finish left under the rim: areas, share, weight, line and check', async ({ page }) => {
  await openWorkbench(page);
  await drawPlainBridge(page);
  // 152.4 × 25.4 = 3870.96 mm², less 2·π/4 = 1.57 mm²; 9.525 mm thick at 870 kg/m³ 32.08 g.
  await expect(row(page, 'Glue area')).toHaveText(['3869', '38.69']);
  expect(await rowsOf(page, 'Areas')).toEqual({
    Footprint: ['3871', '38.71'],
    'Through holes': ['2', '0.02'],
    'Left under the rim': ['0', '0.00'],
    'Glue area': ['3869', '38.69'],
    'Share lost to the rim': ['0.0 %'],
    'Centroid, from the front edge': ['12.7 mm'],
    'Weight as a plain blank': ['32.1 g'],
  });
  await expect(parts(page).getByRole('button', { name: 'Line of the finish' })).toHaveCount(0);
  await expect(checks(page)).not.toContainText('Finish left');

  await test.step('1/8 in costs 28 %', async () => {
    await type(page, 'Finish left under the rim', '1/8 in');
    // 5 3/4 × 3/4 in inside: 2782.25 mm², less the holes; 1088.71 of 3869.39 mm² are lost.
    await expect(row(page, 'Glue area')).toHaveText(['2781', '27.81']);
    await expect(row(page, 'Left under the rim')).toHaveText(['1089', '10.89']);
    await expect(row(page, 'Share lost to the rim')).toHaveText('28.1 %');
    await expect(checks(page).getByRole('row', { name: 'takes 28 % of the glue area' })).toContainText('Look');
    await parts(page).getByRole('button', { name: 'Line of the finish' }).click();
    // 152.4 − 6.35 and 25.4 − 6.35
    await expect(page.locator('.chosen-part')).toContainText(/146\.[01] mm across, 19\.[01] mm along/);
  });

  await test.step('1/32 in is no cause for a look', async () => {
    await type(page, 'Finish left under the rim', '1/32 in');
    await expect(checks(page).getByRole('row', { name: 'takes 7 % of the glue area' })).toContainText('Good');
    await type(page, 'Finish left under the rim, look from', '1/64 in');
    await expect(checks(page).getByRole('row', { name: 'takes 7 % of the glue area' })).toContainText(
      'set by the maker',
    );
  });

  await test.step('in inches, of another wood, and from the other stations', async () => {
    await page.getByRole('radio', { name: 'in', exact: true }).check({ force: true });
    await expect(row(page, 'Footprint')).toHaveText(['6.000']);
    await type(page, 'Density of the wood', '435');
    await expect(row(page, 'Weight as a plain blank')).toHaveText('16.0 g');
    await page.getByRole('tab', { name: 'Measure' }).click();
    await expect(parts(page).getByRole('button', { name: 'Line of the finish' })).toBeVisible();
    await page.getByRole('tab', { name: 'Print' }).click();
    await expect(checks(page)).toContainText('takes 7 % of the glue area');
  });
});

test('the areas of a bridge that cannot be computed say why', async ({ page }) => {
  await openWorkbench(page);
  await drawPlainBridge(page);
  await type(page, 'Corner radius', '15');
  await expect(page.getByRole('tabpanel')).toContainText('Not computed: The corner radius is at most half');
  await expect(row(page, 'Footprint')).toHaveText(['', '']);
});

for (const colorScheme of ['light', 'dark'] as const)
  test(`the areas have no fault that axe finds, ${colorScheme}`, async ({ page }) => {
    await page.emulateMedia({ colorScheme });
    await openWorkbench(page);
    await page.getByRole('tab', { name: 'Draw' }).click();
    await type(page, 'Finish left under the rim', '2');
    await expect(row(page, 'Share lost to the rim')).toContainText('%');
    const { violations } = await new AxeBuilder({ page }).analyze();
    expect(violations.map(({ id }) => id)).toEqual([]);
  });

test('what finds the areas is loaded when Draw is opened, and a failure of it leaves the rest', async ({ page }) => {
  const loaded: string[] = [];
  await page.route(/startAreas/, (route) => {
    loaded.push(route.request().url());
    return route.abort();
  });
  await openWorkbench(page);
  await expect(page.getByRole('button', { name: 'Slot', exact: true })).toBeVisible();
  expect(loaded).toEqual([]);
  await page.getByRole('tab', { name: 'Draw' }).click();
  await expect(page.getByText('The part of the program that finds areas could not be loaded.')).toBeVisible();
  expect(loaded).not.toEqual([]);
  await expect(page.locator('canvas')).toBeVisible();
});
