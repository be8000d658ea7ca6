import AxeBuilder from '@axe-core/playwright';
import { expect, type Page, test } from '@playwright/test';
import { tabTo, typeOver } from './keys';
import { openWorkbench, showHundredths, statusOf } from './workbench';

const typedIn = (page: Page): Promise<string> => page.locator(':focus').inputValue();

/** The demo on Draw, its outline turned into nodes, by keys alone. */
const drawFreely = async (page: Page): Promise<void> => {
  await openWorkbench(page);
  await showHundredths(page);
  await tabTo(page, 'Measure', 'Shift+Tab');
  await page.keyboard.press('ArrowDown');
  await expect(page.getByRole('tab', { name: 'Draw' })).toBeFocused();
  await expect(page.getByRole('button', { name: 'Edit the outline freely' })).toBeVisible();
  await tabTo(page, 'Edit the outline freely');
  await page.keyboard.press('Enter');
  await expect(statusOf(page)).toHaveText('Edit the outline freely');
};

test('an outline is edited node by node with the keyboard alone', async ({ page }) => {
  await drawFreely(page);
  const { keyboard } = page;

  await test.step('a node is reached in the list and brought to an exact place', async () => {
    const summary = (await page.getByText(/^Nodes of the outline/).textContent()) ?? '';
    await tabTo(page, summary);
    await keyboard.press('Enter');
    const name = (await page.getByRole('button', { name: /^Node 3,/ }).getAttribute('aria-label')) ?? '';
    await tabTo(page, name);
    await keyboard.press('Enter');
    await expect(page.locator(':focus')).toHaveAttribute('aria-pressed', 'true');
    await tabTo(page, 'Node 3, across', 'Shift+Tab');
    await keyboard.press('Shift+Tab');
    await typeOver(page, 'Node 3, across', '70.25');
    await typeOver(page, 'Node 3, along', '1/4 in');
    await expect(statusOf(page)).toHaveText('Move node 3');
    await tabTo(page, 'Node 3, along', 'Shift+Tab');
    // 25.4 / 4
    expect(await typedIn(page)).toBe('6.35');
    await tabTo(page, 'Node 3, across', 'Shift+Tab');
    expect(await typedIn(page)).toBe('70.25');
  });

  await test.step('what leads on becomes a true arc with a radius', async () => {
    await tabTo(page, 'To node 4 leads');
    await keyboard.type('a true');
    await expect(statusOf(page)).toContainText('a true arc');
    await typeOver(page, 'Radius of that arc', '120');
    await tabTo(page, 'Radius of that arc', 'Shift+Tab');
    expect(await typedIn(page)).toBe('120.0');
  });

  await test.step('nodes are added and deleted', async () => {
    const nodes = page.getByText(/^Nodes of the outline/);
    const before = await nodes.textContent();
    await tabTo(page, 'Add a node after it');
    await keyboard.press('Enter');
    await expect(nodes).not.toHaveText(before ?? '');
    await tabTo(page, 'Delete node 4', 'Tab');
    await keyboard.press('Enter');
    await expect(nodes).toHaveText(before ?? '');
  });

  await test.step('the whole is scaled, and its sides let go', async () => {
    await typeOver(page, 'Outline, over-all length', '150');
    await expect(statusOf(page)).toHaveText('Scale the outline to a length');
    await tabTo(page, 'Both sides alike about the centreline');
    await keyboard.press('Space');
    await expect(statusOf(page)).toHaveText('Each side by itself');
  });
});

test('parts are chosen, nudged in one step, and measured between with the keyboard alone', async ({ page }) => {
  await openWorkbench(page);
  await showHundredths(page);
  const { keyboard } = page;
  await tabTo(page, 'Measure', 'Shift+Tab');
  await keyboard.press('ArrowDown');
  await tabTo(page, 'Slot to pin row');
  const before = Number(await typedIn(page));

  await tabTo(page, 'Pin 2');
  await keyboard.press('Enter');
  await tabTo(page, 'View of the bridge', 'Shift+Tab');
  for (let press = 0; press < 4; press += 1) await keyboard.press('ArrowDown');
  await keyboard.press('Alt+ArrowUp');
  await expect(statusOf(page)).toHaveText('Move pin 2: 0.39 mm toward the tail');
  await tabTo(page, 'Slot to pin row', 'Shift+Tab');
  expect(Number(await typedIn(page))).toBeCloseTo(before + 0.39, 6);
  await keyboard.press('Control+Z');
  expect(Number(await typedIn(page))).toBeCloseTo(before, 6);

  await tabTo(page, 'Choose several');
  await keyboard.press('Space');
  await tabTo(page, 'Pin 5');
  await keyboard.press('Enter');
  await expect(page.getByText('Chosen: 2 parts')).toBeVisible();
  await tabTo(page, 'Distance between them', 'Shift+Tab');
  await keyboard.press('Enter');
  await expect(page.locator('.between-answer')).toContainText('straight');
  await tabTo(page, 'Pin it to the drawing');
  await keyboard.press('Enter');
  await expect(statusOf(page)).toContainText('Dimension pinned');
  await tabTo(page, 'Done measuring');
  await keyboard.press('Enter');
  await expect(page.locator('.pinned li')).toHaveCount(1);
});

for (const colorScheme of ['light', 'dark'] as const)
  test(`working by hand has no fault that axe finds, ${colorScheme}`, async ({ page }) => {
    await page.emulateMedia({ colorScheme });
    const faults = async (): Promise<readonly string[]> => {
      const { violations } = await new AxeBuilder({ page }).analyze();
      return violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html.slice(0, 120)).join(' | ')}`);
    };
    await openWorkbench(page);
    await page.getByRole('tab', { name: 'Draw' }).click();
    await page.getByRole('button', { name: 'Edit the outline freely' }).click();
    await page.getByText(/^Nodes of the outline/).click();
    await page.getByRole('button', { name: /^Node 3,/ }).click();
    expect(await faults()).toEqual([]);
    await page.getByRole('button', { name: /^Node 2,/ }).click({ modifiers: ['Shift'] });
    await page.getByRole('button', { name: 'Distance between them' }).click();
    await page.getByRole('button', { name: 'Pin it to the drawing' }).click();
    await expect(page.locator('.pinned li')).toHaveCount(1);
    expect(await faults()).toEqual([]);
    await page.getByRole('button', { name: 'Actual size', exact: true }).click();
    await expect(page.getByRole('dialog')).toBeVisible();
    expect(await faults()).toEqual([]);
  });
