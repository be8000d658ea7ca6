import { readFile } from 'node:fs/promises';
import { type Download, expect, type Page, test } from '@playwright/test';
import { PDFDocument } from 'pdf-lib';
import { openMore, openWorkbench, type } from './workbench';

const downloadBy = async (page: Page, button: string): Promise<Download> => {
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: button, exact: true }).click(),
  ]);
  return download;
};

test('sheets are ticked, previewed with their count, left out with the reason, and downloaded as one PDF', async ({
  page,
}) => {
  await openWorkbench(page);
  await page.getByRole('tab', { name: 'Print' }).click();
  await expect(page.getByText('1 page', { exact: true })).toBeVisible();
  await page.getByRole('checkbox', { name: 'Window sheet' }).press('Space');
  await expect(page.getByRole('img', { name: /^Page 2 of 2/ })).toBeVisible();
  await expect(page.getByText('2 pages', { exact: true })).toBeVisible();
  const caul = page.getByRole('checkbox', { name: 'Inside caul' });
  await caul.press('Space');
  await expect(caul).toHaveAccessibleDescription(/Not among the pages: .*brace/i);
  const download = await downloadBy(page, 'Download PDF');
  expect(download.suggestedFilename()).toBe('Wren 14 sheets.pdf');
  const made = await PDFDocument.load(await readFile(await download.path()));
  expect(made.getPageCount()).toBe(2);
  await page.getByRole('checkbox', { name: 'Tape-down template' }).press('Space');
  await page.getByRole('checkbox', { name: 'Window sheet' }).press('Space');
  await expect(page.getByText('Choose a sheet to print.').first()).toBeVisible();
  await page.getByRole('button', { name: 'Undo', exact: true }).click();
  await expect(page.getByRole('img', { name: /^Page 1 of 1/ })).toBeVisible();
});

test('papers of the maker are offered first, with the white that the printer wants, and kept for the next visit', async ({
  page,
}) => {
  await openWorkbench(page);
  await page.getByRole('tab', { name: 'Print' }).click();
  const paper = page.getByRole('combobox', { name: 'Paper', exact: true });
  await expect(paper.locator('optgroup').first().locator('option')).toHaveText(['A4', 'Letter']);
  await openMore(page, 'Your papers and margins');
  await page.getByRole('checkbox', { name: 'A3', exact: true }).press('Space');
  await type(page, 'Name of another paper', 'Drawer card');
  await expect(page.getByText('Expected both sides of the paper')).toBeVisible();
  await page.getByRole('textbox', { name: 'Its short side' }).fill('9in');
  await type(page, 'Its long side', '400');
  await expect(paper.locator('optgroup').first().locator('option')).toHaveText(['A4', 'Letter', 'A3', 'Drawer card']);
  await paper.selectOption({ label: 'Drawer card' });
  await type(page, 'White at every edge', '12');
  const made = await PDFDocument.load(await readFile(await (await downloadBy(page, 'Download PDF')).path()));
  const { width, height } = made.getPage(0).getSize();
  // 9 in are 648 points; 400 mm are 400 · 72 / 25.4 = 1133.858 points.
  expect(width).toBeCloseTo(648, 3);
  expect(height).toBeCloseTo(1133.858, 3);
  await page.reload();
  await expect(page.getByRole('combobox', { name: 'Paper', exact: true })).toHaveValue('own-1');
  await openMore(page, 'Your papers and margins');
  await expect(page.getByRole('textbox', { name: 'White at every edge' })).toHaveValue('12.0');
  await page.getByRole('button', { name: 'Remove Drawer card' }).click();
  await expect(page.getByRole('combobox', { name: 'Paper', exact: true })).toHaveValue('a4');
});

test('a set of both hands at several scales, with a model from a file, is one PDF with contents, or a zip', async ({
  page,
}) => {
  await openWorkbench(page);
  await page.getByRole('tab', { name: 'Print' }).click();
  const [saved] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Save', exact: true }).click(),
  ]);
  const bytes = await readFile(await saved.path());
  await page.getByLabel('Add models from files').setInputFiles([
    { name: 'again.json', mimeType: 'application/json', buffer: bytes },
    { name: 'other.json', mimeType: 'application/json', buffer: Buffer.from('{}') },
  ]);
  await expect(page.getByText(/Not added. other.json/)).toBeVisible();
  await expect(page.getByRole('list', { name: 'Models of the set' }).getByRole('listitem')).toHaveCount(2);
  await page.getByRole('radio', { name: 'Both hands' }).check();
  await type(page, 'Scale lengths', '645; long');
  await expect(page.getByText('“long” is no length.')).toBeVisible();
  await type(page, 'Scale lengths', '645; 25 1/2in');
  await expect(page.getByText('8 instruments.')).toBeVisible();
  const pdf = await downloadBy(page, 'Download set');
  expect(pdf.suggestedFilename()).toBe('Wren 14 set.pdf');
  const made = await PDFDocument.load(await readFile(await pdf.path()));
  expect(made.getPageCount()).toBe(9);
  await page.getByRole('combobox', { name: 'Made as' }).selectOption({ label: 'A zip of one PDF each' });
  const zip = await downloadBy(page, 'Download set');
  expect(zip.suggestedFilename()).toBe('Wren 14 set.zip');
  const text = (await readFile(await zip.path())).toString('latin1');
  expect(text.match(/%PDF-/g)).toHaveLength(8);
  expect(text).toContain('Wren 14, 647.7 mm, left hand.pdf');
});

test('a large set tells how far it is and can be cancelled', async ({ page }) => {
  await openWorkbench(page);
  await page.getByRole('tab', { name: 'Print' }).click();
  const scales = Array.from({ length: 200 }, (_, index) => String(500 + index)).join('; ');
  await page.getByRole('radio', { name: 'Both hands' }).check();
  await type(page, 'Scale lengths', scales);
  await page.getByRole('button', { name: 'Download set' }).click();
  await expect(page.getByRole('progressbar', { name: 'Making the set' })).toBeVisible();
  await page.getByRole('button', { name: 'Cancel', exact: true }).click();
  await expect(page.getByText('The set was cancelled.')).toBeVisible();
  await expect(page.getByRole('button', { name: 'Download set' })).toBeVisible();
});
