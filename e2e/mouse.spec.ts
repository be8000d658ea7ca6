import { readFile } from 'node:fs/promises';
import { expect, test } from '@playwright/test';
import { alertOf, begin, figure, openWorkbench, readPdfOf, showHundredths, statusOf, type } from './workbench';

test('a maker types an instrument, reads the numbers, prints and saves, by mouse', async ({ page }) => {
  await openWorkbench(page);
  await begin(page, 'Steel-string guitar');
  await test.step('figures come to a tenth until more is asked', async () => {
    await expect(figure(page, 'Octave line')).toHaveText('645.0');
    await showHundredths(page);
    await expect(figure(page, 'Octave line')).toHaveText('645.00');
  });
  await type(page, 'Name', 'Larch 3');
  await type(page, 'Scale length', '645');
  await type(page, 'String spacing at saddle, outer', '54');

  // 645 + (1.5875 + 3.96875) / 2 = 647.778; 12th fret at 322.5: hand arithmetic.
  await expect(figure(page, 'Break point, centre', 0)).toHaveText('647.78');
  await expect(figure(page, 'Break point, centre', 1)).toHaveText('325.28');

  await test.step('the hand changes no figure and can be undone', async () => {
    await page.getByRole('radio', { name: 'Left', exact: true }).check();
    await expect(figure(page, 'Break point, treble E4')).toHaveText('646.59');
    await expect(statusOf(page)).toHaveText('Hand: left');
    await expect(page.getByRole('button', { name: 'Undo', exact: true })).toHaveAttribute('title', 'Undo: Hand: left');
    await page.getByRole('button', { name: 'Undo', exact: true }).click();
    await expect(page.getByRole('radio', { name: 'Right', exact: true })).toBeChecked();
    await page.getByRole('button', { name: 'Redo', exact: true }).click();
    await expect(page.getByRole('radio', { name: 'Left', exact: true })).toBeChecked();
  });

  await test.step('units change what is read, not what is kept', async () => {
    await page.getByRole('radio', { name: 'in', exact: true }).check();
    // 647.778 / 25.4 = 25.50307 in: 0.50307 × 64 = 32.2, so 1/2.
    await expect(figure(page, 'Break point, centre')).toHaveText('25 1/2');
    await page.getByRole('combobox', { name: 'Figures to' }).selectOption({ label: '0.001 in' });
    await expect(figure(page, 'Break point, centre')).toHaveText('25.503');
    await page.getByRole('radio', { name: 'mm', exact: true }).check();
    await expect(page.getByRole('textbox', { name: 'Scale length', exact: true })).toHaveValue('645.0');
  });

  await test.step('the PDF is the sheet that was previewed', async () => {
    await page.getByRole('tab', { name: 'Print' }).click();
    await page.getByRole('combobox', { name: 'Paper' }).selectOption({ label: 'A4' });
    const previews = page.getByRole('region', { name: 'Pages' }).getByRole('img');
    await expect(previews.first()).toBeVisible();
    const count = await previews.count();
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name: 'Download PDF', exact: true }).click(),
    ]);
    expect(download.suggestedFilename()).toBe('Larch 3 template.pdf');
    const { head, pages } = await readPdfOf(download);
    expect(head).toBe('%PDF-');
    expect(pages).toHaveLength(count);
    // ISO 216: A4 is 210 × 297 mm, a point is 25.4 / 72 mm.
    for (const { width, height } of pages) {
      expect(Math.min(width, height)).toBeCloseTo((210 * 72) / 25.4, 2);
      expect(Math.max(width, height)).toBeCloseTo((297 * 72) / 25.4, 2);
    }
    await expect(statusOf(page)).toContainText('Downloaded Larch 3 template.pdf');
    await expect(alertOf(page)).toBeEmpty();
  });

  await test.step('saved work comes back from its file', async () => {
    await page.getByRole('tab', { name: 'Measure' }).click();
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name: 'Save', exact: true }).click(),
    ]);
    expect(download.suggestedFilename()).toBe('Larch 3.saddlemark.json');
    const saved = await readFile(await download.path(), 'utf8');
    await type(page, 'Scale length', '650');
    await expect(figure(page, 'Octave line')).toHaveText('650.00');
    const [chooser] = await Promise.all([
      page.waitForEvent('filechooser'),
      page.getByRole('button', { name: 'Open', exact: true }).click(),
    ]);
    await chooser.setFiles({ name: 'Larch 3.json', mimeType: 'application/json', buffer: Buffer.from(saved) });
    await expect(figure(page, 'Octave line')).toHaveText('645.00');
    await page.getByRole('button', { name: 'Undo', exact: true }).click();
    await expect(figure(page, 'Octave line')).toHaveText('650.00');
  });
});

test('a file that cannot be used is named and the open work stays', async ({ page }) => {
  await openWorkbench(page);
  await type(page, 'Scale length', '641.5');
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Save', exact: true }).click(),
  ]);
  const saved = await readFile(await download.path(), 'utf8');
  const files = [
    { text: 'Dear maker,', says: 'This is not a Saddlemark project' },
    { text: '{"format":"something-else"}', says: 'This is not a Saddlemark project' },
    { text: saved.replace('"version": 1', '"version": 2'), says: 'made by a newer Saddlemark' },
    { text: saved.replace('"relief": 0.15', '"relief": "deep"'), says: '"setup.relief" is "deep", expected a number' },
    { text: saved.replace('"nut": 46', '"nut": 4600'), says: 'Nut width goes from 20 mm to 90 mm' },
  ];
  for (const { text, says } of files) {
    const [chooser] = await Promise.all([
      page.waitForEvent('filechooser'),
      page.getByRole('button', { name: 'Open', exact: true }).click(),
    ]);
    await chooser.setFiles({ name: 'odd.json', mimeType: 'application/json', buffer: Buffer.from(text) });
    await expect(alertOf(page)).toContainText(says);
    await expect(alertOf(page)).toContainText('odd.json was not opened');
    await expect(page.getByRole('textbox', { name: 'Scale length', exact: true })).toHaveValue('641.5');
    await page.getByRole('button', { name: 'Dismiss' }).click();
    await expect(alertOf(page)).toBeEmpty();
  }
});

test('wrong text stays as typed beside its message, and the drawing keeps the last good value', async ({ page }) => {
  await openWorkbench(page);
  const box = page.getByRole('textbox', { name: 'Nut width', exact: true });
  for (const [text, says] of [
    ['abc', '“abc” is not a length'],
    ['', 'Type a length'],
    ['1,234', '1,234 can mean two lengths'],
    ['400', 'Nut width goes from 20.0 mm to 90.0 mm.'],
    ['44.', 'Type the decimals after the point.'],
  ] as const) {
    await box.fill(text);
    await expect(box).toHaveAttribute('aria-invalid', 'false');
    await box.blur();
    await expect(box).toHaveValue(text);
    await expect(box).toHaveAttribute('aria-invalid', 'true');
    await expect(box).toHaveAccessibleDescription(new RegExp(says.replace(/[.*+?^${}()|[\]\\]/g, '\\$&')));
    await expect(page.getByRole('button', { name: 'Undo', exact: true })).toHaveAttribute('title', 'Nothing to undo');
  }
  await box.press('Escape');
  await expect(box).toHaveValue('46.0');
  await expect(box).toHaveAttribute('aria-invalid', 'false');
  await type(page, 'Nut width', '1 3/4 in');
  // 1.75 × 25.4
  await expect(box).toHaveValue('44.45');
});

test('a character that the printed font lacks is named, and the rest prints', async ({ page }) => {
  await openWorkbench(page);
  await type(page, 'Name', 'Wren 琴');
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Download PDF', exact: true }).click(),
  ]);
  expect((await readPdfOf(download)).head).toBe('%PDF-');
  await expect(alertOf(page)).toContainText('琴');
});

test('a bridge too wide for the paper is refused, with the papers that would do', async ({ page }) => {
  await openWorkbench(page);
  await page.getByRole('tab', { name: 'Draw' }).click();
  await type(page, 'Bridge length', '300');
  await page.getByRole('button', { name: 'Download PDF', exact: true }).click();
  await expect(alertOf(page)).toContainText('too much for A4');
  await expect(alertOf(page)).toContainText('These papers would do:');
  await page.getByRole('tab', { name: 'Print' }).click();
  await expect(page.getByRole('region', { name: 'Pages' })).toContainText('too much for A4');
});
