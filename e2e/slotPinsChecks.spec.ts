import AxeBuilder from '@axe-core/playwright';
import { expect, type Page, test } from '@playwright/test';
import { begin, openMore, openWorkbench, rowsOf, showHundredths, statusOf, type } from './workbench';

const checks = (page: Page) => page.getByRole('table', { name: 'Design checks' });
const check = (page: Page, words: string | RegExp) => checks(page).getByRole('row').filter({ hasText: words });
const parts = (page: Page) => page.getByRole('list', { name: 'Parts of the drawing' });
const box = (page: Page, name: string) => page.getByRole('textbox', { name, exact: true });
const choose = (page: Page, name: string, label: string) =>
  page.getByRole('combobox', { name, exact: true }).selectOption({ label });

const openDraw = async (page: Page, kind: string): Promise<void> => {
  await openWorkbench(page);
  await page.getByRole('tab', { name: 'Draw' }).click();
  await begin(page, kind);
};

test('a check shows its place, proposes its mend, and goes by the maker’s own limit', async ({ page }) => {
  await openDraw(page, 'Steel-string guitar');
  await expect(check(page, 'Pins clear the slot')).toContainText('Good');

  await test.step('pins too near the slot', async () => {
    await type(page, 'Slot to pin row', '4');
    // 4 · cos 2.52° less half of 5.4
    await expect(check(page, 'Pins clear the slot')).toContainText('Look');
    await expect(check(page, 'Pins clear the slot')).toContainText('by 1.3 mm only; 3.0 mm is usual.');
  });

  await test.step('the place is marked and can be chosen from both lists', async () => {
    await check(page, 'Pins clear the slot').getByRole('button', { name: 'Show' }).click();
    const mark = parts(page).getByRole('button', { name: 'Check: pins clear the slot' });
    await expect(mark).toHaveAttribute('aria-pressed', 'true');
  });

  await test.step('one press mends it, one undo takes it back', async () => {
    // (3 + 2.7) / cos 2.52° = 5.7055, on the safe side 5.8
    await check(page, 'Pins clear the slot').getByRole('button', { name: 'Mend: Slot to pin row 5.8 mm' }).click();
    await expect(box(page, 'Slot to pin row')).toHaveValue('5.8');
    await expect(statusOf(page)).toContainText('Slot to pin row 5.8 mm');
    await expect(check(page, 'Pins clear the slot')).toContainText('Good');
    await expect(parts(page).getByRole('button', { name: 'Check: pins clear the slot' })).toHaveCount(0);
    await page.getByRole('button', { name: 'Undo', exact: true }).click();
    await expect(box(page, 'Slot to pin row')).toHaveValue('4.0');
    await expect(check(page, 'Pins clear the slot')).toContainText('Look');
  });

  await test.step('a limit of the maker’s own', async () => {
    await openMore(page, 'Limits of the checks');
    await expect(box(page, 'Wood around a pin hole, least')).toHaveAccessibleDescription(/common practice, no source/);
    await type(page, 'Wood around a pin hole, least', '1');
    await expect(check(page, 'Pins clear the slot')).toContainText('Good');
    await expect(check(page, 'Pins clear the slot')).toContainText('set by the maker');
  });
});

test('twelve pins that would collide in one row are proposed two', async ({ page }) => {
  await openDraw(page, 'Twelve-string guitar');
  await type(page, 'Second pin row behind the first', '0');
  const row = check(page, '12 pin holes in one row');
  await expect(row).toContainText('Look');
  await row.getByRole('button', { name: /^Mend: Two pin rows, \d\.\d mm apart/ }).click();
  await expect(check(page, 'Pin holes clear one another')).toContainText('Good');
  await expect(box(page, 'Second pin row behind the first')).not.toHaveValue('0.0');
});

test('rows on an arc, ramps, string holes', async ({ page }) => {
  await openDraw(page, 'Steel-string guitar');
  await expect(box(page, 'Middle of the row behind its ends')).toHaveCount(0);
  await choose(page, 'Pin row', 'on an arc');
  await type(page, 'Middle of the row behind its ends', '2');
  await page.getByRole('checkbox', { name: 'Mark string ramps' }).check();
  await type(page, 'String ramp, length', '3');
  await expect(statusOf(page)).toContainText('String ramp, length 3.0');

  await choose(page, 'The strings are held by', 'a tie block');
  await expect(parts(page).getByRole('button', { name: 'String hole 6' })).toBeVisible();
  await expect(parts(page).getByRole('button', { name: 'Pin 6', exact: true })).toHaveCount(0);
  await expect(check(page, 'String holes clear one another')).toContainText('Good');
  await choose(page, 'The strings are held by', 'bridge pins');
  await expect(parts(page).getByRole('button', { name: 'Pin 6', exact: true })).toBeVisible();
});

test('an open slot, and what it is cut by after gluing', async ({ page }) => {
  await openDraw(page, 'Classical guitar');
  await showHundredths(page);
  await choose(page, 'Slot run', 'open at both ends');
  await expect(box(page, 'Slot length')).toHaveCount(0);
  await expect(check(page, 'ends of the bridge')).toHaveCount(0);

  await openMore(page, 'Slot cut after gluing, or filled and cut again');
  // Straight, 6 behind the front edge, 2.5 wide, through a bridge of 190 (0.01 within its ends).
  expect(await rowsOf(page, 'Front edge to the walls of the slot')).toEqual({
    'Treble end': ['94.99', '6.00', '8.50'],
    Centreline: ['0.00', '6.00', '8.50'],
    'Bass end': ['94.99', '6.00', '8.50'],
  });
  await page.getByRole('checkbox', { name: 'Fence settings for a router' }).check();
  await type(page, 'Middle of the cutter to the edge of the base', '75');
  await type(page, 'Slot cutter', '2');
  // 75 − 6 − 1, and half a millimetre less for the back wall.
  expect(await rowsOf(page, 'Fence ahead of the front edge')).toEqual({
    'front wall': ['68.00', '68.00'],
    'back wall': ['67.50', '67.50'],
  });
  await type(page, 'Slot cutter', '3');
  await expect(page.getByText('The cutter is wider than the slot.')).toBeVisible();
});

test('free locating pins by their figures, either hand, and the hole in the caul', async ({ page }) => {
  await openDraw(page, 'Classical guitar');
  await choose(page, 'Locating pins in', 'two free points');
  await type(page, 'Locating pin, treble: across', '70');
  await type(page, 'Locating pin, treble: from the front edge', '12');
  const pin = parts(page).getByRole('button', { name: 'Locating pin, treble' });
  await expect(pin).toHaveAttribute('title', /70\.0 mm to the treble side/);
  await page.getByRole('radio', { name: 'Left', exact: true }).check({ force: true });
  await expect(pin).toHaveAttribute('title', /70\.0 mm to the treble side/);
  // 1.5875 + 0.5
  await expect(box(page, 'Clearance in the caul')).toHaveAccessibleDescription(/Hole in the caul 2\.09 mm/);
  await check(page, 'drilled from beneath')
    .getByRole('button', { name: 'Mend: Locating pins in the slot ends' })
    .click();
  await expect(check(page, 'hide under the saddle')).toContainText('Good');
});

for (const colorScheme of ['light', 'dark'] as const)
  test(`checks with marks and mends have no fault that axe finds, ${colorScheme}`, async ({ page }) => {
    await page.emulateMedia({ colorScheme });
    await openDraw(page, 'Steel-string guitar');
    await type(page, 'Slot to pin row', '4');
    await expect(check(page, 'Pins clear the slot').getByRole('button', { name: /^Mend/ })).toBeVisible();
    await openMore(page, 'Limits of the checks');
    await openMore(page, 'Slot cut after gluing, or filled and cut again');
    await page.getByRole('checkbox', { name: 'Fence settings for a router' }).check();
    const { violations } = await new AxeBuilder({ page }).analyze();
    expect(violations.map(({ id }) => id)).toEqual([]);
  });
