import AxeBuilder from '@axe-core/playwright';
import { type Download, expect, type Page, test } from '@playwright/test';
import { tabTo } from './keys';
import { begin, openMore, openWorkbench, readPdfOf, statusOf, type } from './workbench';

const openPrint = async (page: Page): Promise<void> => {
  await openWorkbench(page);
  await page.getByRole('tab', { name: 'Print' }).click();
  await expect(page.getByRole('region', { name: 'Pages' }).getByRole('img').first()).toBeVisible();
};

const paper = (page: Page) => page.getByRole('combobox', { name: 'Paper', exact: true });
const inPrinter = (page: Page) => page.getByRole('combobox', { name: 'In the printer' });
const pages = (page: Page) => page.getByRole('region', { name: 'Pages' }).getByRole('img');
const faults = async (page: Page): Promise<readonly string[]> =>
  (await new AxeBuilder({ page }).analyze()).violations.map(
    ({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html.slice(0, 120)).join(' | ')}`,
  );

const downloadBy = async (page: Page, button: string): Promise<Download> => {
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: button, exact: true }).click(),
  ]);
  return download;
};

test('a sheet that is longer than the page comes in tiles, counted alike on screen and in the file', async ({
  page,
}) => {
  await openPrint(page);
  await page.getByRole('checkbox', { name: 'Placing gauge, 12th fret to saddle' }).press('Space');
  const told = page.getByRole('list', { name: 'Sheets over several pages' });
  await expect(told).toHaveText('Placing gauge, 12th fret to saddle: 2 pages, joined by their marks.');
  for (const name of ['A4', 'Letter']) {
    await paper(page).selectOption({ label: name });
    await expect(page.getByText('3 pages', { exact: true })).toBeVisible();
    await expect(pages(page)).toHaveCount(3);
    await expect(pages(page).nth(1)).toContainText('tile A1 of 1 × 2');
    await expect(pages(page).nth(2)).toContainText('tile A2 of 1 × 2');
    expect((await readPdfOf(await downloadBy(page, 'Download PDF'))).pages).toHaveLength(3);
  }

  await openMore(page, 'Your papers and margins');
  await page.getByRole('checkbox', { name: 'Tabloid', exact: true }).press('Space');
  await expect(told).toContainText('Tabloid, which you own, would hold it on one page.');
  await paper(page).selectOption({ label: 'Tabloid' });
  await expect(told).toHaveCount(0);
  await expect(page.getByText('2 pages', { exact: true })).toBeVisible();
  await expect(pages(page)).toHaveCount(2);
});

test('pages for another paper than lies in the printer are held back, with the ways to mend it', async ({ page }) => {
  await openPrint(page);
  await inPrinter(page).selectOption({ label: 'Letter' });
  const caution = page.getByRole('region', { name: 'Paper does not match' });
  await expect(caution).toContainText('Letter is in the printer, but these pages are laid for A4.');
  await expect(caution).toContainText('94.1 %');
  expect(await faults(page)).toEqual([]);

  await test.step('from any station, before anything is downloaded', async () => {
    await page.getByRole('tab', { name: 'Measure' }).click();
    await page.getByRole('button', { name: 'Download PDF' }).click();
    const dialog = page.getByRole('dialog', { name: /the paper does not match/ });
    await expect(dialog).toContainText('Lay them for Letter, or put A4 in the printer.');
    expect(await faults(page)).toEqual([]);
    await page.keyboard.press('Escape');
    await expect(dialog).toHaveCount(0);
    await expect(caution).toBeVisible();
  });

  await test.step('laid for it, they are downloaded at once', async () => {
    await page.getByRole('button', { name: 'Download PDF' }).click();
    const dialog = page.getByRole('dialog', { name: /the paper does not match/ });
    await expect(dialog).toBeVisible();
    const waiting = page.waitForEvent('download');
    await tabTo(page, 'Lay the pages for Letter');
    await page.keyboard.press('Enter');
    // Letter: 8.5 × 11 in, 612 × 792 points.
    expect((await readPdfOf(await waiting)).pages).toEqual([
      { width: expect.closeTo(612, 3), height: expect.closeTo(792, 3) },
    ]);
    await expect(caution).toHaveCount(0);
    await expect(paper(page)).toHaveValue('letter');
  });

  await test.step('or all the same; and the answer counts once', async () => {
    await paper(page).selectOption({ label: 'A4' });
    for (const _ of [1, 2]) {
      await page.getByRole('button', { name: 'Download PDF' }).click();
      const download = await downloadBy(page, 'Download all the same');
      expect((await readPdfOf(download)).pages[0]?.width).toBeCloseTo(595.276, 2);
    }
    await caution.getByRole('button', { name: 'A4 is in the printer now' }).click();
    await expect(caution).toHaveCount(0);
  });
});

test('factors and readings of another paper are named, and mended', async ({ page }) => {
  await openPrint(page);
  // The demo's page on A4 has lines of 180 and 240 mm.
  await type(page, 'Long line across', '179.4');
  await type(page, 'Long line along', '240');
  await type(page, 'Printer', 'Bench laser');
  await page.getByRole('button', { name: 'Keep these factors' }).click();
  await page.getByRole('combobox', { name: 'Print with' }).selectOption({ index: 1 });
  await paper(page).selectOption({ label: 'Letter' });
  const cautions = page.getByRole('region', { name: 'Paper does not match' });
  await expect(cautions.first()).toContainText(
    /Bench laser.*were read on A4: these pages for Letter carry no correction/,
  );
  await expect(cautions.last()).toContainText('they say nothing of Letter');
  await expect(page.getByRole('region', { name: 'Verdict on the print' })).toHaveCount(0);
  await test.step('both ways that a download could be wrong are asked about in one place', async () => {
    await inPrinter(page).selectOption({ label: 'Legal' });
    await page.getByRole('button', { name: 'Download PDF' }).click();
    const dialog = page.getByRole('dialog', { name: /the paper does not match/ });
    await expect(dialog).toContainText('Legal is in the printer');
    await dialog.getByRole('button', { name: 'Letter is in the printer now' }).click();
    await expect(dialog).not.toContainText('Legal is in the printer');
    const waiting = page.waitForEvent('download');
    await dialog.getByRole('button', { name: 'Print without a correction' }).click();
    expect((await readPdfOf(await waiting)).pages[0]?.width).toBeCloseTo(612, 3);
  });
  await expect(cautions).toHaveCount(1);
  await page.getByRole('button', { name: 'Clear the readings' }).click();
  await expect(page.getByRole('textbox', { name: 'Long line across', exact: true })).toHaveValue('');
  await expect(cautions).toHaveCount(0);
});

test('a print that a shop cannot set right keeps its factors only against advice, and says so on the page', async ({
  page,
}) => {
  await openPrint(page);
  await openMore(page, 'Your papers and margins');
  await type(page, 'White at every edge', '12');
  // 12 of white leaves 176 × 253 of A4, so lines of 160 and 240: 2 % short both ways, 1/0.98 = 1.0204.
  await type(page, 'Long line across', '156.8');
  await type(page, 'Long line along', '235.2');
  await expect(page.getByRole('region', { name: 'Verdict on the print' })).toContainText('Reprint');
  await type(page, 'Printer', 'Copy shop');
  const keep = page.getByRole('button', { name: 'Keep them against advice' });
  await expect(keep).toBeDisabled();
  await page.getByRole('checkbox', { name: /^The setting cannot be changed/ }).press('Space');
  await keep.click();
  await expect(statusOf(page)).toContainText('Kept the factors of Copy shop');
  await page.getByRole('combobox', { name: 'Print with' }).selectOption({ index: 1 });
  await expect(pages(page).first()).toContainText('kept against advice');
  await expect(pages(page).first()).toContainText('1.0204 × 1.0204');
  await openMore(page, 'Printers kept on this device');
  await expect(page.getByRole('list', { name: 'Printers' })).toContainText('kept against advice');
});

test('a set of a hundred is looked through page by page before it is downloaded', async ({ page }) => {
  await openPrint(page);
  await page.getByRole('radio', { name: 'Both hands' }).check();
  await type(page, 'Scale lengths', Array.from({ length: 50 }, (_, index) => String(600 + index)).join('; '));
  await page.getByRole('button', { name: 'Look through the set' }).click();
  const shown = (name: RegExp) => page.getByRole('img', { name });
  await expect(shown(/^Page 1 of 103 of the set: Contents/)).toContainText('Wren 14, 600.0 mm, right hand');
  expect(await faults(page)).toEqual([]);
  await page.getByRole('combobox', { name: 'Look at' }).selectOption({ label: 'Wren 14, 625.0 mm, left hand' });
  const one = shown(/of the set: Wren 14, 625\.0 mm, left hand/);
  await expect(one).toContainText('scale 625.0 mm as entered');
  await expect(one).toContainText('left hand');
  await page.getByRole('button', { name: 'Next page' }).press('Enter');
  await expect(shown(/of the set: Wren 14, 626\.0 mm, right hand/)).toContainText('scale 626.0 mm as entered');
  await expect(pages(page)).toHaveCount(1);

  await test.step('what is changed closes it, and a smaller set has as many pages as its file', async () => {
    await type(page, 'Scale lengths', '640; 650');
    await expect(shown(/^Page 1 of 1: Wren 14/)).toBeVisible();
    await page.getByRole('button', { name: 'Look through the set' }).click();
    await expect(shown(/^Page 1 of 5 of the set/)).toBeVisible();
    expect((await readPdfOf(await downloadBy(page, 'Download set'))).pages).toHaveLength(5);
    await page.getByRole('button', { name: 'Close the set' }).click();
    await expect(shown(/^Page 1 of 1: Wren 14/)).toBeVisible();
  });
});

test('the template of a small body shows where to trim its paper', async ({ page }) => {
  await openWorkbench(page);
  await begin(page, 'Soprano ukulele');
  await page.getByRole('tab', { name: 'Draw' }).click();
  await page.getByRole('checkbox', { name: 'Check what lies beneath the top' }).check();
  await type(page, 'Body, across at the bridge', '165');
  await page.getByRole('tab', { name: 'Print' }).click();
  await expect(pages(page).first()).toContainText('body edge: trim');
  await expect(pages(page).first()).toContainText('4 string holes 1.6 mm to the back edge');
  await page.getByRole('button', { name: 'Undo', exact: true }).click();
  await expect(pages(page).first()).not.toContainText('body edge: trim');
});
