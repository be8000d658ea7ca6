import { readFile } from 'node:fs/promises';
import { expect, type Locator, type Page, test } from '@playwright/test';
import { dxf, polyline } from '../test/importers/dxfText';
import { HOSTILE } from '../test/importers/hostile';
import { tabTo } from './keys';
import { openWorkbench, showHundredths, statusOf } from './workbench';

/** What a maker waits at most for an answer, ms. */
const LONGEST_MS = 2000;

const dialogOf = (page: Page): Locator => page.getByRole('dialog', { name: 'Import an outline' });
const problemOf = (page: Page): Locator => dialogOf(page).getByRole('alert').first();

/** The demo on Draw, by keys alone. */
const openDraw = async (page: Page): Promise<void> => {
  // From here on the browser asks the test for files, also those of the first key.
  page.on('filechooser', () => undefined);
  await openWorkbench(page);
  await showHundredths(page);
  await tabTo(page, 'Measure', 'Shift+Tab');
  await page.keyboard.press('ArrowDown');
  await expect(page.getByRole('tab', { name: 'Draw' })).toBeFocused();
  await expect(page.getByRole('button', { name: 'Import an outline' })).toBeVisible();
};

const openDialog = async (page: Page): Promise<void> => {
  await tabTo(page, 'Import an outline');
  await page.keyboard.press('Enter');
  await expect(dialogOf(page)).toBeVisible();
};

/** Goes to the file field by keys and hands it a file. */
const choose = async (page: Page, name: string, text: string): Promise<void> => {
  await tabTo(page, 'SVG or DXF file', 'Shift+Tab');
  const [chooser] = await Promise.all([page.waitForEvent('filechooser'), page.keyboard.press('Enter')]);
  await chooser.setFiles({ name, mimeType: 'application/octet-stream', buffer: Buffer.from(text, 'latin1') });
};

/** The project as its file has it. */
const savedText = async (page: Page): Promise<string> => {
  const saving = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save', exact: true }).click();
  return readFile(await (await saving).path(), 'utf8');
};

const outlineOf = async (page: Page) => JSON.parse(await savedText(page)).bridge.outline;

/** 90 pixels to an inch: 531.496 × 106.299 px are 150 × 30 mm; with a circle and an open line beside. */
const NINETY = `<svg xmlns="http://www.w3.org/2000/svg" width="600px" height="200px" viewBox="0 0 600 200">
  <rect x="20" y="20" width="531.496" height="106.299"/><circle cx="40" cy="160" r="9"/><path d="M0 0H400V90"/></svg>`;

test('an SVG of 90 pixels to an inch becomes the outline, by keyboard alone', async ({ page }) => {
  await openDraw(page);
  const { keyboard } = page;
  await openDialog(page);
  await choose(page, 'bridge.svg', NINETY);
  const dialog = dialogOf(page);

  await test.step('the pixels are asked, with the size that each answer leads to', async () => {
    await expect(dialog.getByRole('group', { name: 'How many pixels make an inch?' })).toBeVisible();
    // 531.496 px × 25.4 / 72, / 90 and / 96.
    for (const size of [
      '72 pixels to an inch 187.50 mm',
      '90 pixels to an inch 150.00 mm',
      '96 pixels to an inch 140.62 mm',
    ])
      await expect(dialog.getByText(size)).toBeVisible();
    await expect(dialog.getByRole('button', { name: 'Take this outline' })).toHaveAttribute('aria-disabled', 'true');
  });
  await test.step('one answer is chosen, and what cannot be taken says why', async () => {
    await dialog.getByRole('radio', { name: /^72 pixels/ }).focus();
    await keyboard.press('ArrowDown');
    await expect(dialog.getByRole('radio', { name: /^90 pixels/ })).toBeChecked();
    await expect(dialog.getByText('Outline 1 150.00 mm × 30.00 mm, 4 pieces')).toBeVisible();
    await expect(dialog.getByText(/^Outline 2 .*It is open: its ends lie .* mm apart\.$/)).toBeVisible();
    await expect(dialog.getByText(/^Outline 3 .*It is too small: 5\.08 mm over its longer side/)).toBeVisible();
  });
  await test.step('it is turned there and back, and taken as one step', async () => {
    await tabTo(page, 'Turn by 90°');
    for (let turn = 0; turn < 4; turn++) await keyboard.press('Enter');
    await tabTo(page, 'Take this outline');
    await keyboard.press('Enter');
    await expect(dialog).toBeHidden();
    await expect(statusOf(page)).toHaveText('Outline from a file');
    await expect(page.getByRole('button', { name: 'Import an outline' })).toBeFocused();
    const { kind, symmetric, path } = await outlineOf(page);
    expect([kind, symmetric]).toEqual(['drawn', true]);
    const xs = path.segments.map(({ to }: { to: { x: number } }) => to.x);
    expect(Math.max(...xs) - Math.min(...xs)).toBeCloseTo(150, 3);
  });
  await test.step('undo brings the old outline back', async () => {
    await keyboard.press('Control+Z');
    await expect(statusOf(page)).toHaveText('Undone: Outline from a file');
    expect((await outlineOf(page)).kind).toBeUndefined();
  });
});

test('a DXF in inches keeps its arcs; turned by a quarter it lies along; Escape changes nothing', async ({ page }) => {
  await openDraw(page);
  const before = await outlineOf(page);
  const { keyboard } = page;
  // 6 × 1.2 in with one end of bulge −0.2: seen with y up, the arc bulges to the right by 0.12 in.
  const drawing = dxf([polyline(true, [0, 0], [6, 0, 0.2], [6, 1.2], [0, 1.2])], { units: 1 });

  await openDialog(page);
  await choose(page, 'bridge.dxf', drawing);
  // 6.12 in and 1.2 in.
  await expect(dialogOf(page).getByText('Outline 1 155.45 mm × 30.48 mm, 4 pieces')).toBeVisible();
  await keyboard.press('Escape');
  await expect(dialogOf(page)).toBeHidden();
  expect(await outlineOf(page)).toEqual(before);

  await tabTo(page, 'Draw');
  await openDialog(page);
  await choose(page, 'bridge.dxf', drawing);
  await expect(dialogOf(page).getByText('Outline 1 155.45 mm × 30.48 mm, 4 pieces')).toBeVisible();
  await tabTo(page, 'Turn by 90°');
  await keyboard.press('Enter');
  await tabTo(page, 'Take this outline');
  await keyboard.press('Enter');
  await expect(dialogOf(page)).toBeHidden();
  const { path, symmetric } = await outlineOf(page);
  expect(path.segments.filter(({ kind }: { kind: string }) => kind === 'arc')).toHaveLength(1);
  const ys = path.segments.map(({ to }: { to: { y: number } }) => to.y);
  expect(Math.max(...ys) - Math.min(...ys)).toBeCloseTo(152.4, 6);
  expect(symmetric).toBe(true);
});

test('a known length gives a size where the file has none', async ({ page }) => {
  await openDraw(page);
  await openDialog(page);
  await choose(
    page,
    'any.svg',
    '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 9 9"><rect width="5" height="1"/></svg>',
  );
  const dialog = dialogOf(page);
  await dialog.getByRole('radio', { name: 'By a known length' }).press('Space');
  const box = dialog.getByRole('textbox', { name: 'Longer side of the first outline' });
  await box.fill('4');
  await box.press('Enter');
  await expect(dialog.getByText('Expected a length of 20 to 400 mm, got 4 mm.')).toBeVisible();
  await expect(box).toHaveValue('4');
  await box.fill('6 in');
  await box.press('Enter');
  await expect(dialog.getByText('Outline 1 152.40 mm × 30.48 mm, 4 pieces')).toBeVisible();
  await expect(dialog.getByRole('button', { name: 'Take this outline' })).toHaveAttribute('aria-disabled', 'false');
});

/** Splines of the highest degree, by the hundred: more work than anyone should wait for. */
const tangled = (): string => {
  const knots = Array.from({ length: 1012 }, (_, at) => `40\n${at}\n`).join('');
  const points = Array.from({ length: 1000 }, (_, at) => `10\n${at % 77}\n20\n${at % 13}\n41\n${1 + (at % 3)}\n`).join(
    '',
  );
  const spline = `0\nSPLINE\n71\n11\n${knots}${points}`;
  return `0\nSECTION\n2\nENTITIES\n${spline.repeat(200)}0\nENDSEC\n0\nEOF\n`;
};

test('hostile files get a message within two seconds, and the work stays as it was', async ({ page }) => {
  const fetched: string[] = [];
  await openDraw(page);
  const before = await savedText(page);
  page.on('request', (request) => fetched.push(request.url()));
  await tabTo(page, 'Draw');
  await openDialog(page);
  for (const { name, make } of [...HOSTILE, { name: 'tangled splines', make: tangled }])
    await test.step(name, async () => {
      const text = make();
      await choose(page, `${name}.svg`, text);
      await expect(problemOf(page), name).toHaveText(/^.{20,}\.$/s, { timeout: LONGEST_MS });
      // The next one must not be taken for this one.
      await choose(page, 'whole.svg', NINETY);
      await expect(problemOf(page)).toHaveText('');
    });
  await page.keyboard.press('Escape');
  await expect(dialogOf(page)).toBeHidden();
  expect(await savedText(page)).toBe(before);
  const own = new URL(page.url()).origin;
  expect(fetched.filter((address) => !address.startsWith(own) && !address.startsWith(`blob:${own}`))).toEqual([]);
});
