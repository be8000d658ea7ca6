import AxeBuilder from '@axe-core/playwright';
import { expect, type Page, test } from '@playwright/test';
import { openWorkbench, type } from './workbench';

/** What axe finds, by all of its rules or by some. */
const violations = async (page: Page, rules?: string[]): Promise<readonly string[]> => {
  const axe = new AxeBuilder({ page });
  const { violations: found } = await (rules === undefined ? axe : axe.withRules(rules)).analyze();
  return found.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html.slice(0, 120)).join(' | ')}`);
};

/** Goes to a station and leaves a wrong text and a chosen part behind, so that those are looked at as well. */
const visit = async (page: Page, station: string): Promise<void> => {
  await page.getByRole('tab', { name: station }).click();
  if (station === 'Print') {
    await expect(page.getByRole('region', { name: 'Pages' }).getByRole('img').first()).toBeVisible();
    return;
  }
  await page.getByRole('button', { name: 'Slot', exact: true }).click();
  const box = page.getByRole('textbox').nth(2);
  await box.fill('abc');
  await box.press('Enter');
};

for (const station of ['Measure', 'Draw', 'Print']) {
  test(`${station} has no fault that axe finds`, async ({ page }) => {
    await openWorkbench(page);
    await visit(page, station);
    expect(await violations(page)).toEqual([]);
  });

  test(`${station} has contrast enough in the dark`, async ({ page }) => {
    await page.emulateMedia({ colorScheme: 'dark' });
    await openWorkbench(page);
    await visit(page, station);
    expect(await violations(page, ['color-contrast'])).toEqual([]);
  });
}

/** Opens everything that stands behind a "more", and what is in it in turn. */
const openAll = async (page: Page): Promise<void> => {
  const closed = page.locator('details.more:not([open]) > summary');
  while ((await closed.count()) > 0) await closed.first().click();
  await expect(page.getByText('One moment')).toHaveCount(0);
};

for (const colorScheme of ['light', 'dark'] as const)
  test(`Measure with everything open has no fault that axe finds, ${colorScheme}`, async ({ page }) => {
    await page.emulateMedia({ colorScheme });
    await openWorkbench(page);
    await type(page, 'Straightedge to bridge top', '-3');
    await page.getByRole('radio', { name: 'Strings', exact: true }).check();
    await openAll(page);
    await page.getByRole('combobox', { name: 'The nut' }).selectOption({ label: 'may move too' });
    await type(page, 'To the break point, treble', '640');
    await type(page, 'To the break point, bass', '641');
    await expect(page.getByText('Move the bridge:')).toBeVisible();
    for (const picture of ['Compensation', 'Cents by fret']) {
      await page.getByRole('radio', { name: picture, exact: true }).check();
      await expect(page.getByRole('region', { name: 'Pictures' }).getByRole('img')).toBeVisible();
      expect(await violations(page)).toEqual([]);
    }
  });

test('the dialog New has no fault that axe finds', async ({ page }) => {
  await openWorkbench(page);
  await page.getByRole('button', { name: 'New', exact: true }).click();
  await expect(page.getByRole('dialog')).toBeVisible();
  expect(await violations(page)).toEqual([]);
});

test('a telephone shows it all in one column with nothing to scroll sideways', async ({ page }) => {
  await page.setViewportSize({ width: 320, height: 640 });
  await openWorkbench(page);
  for (const station of ['Draw', 'Print', 'Measure']) {
    await page.getByRole('tab', { name: station }).click();
    const { scrollWidth, clientWidth } = await page.evaluate(() => {
      const { scrollWidth, clientWidth } = document.documentElement;
      return { scrollWidth, clientWidth };
    });
    expect(scrollWidth).toBeLessThanOrEqual(clientWidth);
  }
  expect(await violations(page)).toEqual([]);
});

test('every control is at least 24 pixels wide and high', async ({ page }) => {
  await openWorkbench(page);
  for (const station of ['Measure', 'Draw', 'Print']) {
    await page.getByRole('tab', { name: station }).click();
    const small = await page.locator('button, input, select, summary').evaluateAll((controls) =>
      controls
        .filter((control) => control.getClientRects().length > 0)
        .filter((control) => {
          const { width, height } = control.getBoundingClientRect();
          // A box with its words beside it in one label is as large as the label.
          const label = control.closest('label')?.getBoundingClientRect();
          return Math.max(width, label?.width ?? 0) < 24 || Math.max(height, label?.height ?? 0) < 24;
        })
        .map((control) => control.outerHTML.slice(0, 120)),
    );
    expect(small).toEqual([]);
  }
});
