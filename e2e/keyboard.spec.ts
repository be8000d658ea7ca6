import { readFile } from 'node:fs/promises';
import { expect, test } from '@playwright/test';
import { tabTo, typeOver } from './keys';
import { figure, openWorkbench, readPdfOf, rowsOf, statusOf } from './workbench';

test('the same journey with the keyboard alone', async ({ page }) => {
  await openWorkbench(page);
  const { keyboard } = page;

  await tabTo(page, 'New');
  await keyboard.press('Enter');
  await tabTo(page, 'Steel-string guitar');
  await keyboard.press('Enter');
  await expect(statusOf(page)).toContainText('New:');

  await typeOver(page, 'Name', 'Larch 3');
  for (const [name, text] of [
    ['Nut to 12th fret, 1st reading', '12 45/64 in'],
    ['Nut to 12th fret, 2nd reading', '12 11/16 in'],
    ['Nut to 12th fret, 3rd reading', '12 45/64 in'],
  ] as const)
    await typeOver(page, name, text);
  await tabTo(page, 'Figures to');
  await keyboard.press('ArrowUp');
  // Twice the mean of 12.703125, 12.6875 and 12.703125 in is 25.39583 in, 645.054 mm.
  await expect(figure(page, 'Octave line')).toHaveText('645.05');

  await test.step('a reading left half typed is told, Escape brings the old one back', async () => {
    await tabTo(page, 'Nut width');
    await keyboard.press('Control+A');
    await keyboard.type('25 11/');
    await keyboard.press('Tab');
    await keyboard.press('Shift+Tab');
    await expect(page.locator(':focus')).toHaveValue('25 11/');
    await expect(page.locator(':focus')).toHaveAttribute('aria-invalid', 'true');
    await keyboard.press('Escape');
    await expect(page.locator(':focus')).toHaveValue('44.45');
  });

  await test.step('undo and redo by their keys, but not while typing', async () => {
    await typeOver(page, 'Board width at 12th fret', '56');
    await keyboard.press('Control+Z');
    await expect(statusOf(page)).toHaveText('Undone: Board width at 12th fret 56.0');
    await keyboard.press('Control+Shift+Z');
    await expect(statusOf(page)).toHaveText('Redone: Board width at 12th fret 56.0');
    await keyboard.press('Control+Z');
    await keyboard.press('Control+Y');
    await expect(page.locator(':focus')).toHaveValue('56.0');
    await keyboard.type('7');
    await keyboard.press('Control+Z');
    await expect(statusOf(page)).toHaveText('Redone: Board width at 12th fret 56.0');
    await keyboard.press('Escape');
  });

  await test.step('a string set is chosen', async () => {
    await tabTo(page, 'String set');
    await keyboard.type('Steel, bronze-wound, 13');
    await expect(statusOf(page)).toHaveText('String set: Steel, bronze-wound, 13-56');
  });

  await test.step('the hand and the units', async () => {
    await tabTo(page, 'Right', 'Shift+Tab');
    await keyboard.press('ArrowRight');
    await expect(statusOf(page)).toHaveText('Hand: left');
    await tabTo(page, 'mm');
    await keyboard.press('ArrowRight');
    // 645.054 mm is 25.39583 in: 25 25.3/64.
    await expect(figure(page, 'Octave line')).toHaveText('25 25/64');
    await keyboard.press('ArrowLeft');
    await expect(figure(page, 'Octave line')).toHaveText('645.05');
  });

  await test.step('the drawing is entered, moved and left, and its parts are reached', async () => {
    await tabTo(page, 'View of the bridge');
    const zoom = page.locator('.zoom');
    const whole = await zoom.textContent();
    await keyboard.press('+');
    await expect(zoom).not.toHaveText(whole ?? '');
    await keyboard.press('ArrowLeft');
    await keyboard.press('0');
    await expect(zoom).toHaveText(whole ?? '');
    await keyboard.press('Escape');
    await tabTo(page, 'Pin 1');
    await keyboard.press('Enter');
    await expect(page.locator(':focus')).toHaveAttribute('aria-pressed', 'true');
    await expect(page.locator('.chosen-part')).toContainText('to the treble side');
  });

  await test.step('the stations are tabs, and the PDF is downloaded from the third', async () => {
    await tabTo(page, 'Measure', 'Shift+Tab');
    await keyboard.press('ArrowDown');
    await expect(page.getByRole('tab', { name: 'Draw' })).toBeFocused();
    await typeOver(page, 'Slot width', '3/32 in');
    await tabTo(page, 'Draw', 'Shift+Tab');
    await keyboard.press('ArrowDown');
    await expect(page.getByRole('region', { name: 'Pages' }).getByRole('img').first()).toBeVisible();
    await tabTo(page, 'Download PDF', 'Shift+Tab');
    const [download] = await Promise.all([page.waitForEvent('download'), keyboard.press('Enter')]);
    const { head, pages } = await readPdfOf(download);
    expect(head).toBe('%PDF-');
    expect(pages.length).toBe(await page.getByRole('region', { name: 'Pages' }).getByRole('img').count());
  });

  await test.step('the work is saved', async () => {
    const [download] = await Promise.all([page.waitForEvent('download'), keyboard.press('Control+S')]);
    const saved = JSON.parse(await readFile(await download.path(), 'utf8'));
    expect(saved.about.name).toBe('Larch 3');
    expect(saved.instrument.hand).toBe('left');
    // 3/32 in
    expect(saved.bridge.slot.width).toBeCloseTo(2.38125, 9);
  });
});

test('compensation by strings, its doubt and its pictures with the keyboard alone', async ({ page }) => {
  await openWorkbench(page);
  const { keyboard } = page;

  await test.step('a group is gone to at once', async () => {
    await tabTo(page, 'Compensation');
    await keyboard.press('Enter');
    await expect(page.locator('#group-compensation')).toBeFocused();
  });
  await test.step('the radio buttons are one stop, moved by arrows', async () => {
    await tabTo(page, 'Rule of thumb');
    await keyboard.press('ArrowDown');
    await expect(page.getByRole('radio', { name: 'Strings' })).toBeChecked();
    await expect(statusOf(page)).toHaveText('Compensation by: strings');
  });
  await test.step('what stands behind "more" opens, and its fields are typed in', async () => {
    await tabTo(page, 'Frets, saddle line, slotted bridge, finger');
    await keyboard.press('Enter');
    await tabTo(page, 'In tune over');
    await keyboard.type('the 12th');
    await expect(statusOf(page)).toHaveText('In tune over: the 12th fret alone');
    await typeOver(page, 'Slant of a slotted bridge', '3');
    await expect(figure(page, 'Slant')).toContainText('3.00°');
    await typeOver(page, 'Slant of a slotted bridge', '');
    await expect(figure(page, 'Slant')).not.toContainText('3.00°');
  });
  await test.step('a doubt is changed and every mark is surer', async () => {
    await tabTo(page, 'Each string, doubts, sampling');
    await keyboard.press('Enter');
    await tabTo(page, 'How far each figure may be off');
    const before = await rowsOf(page, 'What each mark is worth');
    await keyboard.press('Enter');
    await typeOver(page, 'Doubt of core', '0');
    const after = await rowsOf(page, 'What each mark is worth');
    for (const [name, [doubt]] of Object.entries(after)) expect(Number(doubt)).toBeLessThan(Number(before[name]?.[0]));
  });
  await test.step('the pictures are radio buttons too', async () => {
    await tabTo(page, 'Bridge');
    await keyboard.press('ArrowRight');
    await expect(page.getByRole('img', { name: /^Compensation by string/ })).toBeVisible();
    await keyboard.press('ArrowRight');
    await expect(page.getByRole('img', { name: /^Cents by string and fret/ })).toBeVisible();
  });
});
