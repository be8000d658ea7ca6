import AxeBuilder from '@axe-core/playwright';
import { expect, type Locator, type Page, test } from '@playwright/test';
import { begin, openWorkbench, type } from './workbench';

const check = (page: Page, words: string | RegExp): Locator =>
  page.getByRole('table', { name: 'Design checks' }).getByRole('row').filter({ hasText: words });
const place = (page: Page, part: string): Promise<string | null> =>
  page.getByRole('list', { name: 'Parts of the drawing' }).getByRole('button', { name: part }).getAttribute('title');
const braces = (page: Page): Locator => page.getByRole('table', { name: /^Braces/ });

/** A new steel-string, whose octave line lies 645 from the nut and whose top is looked beneath. */
const lookBeneath = async (page: Page): Promise<void> => {
  await openWorkbench(page);
  await begin(page, 'Steel-string guitar');
  await type(page, 'Scale length', '645');
  await page.getByRole('tab', { name: 'Draw' }).click();
  await page.getByRole('checkbox', { name: 'Check what lies beneath the top' }).check();
};

test('a brace is found, read from the octave line, and held against the pins', async ({ page }) => {
  await lookBeneath(page);
  await expect(check(page, 'No brace is entered')).toContainText('Look');
  await page.getByRole('button', { name: 'One brace more' }).click();
  await page.getByRole('button', { name: 'Change brace 1, brace 1' }).click();
  await type(page, 'Name, brace 1', 'X-leg, bass');

  await test.step('along and to the side, in the maker’s words', async () => {
    await type(page, 'First point along, brace 1', '57 ahead');
    await expect(page.getByText('57.0 mm ahead of the octave line; 588.0 mm from the nut.')).toBeVisible();
    await expect(page.getByRole('textbox', { name: 'First point along, brace 1' })).toHaveValue('-57.0');
    await type(page, 'First point to the side, brace 1', '0');
    await type(page, 'Second point along, brace 1', '43 behind');
    await type(page, 'Second point to the side, brace 1', '115 left');
    await expect(page.getByText('115.0 mm to the bass side, left as seen from the front.')).toBeVisible();
    await expect(page.getByRole('textbox', { name: 'Second point to the side, brace 1' })).toHaveValue('-115.0');
  });

  await test.step('read from the nut it is told anew and stays where it is', async () => {
    await page.getByRole('combobox', { name: 'Along is read from' }).selectOption('nut');
    await expect(page.getByRole('textbox', { name: 'First point along, brace 1' })).toHaveValue('588.0');
    await page.getByRole('combobox', { name: 'Along is read from' }).selectOption('octave');
  });

  await test.step('it clears the pins, once it was found', async () => {
    await expect(check(page, 'Not found on this instrument yet: X-leg, bass')).toContainText('Look');
    await page.getByRole('checkbox', { name: 'Found on this instrument', exact: true }).check();
    await expect(check(page, 'All that is entered beneath the top was found')).toContainText('Good');
    await expect(check(page, 'Pin holes clear the braces by')).toContainText('Good');
  });

  await test.step('a brace through an outer pin is wrong, and shown', async () => {
    await type(page, 'First point to the side, brace 1', '27 bass');
    await type(page, 'Second point to the side, brace 1', '27 bass');
    const wrong = check(page, /Pin 6 runs .* into X-leg, bass/);
    await expect(wrong).toContainText('Wrong');
    await wrong.getByRole('button', { name: 'Show' }).click();
    await page.getByRole('button', { name: 'Undo' }).click();
    await page.getByRole('button', { name: 'Undo' }).click();
    await expect(wrong).toHaveCount(0);
  });

  await test.step('a place that no top has is refused in the figures at hand', async () => {
    await type(page, 'First point along, brace 1', '9000');
    await expect(page.getByText('First point along, brace 1 goes from -595.0 mm to 555.0 mm.')).toBeVisible();
    await page.getByRole('textbox', { name: 'First point along, brace 1' }).press('Escape');
  });

  await test.step('its mirror image, and out again', async () => {
    await page.getByRole('button', { name: 'Add its mirror image' }).click();
    await expect(braces(page).getByRole('rowheader', { name: 'X-leg, treble not found yet' })).toBeVisible();
    await page.getByRole('button', { name: 'Take out X-leg, bass' }).click();
    await expect(braces(page).getByRole('rowheader')).toHaveCount(1);
  });
});

test('a converted right-handed body keeps its braces while the pins change side', async ({ page }) => {
  await lookBeneath(page);
  await page.getByRole('button', { name: 'X-braced steel-string' }).click();
  await expect(page.getByText('Source: from memory; plate thickness')).toBeVisible();
  const bassLeg = 'Brace 1, X-leg, bass';
  expect(await place(page, bassLeg)).toContain('to the bass side');
  await page.getByRole('combobox', { name: 'Body built for' }).selectOption({ label: 'the right hand' });
  await expect(check(page, 'Strings, bridge and body are all right-handed.')).toContainText('Good');
  await page.getByRole('radio', { name: 'Left' }).check({ force: true });
  // The leg stays on the left of the sheet, which now is the treble side; pin 1 goes over there.
  await expect.poll(() => place(page, bassLeg)).toContain('to the treble side');
  expect(await place(page, 'Pin 1')).toContain('to the treble side');
  await expect(check(page, 'Converted: the body was built right-handed')).toContainText('Look');
  await expect(page.getByText('Converted: built right-handed, strung left-handed.')).toBeVisible();
});

test('plate, soundhole, wire hole and cutaway are checked', async ({ page }) => {
  await lookBeneath(page);
  await page.getByRole('checkbox', { name: 'There is a bridge plate' }).check();
  await expect(check(page, 'Every pin hole lies over the plate')).toContainText('Good');
  await type(page, 'Plate, across its front', '30');
  await type(page, 'Plate, across its back', '30');
  await expect(check(page, /Beyond the plate: \d pin holes/)).toContainText('Wrong');
  await type(page, 'Plate, to the side', '40 treble');
  await page.getByRole('button', { name: 'Centre the plate under the pins' }).click();
  await expect(page.getByRole('textbox', { name: 'Plate, to the side' })).toHaveValue('0.0');

  await page.getByRole('checkbox', { name: 'There is a soundhole ahead of the bridge' }).check();
  await expect(page.getByRole('table', { name: /^Clamp’s reach/ }).getByRole('row')).toHaveCount(7);
  await expect(check(page, 'goes through the soundhole end first')).toContainText('Good');
  await type(page, 'Soundhole, across', '25');
  await expect(check(page, 'does not go through the soundhole')).toContainText('Look');

  await page.getByRole('checkbox', { name: 'A wire goes down through the slot' }).check();
  await expect(check(page, 'The wire hole lies inside the slot')).toContainText('Good');
  await type(page, 'Wire hole', '4');
  await expect(check(page, 'is wider than the slot')).toContainText('Wrong');

  await page.getByRole('checkbox', { name: 'The body has a cutaway' }).check();
  await expect(check(page, 'The cutaway ends')).toContainText('Good');
  await page.getByRole('combobox', { name: 'Cutaway side' }).selectOption('bass');
  await expect(check(page, 'The cutaway is on the bass side')).toContainText('Look');
  await page.getByRole('button', { name: 'Swap bass and treble' }).click();
  await expect(check(page, 'The cutaway is on the bass side')).toHaveCount(0);
});

test('keys alone reach the braces', async ({ page }) => {
  await lookBeneath(page);
  await page.getByRole('button', { name: 'Fan-braced classical' }).focus();
  await page.keyboard.press('Enter');
  await expect(braces(page).getByRole('rowheader')).toHaveCount(8);
  const change = page.getByRole('button', { name: 'Change fan 1, brace 2' });
  await change.focus();
  await page.keyboard.press('Enter');
  await page.keyboard.press('Tab');
  await expect(page.getByRole('textbox', { name: 'Name, brace 2' })).toBeFocused();
  await page.keyboard.press('ControlOrMeta+a');
  await page.keyboard.type('outer fan');
  await page.keyboard.press('Enter');
  await expect(braces(page).getByRole('rowheader', { name: 'outer fan not found yet' })).toBeVisible();
  const close = page.getByRole('button', { name: 'Close outer fan, brace 2' });
  await close.focus();
  await page.keyboard.press('Space');
  await expect(page.getByRole('textbox', { name: 'Name, brace 2' })).toHaveCount(0);
});

for (const colorScheme of ['light', 'dark'] as const)
  test(`what lies beneath has no fault that axe finds, ${colorScheme}`, async ({ page }) => {
    await page.emulateMedia({ colorScheme });
    await lookBeneath(page);
    await page.getByRole('button', { name: 'X-braced steel-string' }).click();
    await page.getByRole('button', { name: 'Change X-leg, bass, brace 1' }).click();
    await page.getByRole('checkbox', { name: 'A wire goes down through the slot' }).check();
    const { violations } = await new AxeBuilder({ page }).analyze();
    expect(violations.map(({ id }) => id)).toEqual([]);
  });
