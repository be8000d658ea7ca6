import { readFile } from 'node:fs/promises';
import AxeBuilder from '@axe-core/playwright';
import { expect, type Locator, type Page, test } from '@playwright/test';
import { tabTo } from './keys';
import { keptPhotos, photoWithPlace } from './photo';
import { openMore, openWorkbench, statusOf, type } from './workbench';

const NAME = 'Wren 14, No. 12';

const violations = async (page: Page): Promise<readonly string[]> => {
  const { violations: found } = await new AxeBuilder({ page }).analyze();
  return found.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html.slice(0, 120)).join(' | ')}`);
};

const openRecord = async (page: Page): Promise<void> => {
  await openWorkbench(page);
  await page.getByRole('tab', { name: 'Record' }).click();
};

const rows = (page: Page): Locator => page.getByRole('list', { name: 'Library', exact: true }).getByRole('listitem');
const row = (page: Page, title: string): Locator =>
  rows(page).filter({ has: page.getByRole('heading', { name: title, exact: true }) });

/** Makes an instrument of the demo model. */
const makeInstrument = async (page: Page, serial: string): Promise<void> => {
  await page.getByLabel('Number or name of a new instrument').fill(serial);
  await page.getByRole('button', { name: 'Make an instrument of this model' }).click();
  await expect(page.getByRole('heading', { name: 'This instrument', exact: true }).first()).toBeVisible();
  await expect(row(page, `Wren 14, ${serial}`)).toBeVisible();
};

const writeNotes = async (page: Page, words: string): Promise<void> => {
  const notes = page.getByRole('textbox', { name: 'Notes', exact: true });
  await notes.fill(words);
  await notes.press('Control+Enter');
  await expect(statusOf(page)).toContainText('Notes');
};

const addPhoto = async (page: Page, bytes: Buffer): Promise<void> => {
  const chooser = page.waitForEvent('filechooser');
  await page.getByRole('button', { name: 'Add photos' }).click();
  await (await chooser).setFiles({ name: 'bridge.jpg', mimeType: 'image/jpeg', buffer: bytes });
  await expect(statusOf(page)).toHaveText('Photo added');
};

const search = (page: Page, words: string): Promise<void> => page.getByRole('searchbox').fill(words);

test('an instrument of the demo model is numbered, noted, photographed, found, compared, archived, and there next time', async ({
  page,
}) => {
  await openRecord(page);
  await makeInstrument(page, 'No. 12');
  await expect(page.getByRole('textbox', { name: 'Number or name', exact: true })).toHaveValue('No. 12');
  await writeNotes(page, 'Thin top.\nTap tone near G.');

  const photo = await photoWithPlace(page);
  expect(photo.includes('Exif')).toBe(true);
  await addPhoto(page, photo);
  const kept = await keptPhotos(page);
  expect(kept).toHaveLength(1);
  expect(kept[0]?.slice(0, 2) === '\xff\xd8' || kept[0]?.slice(0, 4) === 'RIFF').toBe(true);
  expect(kept[0]).not.toContain('Exif');
  await page.getByRole('button', { name: 'Photo 1 of 1, show it large' }).click();
  const large = page.getByRole('dialog').getByRole('img', { name: 'Photo 1 of 1' });
  await expect(large).toBeVisible();
  expect(await large.evaluate((image: HTMLImageElement) => image.naturalWidth)).toBeGreaterThan(100);
  await page.keyboard.press('Escape');

  await search(page, 'TAP tone wren');
  await expect(rows(page)).toHaveCount(1);
  await expect(row(page, NAME)).toContainText('1 photo');

  await page.getByRole('button', { name: 'Compare with its model' }).click();
  const dialog = page.getByRole('dialog', { name: `Wren 14 against ${NAME}` });
  await expect(dialog.getByRole('img', { name: /laid over each other/ })).toBeVisible();
  await expect(dialog.getByRole('row', { name: /^Notes/ })).toContainText('Tap tone near G.');
  await expect(dialog.getByRole('row', { name: /^Nut to 12th fret, 1st reading/ })).toContainText('316.0 mm');
  await page.keyboard.press('Escape');
  await expect(dialog).toBeHidden();

  await page.getByRole('button', { name: `More for ${NAME}` }).click();
  await page.getByRole('button', { name: 'Archive', exact: true }).click();
  await expect(rows(page)).toHaveCount(0);
  await search(page, '');
  await expect(row(page, NAME)).toHaveCount(0);
  await expect(row(page, 'Wren 14')).toBeVisible();

  await page.reload();
  await page.getByRole('tab', { name: 'Record' }).click();
  await openMore(page, 'Order and more to look for');
  await page.getByRole('combobox', { name: 'Archived ones' }).selectOption({ label: 'alone' });
  await expect(row(page, NAME)).toContainText('Archived.');
  const open = page.getByRole('button', { name: `Open ${NAME}`, exact: true });
  if ((await row(page, NAME).getAttribute('aria-current')) === null) await open.click();
  await expect(page.getByRole('textbox', { name: 'Number or name', exact: true })).toHaveValue('No. 12');
  await expect(page.getByRole('textbox', { name: 'Notes', exact: true })).toHaveValue('Thin top.\nTap tone near G.');
  const small = page.getByRole('button', { name: 'Photo 1 of 1, show it large' }).locator('img');
  await expect(small).toHaveJSProperty('complete', true);
  expect(await small.evaluate((image: HTMLImageElement) => image.naturalWidth)).toBeGreaterThan(100);
});

test('by keyboard alone: an instrument is made, told its wood, and its model opened again', async ({ page }) => {
  await openRecord(page);
  await page.getByRole('tab', { name: 'Record' }).focus();
  await tabTo(page, 'Number or name of a new instrument');
  await page.keyboard.type('No. 7');
  await page.keyboard.press('Enter');
  await expect(row(page, 'Wren 14, No. 7')).toBeVisible();
  await page.getByRole('tab', { name: 'Record' }).focus();
  await tabTo(page, 'Add');
  await page.keyboard.press('Enter');
  await page.keyboard.type('Picea abies');
  await page.keyboard.press('Tab');
  await page.keyboard.type('Val di Fiemme');
  await page.keyboard.press('Enter');
  await tabTo(page, 'Search the library');
  await page.keyboard.type('fiemme');
  await expect(rows(page)).toHaveCount(1);
  await page.keyboard.press('Control+A');
  await page.keyboard.press('Delete');
  await tabTo(page, 'Open Wren 14');
  await page.keyboard.press('Enter');
  await expect(page.getByRole('heading', { name: 'This model', exact: true })).toBeVisible();
});

test('a version by name is kept, compared and restored as one step', async ({ page }) => {
  await openRecord(page);
  await type(page, 'Name', 'Wren 14 A');
  const versions = page.getByRole('list', { name: 'Versions' });
  await expect(versions.getByRole('listitem').first()).toBeVisible();
  await page.getByLabel('Name of the present state').fill('as drawn');
  await page.getByRole('button', { name: 'Keep it', exact: true }).click();
  const named = versions.getByRole('listitem').filter({ hasText: 'as drawn' });
  await expect(named).toContainText('as it is now');
  await type(page, 'Name', 'Wren 14 B');
  await expect(named).toContainText('1 thing differs from now');
  await page.getByRole('button', { name: 'Compare as drawn with now' }).click();
  const dialog = page.getByRole('dialog', { name: 'as drawn against Now' });
  await expect(dialog.getByRole('row', { name: /^Name Wren/ })).toContainText('Wren 14 B');
  await dialog.getByRole('button', { name: 'Close' }).click();
  await page.getByRole('button', { name: 'Restore as drawn' }).click();
  const name = page.getByRole('textbox', { name: 'Name', exact: true });
  await expect(name).toHaveValue('Wren 14 A');
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(name).toHaveValue('Wren 14 B');
});

test('the whole library goes to a file, and comes from it in another browser', async ({ page, browser }) => {
  await openRecord(page);
  await makeInstrument(page, 'No. 12');
  const download = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Whole library to a file' }).click();
  const bytes = await readFile(await (await download).path());

  const other = await (await browser.newContext()).newPage();
  await openRecord(other);
  const load = async (): Promise<void> => {
    const chooser = other.waitForEvent('filechooser');
    await other.getByRole('button', { name: 'Library from a file' }).click();
    await (await chooser).setFiles({ name: 'library.json', mimeType: 'application/json', buffer: bytes });
  };
  await load();
  await expect(statusOf(other)).toContainText('2 were added');
  await expect(row(other, NAME)).toBeVisible();
  await load();
  await expect(statusOf(other)).toContainText('2 were here already, just the same');
  await other.context().close();
});

test('deleting asks first, and what is in hand cannot be deleted', async ({ page }) => {
  await openRecord(page);
  await makeInstrument(page, 'No. 12');
  await page.getByRole('button', { name: `More for ${NAME}` }).click();
  await expect(row(page, NAME).getByRole('button', { name: 'Delete …' })).toHaveAttribute('aria-disabled', 'true');
  await page.getByRole('button', { name: 'Open Wren 14', exact: true }).click();
  await row(page, NAME).getByRole('button', { name: 'Delete …' }).click();
  const dialog = page.getByRole('dialog', { name: `Delete ${NAME}?` });
  await expect(dialog).toContainText('Undo does not bring it back');
  await dialog.getByRole('button', { name: 'Keep it' }).click();
  await expect(row(page, NAME)).toBeVisible();
  await row(page, NAME).getByRole('button', { name: 'Delete …' }).click();
  await dialog.getByRole('button', { name: `Delete ${NAME}` }).click();
  await expect(row(page, NAME)).toHaveCount(0);
  await expect(statusOf(page)).toHaveText(`Deleted ${NAME}`);
});

test('a first start says how to begin, once', async ({ page }) => {
  await openWorkbench(page);
  const strip = page.getByRole('complementary', { name: 'How to begin' });
  await expect(strip).toContainText('Wren 14 is a demo');
  await strip.getByRole('button', { name: 'Begin my own' }).click();
  await page.getByRole('dialog').getByRole('button', { name: 'Classical guitar' }).click();
  await expect(page.getByRole('textbox', { name: 'Name', exact: true })).toHaveValue('New classical guitar');
  await expect(strip).toBeHidden();
  await page.reload();
  await expect(page.locator('canvas')).toBeVisible();
  await expect(strip).toBeHidden();
});

for (const colorScheme of ['light', 'dark'] as const)
  test(`Record has no fault that axe finds, ${colorScheme}`, async ({ page }) => {
    await page.emulateMedia({ colorScheme });
    await openRecord(page);
    await makeInstrument(page, 'No. 12');
    await addPhoto(page, await photoWithPlace(page));
    await page.getByRole('button', { name: 'Add', exact: true }).click();
    for (const summary of ['Order and more to look for', 'Why species and origin', 'How to keep it safe'])
      await openMore(page, summary);
    await page.getByRole('button', { name: `More for ${NAME}` }).click();
    await page.getByRole('checkbox', { name: 'Compare Wren 14', exact: true }).check();
    expect(await violations(page)).toEqual([]);
    await page.getByRole('button', { name: 'Compare with what is in hand' }).click();
    await expect(page.getByRole('dialog').getByRole('table')).toBeVisible();
    expect(await violations(page)).toEqual([]);
    await page.keyboard.press('Escape');
    await page.getByRole('button', { name: 'Photo 1 of 1, show it large' }).click();
    expect(await violations(page)).toEqual([]);
  });

test('a telephone shows the library in one column with nothing to scroll sideways', async ({ page }) => {
  await page.setViewportSize({ width: 360, height: 740 });
  await openRecord(page);
  await makeInstrument(page, 'No. 12');
  await page.getByRole('button', { name: `More for ${NAME}` }).click();
  const wide = await page
    .locator('.station, .library')
    .evaluateAll((parts) => parts.filter((part) => part.scrollWidth > part.clientWidth).map((part) => part.className));
  expect(wide).toEqual([]);
});
