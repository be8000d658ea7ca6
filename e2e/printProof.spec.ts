import { expect, type Page, test } from '@playwright/test';
import { alertOf, openWorkbench, readPdfOf, type } from './workbench';

const verdictOn = (page: Page) => page.getByRole('region', { name: 'Verdict on the print' });

const openPrint = async (page: Page): Promise<void> => {
  await openWorkbench(page);
  await page.getByRole('tab', { name: 'Print' }).click();
  await expect(page.getByRole('heading', { name: 'Print proof' })).toBeVisible();
};

const readBoth = async (page: Page, across: string, along: string): Promise<void> => {
  await type(page, 'Long line across', across);
  await type(page, 'Long line along', along);
};

// The demo's page is upright on A4: lines of 180 and 240 mm.
test('a print is proved by what a rule says on it', async ({ page }) => {
  await openPrint(page);
  await expect(page.getByText('drawn 180.0 mm', { exact: true })).toBeVisible();
  await expect(page.getByText('drawn 240.0 mm', { exact: true })).toBeVisible();
  const verdict = verdictOn(page);

  await readBoth(page, '180', '240');
  await expect(verdict).toContainText('True');
  await expect(verdict).toContainText('too coarse to tell');
  await page.getByRole('combobox', { name: 'Read with' }).selectOption({ label: 'calliper' });
  await expect(verdict).not.toContainText('Not sure');

  // 0.3 % short across is 0.45 mm on a bridge of 150: 180/179.46 = 1.0030.
  await readBoth(page, '179.46', '240.1');
  await expect(verdict).toContainText('Correct');
  await expect(verdict.getByRole('row', { name: /Factor across/ })).toContainText('1.0030 ± 0.000');
  await type(page, 'Square, top left to bottom right', '141.8');
  await type(page, 'Square, bottom left to top right', '141.05');
  await expect(verdict).toContainText('Reprint');
  await expect(verdict.getByRole('row', { name: /Out of square/ })).toContainText('0.30°, long to the bottom right');
  await type(page, 'Square, top left to bottom right', '');

  await readBoth(page, '175.1', '233.5');
  await expect(verdict).toContainText('Letter page was fitted to A4');
  await readBoth(page, '225', '300');
  await expect(verdict).toContainText('Refuse');
  await expect(verdict).toContainText('remembered');

  const box = page.getByRole('textbox', { name: 'Long line across', exact: true });
  await type(page, 'Long line across', 'abc');
  await expect(box).toHaveAttribute('aria-invalid', 'true');
  await box.press('Escape');
  await expect(box).toHaveValue('225');
});

test('factors are kept by printer and paper, over a reload, and what was read stays on its station', async ({
  page,
}) => {
  await openPrint(page);
  await readBoth(page, '179.46', '240.1');
  const keep = page.getByRole('button', { name: 'Keep these factors' });
  await expect(keep).toBeDisabled();
  await type(page, 'Printer', 'Bench laser');
  await keep.click();
  await expect(page.getByRole('status')).toContainText('Kept the factors of Bench laser');
  await page.getByRole('tab', { name: 'Draw' }).click();
  await page.getByRole('tab', { name: 'Print' }).click();
  await expect(page.getByRole('textbox', { name: 'Long line across', exact: true })).toHaveValue('179.46');

  await page.reload();
  await expect(
    page
      .locator('canvas')
      .or(page.getByRole('region', { name: 'Pages' }))
      .first(),
  ).toBeVisible();
  await page.getByRole('tab', { name: 'Print' }).click();
  await expect(page.getByRole('textbox', { name: 'Long line across', exact: true })).toHaveValue('');
  await page.locator('summary', { hasText: 'Printers kept on this device' }).click();
  const printers = page.getByRole('list', { name: 'Printers' });
  await expect(printers).toContainText('× 1.0030 short side');
  await type(page, 'Printer, A4', 'Front room laser');
  await expect(printers.getByRole('button', { name: 'Delete Front room laser, A4' })).toBeVisible();
  // No profile applies by itself.
  await expect(page.getByText('no print correction (1.000 × 1.000)').first()).toBeAttached();
  await printers.getByRole('button', { name: 'Delete Front room laser, A4' }).click();
  await expect(page.getByText('No printer is kept yet.')).toBeVisible();
  await expect(alertOf(page)).toBeEmpty();
});

test('a correction is printed only once it is chosen, every page says so, and the next print tells what it left', async ({
  page,
}) => {
  await openPrint(page);
  await readBoth(page, '179.46', '240.1');
  await type(page, 'Printer', 'Bench laser');
  await page.getByRole('button', { name: 'Keep these factors' }).click();
  const pages = page.getByRole('region', { name: 'Pages' });
  await expect(pages.getByText('no print correction (1.000 × 1.000)')).toBeAttached();

  // 180/179.46 = 1.00301, 240/240.1 = 0.99958.
  await page.getByRole('combobox', { name: 'Print with' }).selectOption({ index: 1 });
  await expect(pages.getByText('print correction 1.0030 × 0.9996', { exact: true })).toBeAttached();
  await expect(pages.getByText(/for Bench laser, read \d{4}-\d\d-\d\d/)).toBeAttached();
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Download PDF', exact: true }).click(),
  ]);
  const { pages: sizes } = await readPdfOf(download);
  expect(sizes[0]?.width).toBeCloseTo(595.2756, 3);

  await readBoth(page, '180.05', '240');
  await page.getByRole('combobox', { name: 'Read with' }).selectOption({ label: 'calliper' });
  await expect(verdictOn(page)).toContainText('True, once corrected');
  await expect(verdictOn(page)).toContainText('What the correction left');
  await page.getByRole('combobox', { name: 'Print with' }).selectOption({ label: 'no correction' });
  await expect(pages.getByText('no print correction (1.000 × 1.000)')).toBeAttached();
});

test('what paper is worth stands on the station and on the worksheet', async ({ page }) => {
  await openPrint(page);
  await expect(page.getByRole('heading', { name: 'Paper truth' })).toBeVisible();
  await expect(page.getByText(/0\.1 to 0\.2 % along its grain/)).toBeVisible();
  await page.getByRole('checkbox', { name: 'Bench worksheet' }).press('Space');
  await expect(page.getByText('3 pages', { exact: true })).toBeVisible();
  const sheet = page.getByRole('img', { name: /^Page 2 of 3/ });
  await expect(sheet.getByText('1 Neck angle and height pass')).toBeAttached();
  await expect(sheet.getByText(/steel carries length/)).toBeAttached();
});
