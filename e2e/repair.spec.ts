import AxeBuilder from '@axe-core/playwright';
import { expect, type Page, test } from '@playwright/test';
import { tabTo, typeOver } from './keys';
import { openWorkbench, rowsOf, statusOf, type } from './workbench';

const parts = (page: Page) => page.getByRole('list', { name: 'Parts of the drawing' });
const checks = (page: Page) => page.getByRole('table', { name: 'Design checks' });
const was = (page: Page) => page.getByRole('checkbox', { name: 'There was a bridge here before' });

/** A new rectangle 6 × 1 in where the demo's strings want it, and the old one as drawn now. */
const beginRepair = async (page: Page): Promise<void> => {
  await page.getByRole('tab', { name: 'Draw' }).click();
  await page.getByRole('combobox', { name: 'Bridge shape', exact: true }).selectOption({ label: 'Rectangular' });
  await type(page, 'Bridge length', '6 in');
  await type(page, 'Bridge width', '1 in');
  await was(page).check();
};

/** What the box of the old front edge shows, mm. */
const oldFront = async (page: Page): Promise<number> =>
  Number(await page.getByRole('textbox', { name: 'Old front edge, from the nut' }).inputValue());

test('an old bridge by the keyboard alone: what shows of it, and its holes', async ({ page }) => {
  await openWorkbench(page);
  await page.getByRole('tab', { name: 'Measure' }).focus();
  await page.keyboard.press('ArrowRight');
  await expect(page.getByRole('tab', { name: 'Draw' })).toBeFocused();
  await page.keyboard.press('Enter');
  await tabTo(page, 'Bridge shape');
  await page.keyboard.press('Home');
  await expect(page.getByRole('combobox', { name: 'Bridge shape', exact: true })).toHaveValue('rectangular');
  await typeOver(page, 'Bridge length', '6 in');
  await typeOver(page, 'Bridge width', '1 in');
  await tabTo(page, 'There was a bridge here before');
  await page.keyboard.press('Space');
  await expect(statusOf(page)).toHaveText('Repair: a bridge was here before');

  await test.step('as it is drawn now nothing shows', async () => {
    await expect(checks(page)).toContainText('The new bridge covers the old footprint.');
    // 152.4 × 25.4 = 3870.96 mm²
    expect(await rowsOf(page, 'Old footprint')).toEqual({
      'Old footprint': ['3871', '38.71'],
      'Covered by the new bridge': ['3871', '38.71'],
      'Left showing': ['0', '0.00'],
      'New bridge beyond it, finish to clear': ['0', '0.00'],
    });
    await expect(checks(page)).toContainText('a neck that was reset wants another');
  });

  await test.step('2 mm nearer the nut, a strip of 152.4 × 2 mm shows', async () => {
    await typeOver(page, 'Old front edge, from the nut', String((await oldFront(page)) - 2));
    await expect(checks(page)).toContainText('The old footprint shows beside the new bridge over 305 mm².');
    expect(await rowsOf(page, 'Old footprint')).toMatchObject({
      'Left showing': ['305', '3.05'],
      'New bridge beyond it, finish to clear': ['305', '3.05'],
    });
    await expect(parts(page).getByRole('button', { name: 'Old footprint showing' })).toBeVisible();
  });

  await test.step('its side is typed in words', async () => {
    await typeOver(page, 'Old bridge, to the side', '1 bass');
    await expect(page.getByText('1.0 mm to the bass side.')).toBeVisible();
    // 152.4 × 2 and 1 × 23.4
    await expect(checks(page)).toContainText('over 328 mm²');
  });

  await test.step('its holes 2 3/16 in apart, the new pins 2 1/4 in', async () => {
    await tabTo(page, 'Old pin holes');
    await page.keyboard.press('ArrowDown');
    await typeOver(page, 'Old hole spacing, outer', '2 3/16 in');
    await tabTo(page, 'Pin spacing, outer', 'Shift+Tab');
    await page.keyboard.press('Control+A');
    await page.keyboard.type('2 1/4 in');
    await page.keyboard.press('Enter');
    const rows = await rowsOf(page, 'Old holes against new pins, mm');
    expect(Object.entries(rows).map(([name, cells]) => [name, cells[3]])).toEqual([
      ['Pin 1', '0.79'],
      ['Pin 2', '0.48'],
      ['Pin 3', '0.16'],
      ['Pin 4', '0.16'],
      ['Pin 5', '0.48'],
      ['Pin 6', '0.79'],
      ['Largest', '0.79'],
      ['Root mean square', '0.54'],
    ]);
    await expect(checks(page)).toContainText(/Plug and redrill: wherever the bridge goes, an old hole lies 0\.8 mm/);
    await expect(checks(page)).toContainText('they are wider by 1.6 mm.');
    // 2 mm ahead of the new pins, less the slope of the row for 1 mm to the side.
    await expect(page.getByText(/with the bridge \d\.\d\d mm toward the nut/)).toBeVisible();
  });

  await test.step('is taken back by one undo', async () => {
    await page.keyboard.press('Control+Z');
    await expect(checks(page)).not.toContainText('they are wider by');
  });
});

test('a slot that is filled and cut anew', async ({ page }) => {
  await openWorkbench(page);
  await beginRepair(page);
  await page.getByRole('checkbox', { name: 'The bridge stays; its slot is filled and cut anew' }).check();
  await expect(page.getByText(/^Fill strip: .* The new slot lies wholly in the fill\.$/)).toBeVisible();
  await expect(checks(page)).toContainText('The new slot lies in the fill alone');

  const old = page.getByRole('textbox', { name: 'Front edge to old slot' });
  const width = Number(await page.getByRole('textbox', { name: 'Old slot width' }).inputValue());
  await type(page, 'Front edge to old slot', String(Number(await old.inputValue()) + 1));
  await expect(page.getByText(/The new slot lies partly over the fill: /)).toBeVisible();
  const rows = await rowsOf(page, 'New slot over the filled one, mm');
  const [moved, shared, wood] = rows['On the centreline'] ?? [];
  expect([moved, wood]).toEqual(['−1.00', '0.00']);
  // The width along the centreline is a little more than square to the slot.
  expect(Math.abs(Number(shared) - (width - 1))).toBeLessThan(0.02);

  await type(page, 'Front edge to old slot', String(Number(await old.inputValue()) + 5));
  await expect(checks(page)).toContainText(/The new slot clears the filled one by/);
  await page.getByRole('combobox', { name: 'Old slot read from' }).selectOption({ label: 'the nut' });
  await expect(page.getByRole('textbox', { name: 'Nut to old slot' })).toBeVisible();
  await expect(checks(page)).toContainText(/The new slot clears the filled one by/);
});

test('the old bridge from a project file, and new work again', async ({ page }) => {
  await openWorkbench(page);
  await beginRepair(page);
  const [saved] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Save', exact: true }).click(),
  ]);
  await page.getByRole('combobox', { name: 'Bridge shape', exact: true }).selectOption('belly');
  const [chooser] = await Promise.all([
    page.waitForEvent('filechooser'),
    page.getByRole('button', { name: 'Old bridge from a project file' }).click(),
  ]);
  await chooser.setFiles(await saved.path());
  await expect(statusOf(page)).toContainText('Old bridge from');
  await expect(page.getByRole('combobox', { name: 'Old bridge shape' })).toHaveValue('rectangular');
  await expect(page.getByRole('combobox', { name: 'Old pin holes' })).toHaveValue('each');
  await expect(page.getByRole('group', { name: 'Old hole 6' })).toBeVisible();
  await page.getByRole('button', { name: 'Take out old hole 6' }).click();
  await expect(checks(page)).toContainText('Plug and redrill: 5 old holes cannot serve 6 pins one for one.');
  await was(page).uncheck();
  await expect(parts(page).getByRole('button', { name: 'Old bridge' })).toHaveCount(0);
  await expect(checks(page)).not.toContainText('old holes');
});

test('the old outline from a file', async ({ page }) => {
  await openWorkbench(page);
  await beginRepair(page);
  await page.getByRole('button', { name: 'Import the old outline' }).click();
  const dialog = page.getByRole('dialog');
  // 100 × 20 mm, wherever it lies on its sheet.
  const svg =
    '<svg xmlns="http://www.w3.org/2000/svg" width="200mm" height="100mm" viewBox="0 0 200 100"><rect x="30" y="40" width="100" height="20"/></svg>';
  await dialog
    .getByLabel('SVG or DXF file')
    .setInputFiles({ name: 'old.svg', mimeType: 'image/svg+xml', buffer: Buffer.from(svg) });
  const take = dialog.getByRole('button', { name: 'Take this outline' });
  await expect(take).toHaveAttribute('aria-disabled', 'false');
  await take.click();
  await expect(page.getByRole('combobox', { name: 'Old bridge shape' })).toHaveValue('drawn');
  // 2000 mm², all under the new bridge of 3871.
  await expect(checks(page)).toContainText('The new bridge covers the old footprint.');
  expect(await rowsOf(page, 'Old footprint')).toMatchObject({
    'Old footprint': ['2000', '20.00'],
    'New bridge beyond it, finish to clear': ['1871', '18.71'],
  });
});

test('the old bridge lies on the other side for the other hand, and its words stay', async ({ page }) => {
  await openWorkbench(page);
  await beginRepair(page);
  await type(page, 'Old bridge, to the side', '2 bass');
  await parts(page).getByRole('button', { name: 'Old bridge', exact: true }).click();
  await expect(page.locator('.chosen-part')).toContainText('2.0 mm to the bass side');
  await page.getByRole('tab', { name: 'Measure' }).click();
  await page.getByRole('radio', { name: 'Left' }).check({ force: true });
  await expect(page.locator('.chosen-part')).toContainText('2.0 mm to the bass side');
});

for (const colorScheme of ['light', 'dark'] as const)
  test(`the repair has no fault that axe finds, ${colorScheme}`, async ({ page }) => {
    await page.emulateMedia({ colorScheme });
    await openWorkbench(page);
    await beginRepair(page);
    await page.getByRole('combobox', { name: 'Old pin holes' }).selectOption({ label: 'each by its own place' });
    await page.getByRole('checkbox', { name: 'The bridge stays; its slot is filled and cut anew' }).check();
    await expect(page.getByText(/^Fill strip: /)).toBeVisible();
    const { violations } = await new AxeBuilder({ page }).analyze();
    expect(violations.map(({ id }) => id)).toEqual([]);
  });
