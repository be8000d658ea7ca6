import AxeBuilder from '@axe-core/playwright';
import { expect, type Page, test } from '@playwright/test';
import { openWorkbench } from './workbench';

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
