import { readFile } from 'node:fs/promises';
import { expect, test } from '@playwright/test';
import { PDFDocument } from 'pdf-lib';
import { openWorkbench } from './workbench';

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
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Download PDF', exact: true }).click(),
  ]);
  expect(download.suggestedFilename()).toBe('Wren 14 sheets.pdf');
  const made = await PDFDocument.load(await readFile(await download.path()));
  expect(made.getPageCount()).toBe(2);
  await page.getByRole('checkbox', { name: 'Tape-down template' }).press('Space');
  await page.getByRole('checkbox', { name: 'Window sheet' }).press('Space');
  await expect(page.getByText('Choose a sheet to print.').first()).toBeVisible();
  await page.getByRole('button', { name: 'Undo', exact: true }).click();
  await expect(page.getByRole('img', { name: /^Page 1 of 1/ })).toBeVisible();
});
