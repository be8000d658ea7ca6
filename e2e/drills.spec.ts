import AxeBuilder from '@axe-core/playwright';
import { expect, type Page, test } from '@playwright/test';
import { tabTo, typeOver } from './keys';
import { openWorkbench, type } from './workbench';

const box = (page: Page, name: string) => page.getByRole('textbox', { name, exact: true });

/** What stands under a box is also read out with it. */
const expectNote = async (page: Page, name: string, note: string | RegExp): Promise<void> => {
  await expect(page.locator('.field', { has: box(page, name) }).locator('.field-note')).toHaveText(note);
  await expect(box(page, name)).toHaveAccessibleDescription(
    typeof note === 'string' ? new RegExp(`${note.replace(/[()+./]/g, '\\$&').replaceAll(' ', '\\s')}$`) : note,
  );
};

/** A new instrument has a pilot hole of 3/16 in, locating pins of 1/16 in and a 3° pin of 5.40 mm. */
const openDraw = async (page: Page): Promise<void> => {
  await openWorkbench(page);
  await page.getByRole('tab', { name: 'Draw' }).click();
  await page.getByRole('combobox', { name: 'Bridge shape' }).selectOption({ label: 'Rectangular' });
};

// Drill diameters: test/reference/drills.ts; differences and depths by hand.
test('drills beside the holes, and how deep the reamer goes, follow what is typed', async ({ page }) => {
  await openDraw(page);
  await expectNote(page, 'Pin pilot hole', 'Nearest drills: 3/16 in (0.00), #12 (+0.04), 4.8 mm (+0.04)');
  await expectNote(page, 'Locating-pin hole', 'Nearest drills: 1/16 in (0.00), #52 (+0.03), 1.6 mm (+0.01)');
  await expectNote(page, 'Pin under its head', 'Nearest drills: 7/32 in (+0.16), #3 (+0.01), 5.4 mm (0.00)');
  // 0.6375 mm · 19.094
  await expectNote(page, 'Reamer taper', /reads 5\.40 mm: the reamer goes 12\.2 mm deeper .* 1\.9 mm of depth at 3°/);

  await test.step('another pilot hole, another pin, another reamer', async () => {
    await type(page, 'Pin pilot hole', '5');
    await expectNote(page, 'Pin pilot hole', 'Nearest drills: 13/64 in (+0.16), #9 (−0.02), 5 mm (0.00)');
    await expectNote(page, 'Reamer taper', /the reamer goes 7\.6 mm deeper/); // 0.4 · 19.094
    await type(page, 'Pin under its head', '5.35');
    await expectNote(page, 'Reamer taper', /reads 5\.35 mm: the reamer goes 6\.7 mm deeper/); // 0.35 · 19.094
    await type(page, 'Reamer taper', '1:20');
    await expect(box(page, 'Reamer taper')).toHaveValue('2.864');
    // 0.35 · 20, 0.1 · 20
    await expectNote(page, 'Reamer taper', /goes 7\.0 mm deeper .* 2\.0 mm of depth at 2\.86° \(1:20\.0\)/);
    await page.getByRole('button', { name: 'Undo', exact: true }).click();
    await expect(box(page, 'Reamer taper')).toHaveValue('3');
  });

  await test.step('what cannot be is told', async () => {
    await type(page, 'Pin pilot hole', '5.5');
    await expectNote(page, 'Reamer taper', /nothing is left to ream.*Drill a smaller pilot hole\.$/);
    await type(page, 'Reamer taper', '1:x');
    await expect(box(page, 'Reamer taper')).toHaveAccessibleDescription(/“1:x” is not a number/);
    await box(page, 'Reamer taper').press('Escape');
    await type(page, 'Reamer taper', '40');
    await expect(box(page, 'Reamer taper')).toHaveAccessibleDescription(/Reamer taper goes from 0\.5 to 10/);
    await box(page, 'Reamer taper').press('Escape');
  });

  await test.step('in thousandths for a maker in inches', async () => {
    await page.getByRole('radio', { name: 'in', exact: true }).check({ force: true });
    await type(page, 'Pin pilot hole', '3/16');
    await expectNote(page, 'Pin pilot hole', 'Nearest drills, thousandths: 3/16 in (0.0), #12 (+1.5), 4.8 mm (+1.5)');
    // 5.35 − 4.7625 = 0.5875 mm; · 19.094 = 11.218 mm
    await expectNote(page, 'Reamer taper', /reads 0\.211″: the reamer goes 0\.442″ deeper .* 0\.005″ on the diameter/);
  });

  await test.step('a bridge without pins has string holes and locating pins', async () => {
    await page.getByRole('combobox', { name: 'The strings are held by' }).selectOption({ label: 'a tie block' });
    await expect(box(page, 'Reamer taper')).toHaveCount(0);
    // String hole, locating pin, and its hole in the caul.
    await expect(page.locator('.field-note', { hasText: 'Nearest drills' })).toHaveCount(3);
  });
});

test('the sizes say where they come from', async ({ page }) => {
  await openDraw(page);
  await page.getByText('Where these figures come from').click();
  const sources = page.locator('.sources');
  await expect(sources).toContainText('ASME B94.11M, from memory');
  await expect(sources).toContainText('guitaringpassionately.com, bridge pin sizing');
});

test('pin and reamer by keyboard alone', async ({ page }) => {
  await openDraw(page);
  await typeOver(page, 'Pin pilot hole', '4.5');
  await typeOver(page, 'Pin under its head', '5.5');
  await typeOver(page, 'Reamer taper', '5');
  // 1 · 11.45188
  await expectNote(page, 'Reamer taper', /the reamer goes 11\.5 mm deeper .* 1\.1 mm of depth at 5° \(1:11\.5\)/);
  await tabTo(page, 'Locating-pin hole');
  await expect(page.locator('.help-strip')).toBeVisible();
});

for (const colorScheme of ['light', 'dark'] as const)
  test(`the drills have no fault that axe finds, ${colorScheme}`, async ({ page }) => {
    await page.emulateMedia({ colorScheme });
    await openDraw(page);
    await expect(page.locator('.field-note', { hasText: 'Nearest drills' })).toHaveCount(4);
    const { violations } = await new AxeBuilder({ page }).analyze();
    expect(violations.map(({ id }) => id)).toEqual([]);
  });
