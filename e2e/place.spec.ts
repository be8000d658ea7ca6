import AxeBuilder from '@axe-core/playwright';
import { expect, type Page, test } from '@playwright/test';
import { tabTo, typeOver } from './keys';
import { openWorkbench, statusOf } from './workbench';

/**
 * What is read on the demo's bridge taped 0.8 mm to the bass, 0.5 mm toward the tail and turned 0.3°, the treble wing toward
 * the tail, and then in its place, mm: by test/reference/taped_readings.py.
 */
const LINES = [
  { label: 'Edge to string at the last fret, treble', taped: '6.22', placed: '5.68' },
  { label: 'Edge to string at the last fret, bass', taped: '4.80', placed: '5.34' },
  { label: 'Octave stick, string 1, treble: over or under', taped: '0.61', placed: '0' },
  { label: 'Octave stick, string 6, bass: over or under', taped: '0.33', placed: '0' },
  { label: '12th fret ends to front corners, same side: bass longer by', taped: '-0.55', placed: '0' },
] as const;

const answer = (page: Page) => page.getByRole('region', { name: 'Place', exact: true });
const boxOf = (page: Page, label: string) => page.getByRole('textbox', { name: label, exact: true });
const rowOf = (page: Page, name: string) =>
  answer(page)
    .getByRole('row')
    .filter({ has: page.getByRole('rowheader', { name: new RegExp(`^${name}`) }) });

const opened = async (page: Page): Promise<void> => {
  await openWorkbench(page);
  await page.getByRole('tab', { name: 'Place' }).click();
  await expect(answer(page)).toContainText('Type the first reading');
};

const expectOff = async (page: Page): Promise<void> => {
  await expect(answer(page).getByRole('heading', { name: 'Move it' })).toBeVisible();
  await expect(rowOf(page, 'Sideways')).toContainText(/too far to the bass0\.(79|80|81) mm/);
  await expect(rowOf(page, 'Fore and aft')).toContainText(/too far toward the tail0\.(49|50|51) mm/);
  await expect(rowOf(page, 'Turned')).toContainText(/treble wing toward the tail0\.(29|30|31)°/);
  const moves = answer(page).locator('.place-moves li');
  await expect(moves.first()).toHaveText(/^treble wing 0\.8 mm toward the nut, bass corner still$/);
  await expect(moves.last()).toHaveText(/^all of it 0\.[78] mm to the treble$/);
};

for (const hand of ['Right', 'Left'] as const)
  test(`a bridge taped off its place is diagnosed, moved, read again and accepted, ${hand.toLowerCase()} hand`, async ({
    page,
  }) => {
    await opened(page);
    await page.getByRole('radio', { name: hand, exact: true }).check({ force: true });
    for (const { label, taped } of LINES) {
      await boxOf(page, label).fill(taped);
      await boxOf(page, label).press('Enter');
    }
    await expectOff(page);
    await expect(answer(page).getByRole('img')).toHaveAccessibleName(new RegExp(`${hand.toLowerCase()} hand`));

    await page.getByRole('button', { name: 'Moved it: read again' }).click();
    await expect(answer(page)).toContainText('Type the first reading');
    for (const { label, placed } of LINES) {
      await boxOf(page, label).fill(placed);
      await boxOf(page, label).press('Enter');
    }
    await expect(answer(page).getByRole('heading', { name: 'It sits well: leave it' })).toBeVisible();
    const rounds = page
      .getByRole('list')
      .filter({ has: page.getByText('taped', { exact: true }) })
      .last();
    await rounds.getByRole('button', { name: 'Accept this place' }).first().click();
    await expect(statusOf(page)).toHaveText('Place accepted');
    await expect(rounds.getByRole('listitem').first()).toContainText('Accepted.');
    await expect(rounds.getByRole('listitem').last()).toContainText(/0\.8 mm to the bass, 0\.5 mm toward the tail/);
  });

test('the same by the keyboard alone', async ({ page }) => {
  await openWorkbench(page);
  await page.getByRole('tab', { name: 'Measure' }).focus();
  for (let press = 0; press < 3; press += 1) await page.keyboard.press('ArrowRight');
  await expect(page.getByRole('tab', { name: 'Place' })).toBeFocused();
  await expect(answer(page)).toContainText('Type the first reading');
  const inOrder = await page.locator('.read-line label').allTextContents();
  const lines = LINES.filter(({ label }) => inOrder.includes(label));
  expect(lines).toHaveLength(LINES.length);
  for (const label of inOrder) {
    const line = lines.find((each) => each.label === label);
    if (line !== undefined) await typeOver(page, label, line.taped);
  }
  await expectOff(page);
  await tabTo(page, 'Moved it: read again');
  await page.keyboard.press('Enter');
  await expect(answer(page)).toContainText('Type the first reading');
});

test('wrong text has its message beside the box, and the answer stays as it was', async ({ page }) => {
  await opened(page);
  const [margin] = LINES;
  const line = page.locator('.read-line').filter({ has: boxOf(page, margin.label) });
  await boxOf(page, margin.label).fill('about six');
  await boxOf(page, margin.label).press('Enter');
  await expect(line.locator('.field-wrong')).toBeVisible();
  await boxOf(page, margin.label).fill('62.2');
  await boxOf(page, margin.label).press('Enter');
  await expect(line.locator('.field-wrong')).toContainText('another line, or a slip? Expected about 5.7 mm.');
  await expect(answer(page)).toContainText('Type the first reading');
  await boxOf(page, margin.label).fill(margin.taped);
  await boxOf(page, margin.label).press('Enter');
  await expect(line.locator('.field-wrong')).toHaveCount(0);
  await expect(answer(page)).toContainText('Not all of it is read yet');
  await expect(answer(page)).toContainText(/Best read next/);
  await page
    .getByRole('button', { name: /^Remove|^Take out/ })
    .first()
    .click();
  await expect(answer(page)).toContainText('Type the first reading');
});

test('outer strings found in tune over a loose bridge place the saddle', async ({ page }) => {
  await opened(page);
  await page.locator('summary', { hasText: 'Found in tune before anything is taped' }).click();
  await boxOf(page, '12th fret to where string 1 breaks, treble').fill('318.0');
  await boxOf(page, '12th fret to where string 1 breaks, treble').press('Enter');
  await boxOf(page, '12th fret to where string 6 breaks, bass').fill('321.0');
  await boxOf(page, '12th fret to where string 6 breaks, bass').press('Enter');
  // atan(3 / 54) = 3.18°.
  await expect(page.getByText(/Slant 3\.18°/)).toBeVisible();
  await page.getByRole('button', { name: 'Place the saddle there' }).click();
  // Midway between 318 and 321 from the 12th fret at 316: 635.5 from the nut.
  await expect(
    page.getByRole('table', { name: 'Placement numbers' }).getByRole('row').filter({ hasText: 'Break point, centre' }),
  ).toContainText('635.5');
});

test('by touch: a reading goes in and out with fingers alone', async ({ browser }) => {
  const context = await browser.newContext({ hasTouch: true, viewport: { width: 820, height: 1180 } });
  const page = await context.newPage();
  await opened(page);
  const [margin] = LINES;
  await boxOf(page, margin.label).tap();
  await boxOf(page, margin.label).fill(margin.taped);
  await boxOf(page, '12th fret ends to front corners, same side: bass longer by').tap();
  await expect(page.locator('.read-taken li')).toHaveCount(1);
  await page.getByRole('button', { name: /^Take out 6/ }).tap();
  await expect(page.locator('.read-taken li')).toHaveCount(0);
  await context.close();
});

for (const scheme of ['light', 'dark'] as const)
  test(`Place with readings and everything open has no fault that axe finds, ${scheme}`, async ({ page }) => {
    await page.emulateMedia({ colorScheme: scheme });
    await opened(page);
    for (const { label, taped } of LINES) {
      await boxOf(page, label).fill(taped);
      await boxOf(page, label).press('Enter');
    }
    for (const summary of await page.locator('.field-groups summary').all()) await summary.click();
    const { violations } = await new AxeBuilder({ page }).analyze();
    expect(violations.map(({ id, nodes }) => [id, nodes.map(({ target }) => target)])).toEqual([]);
  });
