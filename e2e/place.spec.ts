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
    await expect(rounds.getByRole('listitem').last()).toContainText(
      /0\.(79|80) mm too far to the bass, 0\.(49|50) mm too far toward the tail/,
    );

    await test.step('an accepted round is still told of, is reopened, and one of them is deleted', async () => {
      await expect(answer(page)).toContainText('Accepted. The next reading begins a new round.');
      await rounds.getByRole('button', { name: /^Reopen the round taped/ }).click();
      await expect(rounds.getByRole('listitem').first()).toContainText('in hand');
      await rounds.getByRole('button', { name: /^Go on with the round taped/ }).click();
      await expect(answer(page).getByRole('heading', { name: 'Move it' })).toBeVisible();
      await expect(page.locator('.read-chip')).toHaveCount(LINES.length);
      await rounds
        .getByRole('button', { name: /^Delete the round taped/ })
        .last()
        .click();
      await expect(rounds.getByRole('listitem')).toHaveCount(1);
    });
  });

test('the same by the keyboard alone', async ({ page }) => {
  await openWorkbench(page);
  await page.getByRole('tab', { name: 'Measure' }).focus();
  for (let press = 0; press < 3; press += 1) await page.keyboard.press('ArrowRight');
  await expect(page.getByRole('tab', { name: 'Place' })).toBeFocused();
  await expect(answer(page)).toContainText('Type the first reading');
  await expect(boxOf(page, LINES[0].label)).toBeVisible();
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
  await tabTo(page, 'Readings', 'Shift+Tab');
  for (const label of inOrder) {
    const line = lines.find((each) => each.label === label);
    if (line !== undefined) await typeOver(page, label, line.placed);
  }
  await expect(answer(page).getByRole('heading', { name: 'It sits well: leave it' })).toBeVisible();
  const accept = page.getByRole('button', { name: /^Accept this place, the round taped/ }).first();
  await tabTo(page, (await accept.getAttribute('aria-label')) ?? '');
  await page.keyboard.press('Enter');
  await expect(statusOf(page)).toHaveText('Place accepted');
});

test('readings that quarrel are pointed at, and a tool that was wrong is put right', async ({ page }) => {
  await opened(page);
  const [margin] = LINES;
  for (const text of ['6.22', '6.22', '7.22']) {
    await boxOf(page, margin.label).fill(text);
    await boxOf(page, margin.label).press('Enter');
  }
  // Three readings of a calliper, ± 0.05 each: the third lies 1 mm off two that agree.
  await expect(answer(page).getByRole('heading', { name: 'One reading does not go with the rest' })).toBeVisible();
  await expect(page.locator('.read-chip[data-quarrel]')).toHaveText(/^7\.22 mm/);
  await page
    .getByRole('combobox', { name: `Tool for ${margin.label}` })
    .selectOption({ label: 'Rule, 0.5 mm, ±0.25 mm' });
  // Of ± 0.25 it is (2/3) / (0.25 · √(2/3)) = 3.27 times its spread off, still too far; of ± 0.5 it is 1.63.
  await expect(page.locator('.read-chip[data-quarrel]')).toHaveText(/^7\.22 mm/);
  await page.locator('summary', { hasText: 'Doubt of one reading, by tool' }).click();
  await boxOf(page, 'Steel rule, half millimetres').fill('0.5');
  await boxOf(page, 'Steel rule, half millimetres').press('Enter');
  const tool = page.getByRole('combobox', { name: `Tool for ${margin.label}` });
  await tool.selectOption({ label: 'Calliper, ±0.05 mm' });
  await tool.selectOption({ label: 'Rule, 0.5 mm, ±0.50 mm' });
  await expect(page.locator('.read-chip[data-quarrel]')).toHaveCount(0);
  await expect(answer(page).getByRole('heading', { name: 'Not all of it is read yet' })).toBeVisible();
  await expect(page.locator('.keep-line')).toHaveText(/^Kept/);
  await page.reload();
  await page.getByRole('tab', { name: 'Place' }).click();
  await expect(page.getByRole('combobox', { name: `Tool for ${margin.label}` })).toHaveValue('rule');
});

test('a press on a number in the picture leads to its box', async ({ page }) => {
  await opened(page);
  await page.locator('.read-spot').nth(2).click();
  const third = await page.locator('.read-line label').nth(2).textContent();
  await expect(boxOf(page, third ?? '')).toBeFocused();
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
    .getByRole('button', { name: /^Take out/ })
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

for (const hand of ['Right', 'Left'] as const)
  test(`by touch, ${hand.toLowerCase()} hand: diagnosed, a reading taken out and in again, moved, accepted`, async ({
    browser,
  }) => {
    const context = await browser.newContext({ hasTouch: true, viewport: { width: 820, height: 1180 } });
    const page = await context.newPage();
    await opened(page);
    await page
      .locator('label')
      .filter({ hasText: new RegExp(`^${hand}$`) })
      .tap();
    // Leaving a box for the next one takes what was typed.
    const readAll = async (which: 'taped' | 'placed'): Promise<void> => {
      for (const line of LINES) {
        await boxOf(page, line.label).tap();
        await boxOf(page, line.label).fill(line[which]);
      }
      await boxOf(page, LINES[0].label).tap();
      await expect(page.locator('.read-chip')).toHaveCount(LINES.length);
    };
    await readAll('taped');
    await expectOff(page);
    await page.getByRole('button', { name: /^Take out 6\.22/ }).tap();
    await expect(page.locator('.read-chip')).toHaveCount(LINES.length - 1);
    await boxOf(page, LINES[0].label).tap();
    await boxOf(page, LINES[0].label).fill(LINES[0].taped);
    await boxOf(page, LINES[1].label).tap();
    await expectOff(page);
    await page.getByRole('button', { name: 'Moved it: read again' }).tap();
    await expect(answer(page)).toContainText('Type the first reading');
    await readAll('placed');
    await expect(answer(page).getByRole('heading', { name: 'It sits well: leave it' })).toBeVisible();
    await page
      .getByRole('button', { name: /^Accept this place/ })
      .first()
      .tap();
    await expect(statusOf(page)).toHaveText('Place accepted');
    await context.close();
  });

test('a narrow screen has nothing to scroll sideways, and the answer stands by the readings', async ({ page }) => {
  await page.setViewportSize({ width: 360, height: 760 });
  await opened(page);
  for (const { label, taped } of LINES) {
    await boxOf(page, label).fill(taped);
    await boxOf(page, label).press('Enter');
  }
  await expectOff(page);
  const { scrollWidth, clientWidth } = await page.evaluate(() => {
    const { scrollWidth, clientWidth } = document.documentElement;
    return { scrollWidth, clientWidth };
  });
  expect(scrollWidth).toBe(clientWidth);
  const [again, heading] = await Promise.all([
    page.getByRole('button', { name: 'Moved it: read again' }).boundingBox(),
    answer(page).getByRole('heading', { name: 'Move it' }).boundingBox(),
  ]);
  expect((heading?.y ?? 0) - (again?.y ?? 0)).toBeLessThan(120);
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
