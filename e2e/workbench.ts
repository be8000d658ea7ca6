import { readFile } from 'node:fs/promises';
import { type Download, expect, type Locator, type Page } from '@playwright/test';
import { PDFDocument } from 'pdf-lib';

/** Opens the built app on the demo instrument and waits for its drawing. Any fault on the page fails the test. */
export const openWorkbench = async (page: Page): Promise<void> => {
  page.on('pageerror', (error) => {
    throw error;
  });
  await page.goto('./');
  await expect(page.locator('canvas')).toBeVisible();
  await expect(figure(page, 'Break point, centre')).not.toBeEmpty();
};

/** Types into a box and leaves it by Enter. */
export const type = async (page: Page, name: string, text: string): Promise<void> => {
  const box = page.getByRole('textbox', { name, exact: true });
  await box.fill(text);
  await box.press('Enter');
};

/** Asks for figures to a hundredth of a millimetre; the screen starts with a tenth. */
export const showHundredths = async (page: Page): Promise<void> => {
  await page.getByRole('combobox', { name: 'Figures to' }).selectOption({ label: '0.01 mm' });
};

/** Opens what stands behind a "more" of the station. */
export const openMore = (page: Page, summary: string): Promise<void> =>
  page.locator('summary', { hasText: new RegExp(`^${summary}$`) }).click();

/** Begins a new instrument of a kind. */
export const begin = async (page: Page, kind: string): Promise<void> => {
  await page.getByRole('button', { name: 'New', exact: true }).click();
  await page.getByRole('dialog').getByRole('button', { name: kind, exact: true }).click();
  // It comes in a part of the program that is loaded first.
  await expect(statusOf(page)).toHaveText(/^New: /);
};

/** The texts of a table's rows, by their row header. */
export const rowsOf = async (page: Page, table: string): Promise<Readonly<Record<string, readonly string[]>>> => {
  const rows = page.getByRole('table', { name: table, exact: true }).locator('tbody tr');
  await expect(rows.first()).toBeVisible();
  const cells = await rows.evaluateAll((all) =>
    all.map((row) => [...row.children].map((cell) => (cell.textContent ?? '').trim())),
  );
  return Object.fromEntries(cells.map(([name = '', ...rest]) => [name, rest]));
};

/** A cell of the table "Placement numbers": the nth figure of a row, counted from 0 at the nut. */
export const figure = (page: Page, row: string, nth = 0): Locator =>
  page
    .getByRole('table', { name: 'Placement numbers' })
    .getByRole('row')
    .filter({ has: page.getByRole('rowheader', { name: row, exact: true }) })
    .getByRole('cell')
    .nth(nth);

/** The figures of "Distances to square by" from one place of the instrument, by where they go. */
export const distancesFrom = async (page: Page, start: string): Promise<Readonly<Record<string, string>>> => {
  const group = page
    .getByRole('table', { name: 'Distances to square by' })
    .getByRole('rowgroup')
    .filter({ has: page.getByRole('rowheader', { name: `From ${start}`, exact: true }) });
  const rows = await group.getByRole('row').allInnerTexts();
  return Object.fromEntries(rows.slice(1).map((row) => row.split('\t').map((text) => text.trim()) as [string, string]));
};

/** A finished download as a PDF: its first bytes and its page sizes in points. */
export const readPdfOf = async (
  download: Download,
): Promise<{ head: string; pages: readonly { width: number; height: number }[] }> => {
  const bytes = await readFile(await download.path());
  const pdf = await PDFDocument.load(bytes);
  return { head: bytes.subarray(0, 5).toString('latin1'), pages: pdf.getPages().map((page) => page.getSize()) };
};

export const alertOf = (page: Page): Locator => page.getByRole('alert');
export const statusOf = (page: Page): Locator => page.getByRole('status');
