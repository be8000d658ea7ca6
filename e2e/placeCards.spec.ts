import AxeBuilder from '@axe-core/playwright';
import { expect, type Locator, type Page, test } from '@playwright/test';
import { tabTo, typeOver } from './keys';
import { alertOf, openMore, openWorkbench, rowsOf, type } from './workbench';

const card = (page: Page, name: string): Locator => page.getByRole('region', { name, exact: true });
const budget = (page: Page): Locator => card(page, 'Before wood is cut');
const pins = (page: Page): Locator => card(page, 'Locating pins');
const finish = (page: Page): Locator => card(page, 'Finish under the bridge');
const BUDGET = 'What each does by itself, ± for k = 2; the bar: its share of the error in pitch';

const openPlace = async (page: Page): Promise<void> => {
  await page.getByRole('tab', { name: 'Place' }).click();
  await expect(budget(page)).toBeVisible();
};

/** A row of the budget: along, cents, aside, turn. Its header has the share beside its name. */
const rowOf = async (page: Page, cause: string): Promise<readonly string[]> => {
  const rows = await rowsOf(page, BUDGET);
  return Object.entries(rows).find(([name]) => name.startsWith(cause))?.[1] ?? [];
};

test('what the work may carry the bridge by follows each size that is typed', async ({ page }) => {
  await openWorkbench(page);
  await openPlace(page);
  // Two ends read to 0.25: 2 · 0.25/√2 = 0.354 along and aside; turned 2 · 0.25 · √2/152.4 = 0.00464, 0.27°.
  expect(await rowOf(page, 'Reading the rule')).toEqual(['0.35', expect.any(String), '0.35', '0.27°']);
  await expect(budget(page)).toContainText('Improve first: reading the rule.');
  await openMore(page, 'How large each error is at your bench');
  await type(page, 'Reading the rule', '0.05');
  expect(await rowOf(page, 'Reading the rule')).toEqual(['0.07', expect.any(String), '0.07', '0.05°']);
  await expect(budget(page)).toContainText('Improve first: template cut off its line.');

  // Only the eye is left: 2 · 0.1 along, nothing aside and nothing turned; 0.2 mm · 1200/ln 2/632 = 0.55 cents.
  const others = ['Reading the rule', 'Square out of square', 'Template cut off its line', 'Paper’s stretch'];
  for (const name of [...others, 'Print factor', 'Creep of the tape', 'Wander of the drill'])
    await type(page, name, '0');
  await type(page, 'Locating pin loose in its hole', '0');
  expect(await rowOf(page, 'All together')).toEqual(['0.20', '0.5', '0.00', '0.00°']);
  await expect(budget(page)).toContainText('Fore and aft ±0.20 mm, ±0.5 cents');
  await type(page, 'Looking aslant at the rule', '0');
  expect(await rowOf(page, 'All together')).toEqual(['0.00', '0.0', '0.00', '0.00°']);
  await expect(budget(page)).not.toContainText('Improve first');

  await type(page, 'Reading the rule', 'much');
  await expect(budget(page)).toContainText('“much” is not a number');
  await type(page, 'Reading the rule', '3');
  await expect(budget(page)).toContainText('goes from 0 to 2');
  await type(page, 'Reading the rule', '');
  expect(await rowOf(page, 'Reading the rule')).toEqual(['0.35', expect.any(String), '0.35', '0.27°']);
  await expect(alertOf(page)).toBeEmpty();
});

test('the work stands beside what the strings want', async ({ page }) => {
  await openWorkbench(page);
  await openPlace(page);
  const figure = budget(page).getByRole('figure');
  await expect(figure).toContainText('The work: ±0.62 mm');
  await expect(figure).toContainText('The strings’ own doubt is the larger');
  await openMore(page, 'How large each error is at your bench');
  await type(page, 'Reading the rule', '1');
  await expect(figure).toContainText('The work is the larger of the two');
});

test('the depth stop adds up what is known, and a loose pin tells what it lets the bridge do', async ({ page }) => {
  await openWorkbench(page);
  await page.getByRole('tab', { name: 'Draw' }).click();
  await page.getByRole('checkbox', { name: 'Check what lies beneath the top' }).check();
  await page.getByRole('button', { name: 'X-braced steel-string' }).click();
  await openPlace(page);
  await expect(pins(page)).toContainText('1/16 in (0.00), #52 (+0.03), 1.6 mm (+0.01)');
  // The braces are a guess from a set, and the card says so first.
  await expect(pins(page)).toContainText('Not found on this instrument yet');
  await expect(pins(page).getByRole('listitem').filter({ hasText: 'brace' }).first()).toBeVisible();
  const stop = async (): Promise<string> =>
    (await rowsOf(page, 'Depth stop, full width of the drill'))['Stop at']?.[0] ?? '';
  expect(await stop()).toContain('and what is missing');
  await type(page, 'Thickness of the top', '2.8');
  // 3.025 of bridge under the floor of a slot of 6.5, the top, a plate of 0.1 in, 1 into the block: 9.365.
  expect((await rowsOf(page, 'Depth stop, full width of the drill'))['Bridge plate']).toEqual(['2.54 mm']);
  expect(await stop()).toBe('9.37 mm');

  await type(page, 'Locating pin loose in its hole', '0.2');
  // 0.2/2 = 0.1 either way; 0.2/73.0 = 0.00274 = 0.157°.
  await expect(pins(page)).toContainText('move ±0.10 mm, ±0.3 cents, and turn ±0.16°');
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(pins(page)).toContainText('move ±0.05 mm');
});

test('finish left under the rim is held against the film, the rebate and the sources', async ({ page }) => {
  await openWorkbench(page);
  await openPlace(page);
  await expect(finish(page)).toContainText('Glued to the very edge');
  const costs = await rowsOf(page, 'What finish left all round takes of this bridge’s glue area');
  const percent = Object.values(costs).map(([, share]) => Number.parseInt(share ?? '', 10));
  expect(percent).toHaveLength(3);
  expect(percent).toEqual([...percent].sort((one, other) => one - other));

  await type(page, 'Finish left under the rim', '1/16 in');
  await expect(finish(page)).toContainText('left under the rim with no rebate');
  const checks = page.getByRole('table', { name: 'Design checks' });
  await expect(checks).toContainText('is usual');
  await finish(page)
    .getByRole('checkbox', { name: /^Rebate under the rim/ })
    .check();
  await expect(finish(page)).toContainText('Measure the film');
  await expect(checks).toContainText('in a rebate');
  await type(page, 'Thickness of the finish film', '0.3');
  // The rebate was cut for a film of 0.15: 0.2 deep. 0.3 and 0.05 make 0.35.
  await expect(finish(page)).toContainText('The rebate is 0.20 mm deep: the bridge would sit on the film');
  await expect(finish(page)).toContainText('A rebate of 0.35 mm clears it');
  await type(page, 'Rebate under the rim, depth', '0.35');
  await expect(finish(page)).toContainText('0.35 mm against 0.35 mm: as it should be');
  await type(page, 'Rebate under the rim, depth', '0.5');
  await expect(finish(page)).toContainText('over 0.40 mm it shows as a gap');
  await expect(alertOf(page)).toBeEmpty();
});

test('a rebate by keyboard alone, the left-handed figures the same', async ({ page }) => {
  await openWorkbench(page);
  await openPlace(page);
  const right = await rowsOf(page, BUDGET);
  await page.getByRole('radiogroup', { name: 'Hand' }).getByRole('radio', { name: 'Left' }).check();
  expect(await rowsOf(page, BUDGET)).toEqual(right);
  await tabTo(page, 'Finish');
  await page.keyboard.press('Enter');
  await typeOver(page, 'Finish left under the rim', '0.6');
  await typeOver(page, 'Thickness of the finish film', '0.15');
  await tabTo(page, 'Rebate under the rim, so that the film can stay there');
  await page.keyboard.press('Space');
  await expect(finish(page)).toContainText('0.20 mm against 0.20 mm: as it should be');
  await typeOver(page, 'Rebate under the rim, width', '0.4');
  await expect(finish(page)).toContainText('The rebate is 0.40 mm wide, the rim 0.60 mm');
});

test('in inches the figures come in thousandths', async ({ page }) => {
  await openWorkbench(page);
  await page.getByRole('radiogroup', { name: 'Units' }).getByRole('radio', { name: 'in', exact: true }).check();
  await openPlace(page);
  // 0.354 mm is 0.0139 in; a drill of 1/16 in is 0.0625, half a step rounded away from zero.
  expect((await rowOf(page, 'Reading the rule'))[0]).toBe('0.014');
  await expect(pins(page)).toContainText('2 holes of 0.063 in');
});

for (const colorScheme of ['light', 'dark'] as const)
  for (const width of [1280, 360])
    test(`the cards have no fault that axe finds, ${colorScheme}, ${width} wide`, async ({ page }) => {
      await page.emulateMedia({ colorScheme });
      await page.setViewportSize({ width, height: 800 });
      await openWorkbench(page);
      await openPlace(page);
      await type(page, 'Finish left under the rim', '2');
      await finish(page)
        .getByRole('checkbox', { name: /^Rebate under the rim/ })
        .check();
      for (const summary of [
        'How large each error is at your bench',
        'How they are put together',
        'Limits, with their sources',
      ])
        await openMore(page, summary);
      await type(page, 'Reading the rule', 'much');
      const { violations } = await new AxeBuilder({ page }).include('.field-groups').analyze();
      expect(
        violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html.slice(0, 120)).join(' | ')}`),
      ).toEqual([]);
      const sideways = await page.evaluate(
        () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
      );
      expect(sideways).toBeLessThanOrEqual(0);
      const small = await page.locator('.field-groups').evaluate((groups) =>
        [...groups.querySelectorAll('input, button, summary, select')]
          .filter((each) => each.getClientRects().length > 0)
          .filter((each) => {
            const { width: wide, height } = (each.closest('label') ?? each).getBoundingClientRect();
            return wide < 24 || height < 24;
          })
          .map((each) => each.outerHTML.slice(0, 120)),
      );
      expect(small).toEqual([]);
    });
