import { expect, type Page, test } from '@playwright/test';
import { chosenNode } from './chosenNode';
import { alertOf, openWorkbench, showHundredths, statusOf } from './workbench';

const undo = (page: Page) => page.getByRole('button', { name: 'Undo', exact: true });
const box = (page: Page, name: string) => page.getByRole('textbox', { name, exact: true });
const figureOf = async (page: Page, name: string): Promise<number> => Number(await box(page, name).inputValue());

/** The demo on Draw, its outline turned into nodes. */
const drawFreely = async (page: Page, hand: 'Right' | 'Left' = 'Right'): Promise<void> => {
  await openWorkbench(page);
  await showHundredths(page);
  if (hand === 'Left') await page.getByRole('radio', { name: 'Left', exact: true }).check();
  await page.getByRole('tab', { name: 'Draw' }).click();
  await page.getByRole('button', { name: 'Edit the outline freely' }).click();
  await page.getByText(/^Nodes of the outline/).click();
};

const node = (page: Page, number: number) => page.getByRole('button', { name: new RegExp(`^Node ${number},`) });

/** Where a node is seen; it is the one node chosen. */
const choose = async (page: Page, number: number): Promise<{ x: number; y: number }> => {
  if ((await node(page, number).getAttribute('aria-pressed')) === 'false') await node(page, number).click();
  await expect(node(page, number)).toHaveAttribute('aria-pressed', 'true');
  // The frame in which it is painted may still be to come.
  await page.evaluate(() => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done))));
  await expect.poll(() => chosenNode(page)).not.toBeNull();
  return (await chosenNode(page)) ?? { x: 0, y: 0 };
};

const drag = async (page: Page, from: { x: number; y: number }, x: number, y: number): Promise<void> => {
  await page.mouse.move(from.x, from.y);
  await page.mouse.down();
  await page.mouse.move(from.x + x, from.y + y, { steps: 6 });
};

const zoomOf = async (page: Page): Promise<number> =>
  (Number.parseInt((await page.locator('.zoom').textContent()) ?? '', 10) / 100) * (96 / 25.4);

for (const hand of ['Right', 'Left'] as const)
  test(`a node follows the hand, ${hand.toLowerCase()}, as one step`, async ({ page }) => {
    await drawFreely(page, hand);
    const at = await choose(page, 3);
    const [x, y] = [await figureOf(page, 'Node 3, across'), await figureOf(page, 'Node 3, along')];
    await page.keyboard.down('Alt');
    await drag(page, at, 24, 12);
    await page.keyboard.up('Alt');
    await page.mouse.up();
    await expect(undo(page)).toHaveAttribute('title', 'Undo: Move node 3');
    const zoom = await zoomOf(page);
    const way = hand === 'Right' ? 1 : -1;
    // 24 px to the right is toward the treble for a right hand, toward the bass for a left one. The zoom is read as whole %.
    expect((await figureOf(page, 'Node 3, across')) - x).toBeCloseTo((way * 24) / zoom, 0);
    expect((await figureOf(page, 'Node 3, along')) - y).toBeCloseTo(12 / zoom, 0);
    await undo(page).click();
    expect(await figureOf(page, 'Node 3, across')).toBe(x);
    expect(await figureOf(page, 'Node 3, along')).toBe(y);
  });

test('a drag snaps, says why, and lets go where it is asked to', async ({ page }) => {
  await drawFreely(page);
  await page.getByRole('checkbox', { name: 'Both sides alike about the centreline' }).uncheck();
  const level = await figureOf(page, 'Bridge thickness');
  expect(level).toBeGreaterThan(0);
  const other = await choose(page, 2);
  const y = await figureOf(page, 'Node 2, along');
  const at = await choose(page, 4);
  await drag(page, at, 0, other.y - at.y + 3);
  await expect(statusOf(page)).toContainText(/level with node|front edge/);
  await page.mouse.up();
  expect(await figureOf(page, 'Node 4, along')).toBeCloseTo(y, 6);
  await undo(page).click();

  await page.getByRole('checkbox', { name: 'Snap' }).uncheck();
  const again = await choose(page, 4);
  await drag(page, again, 0, other.y - again.y + 3);
  await page.mouse.up();
  expect(Math.abs((await figureOf(page, 'Node 4, along')) - y)).toBeGreaterThan(0.2);
});

test('both sides stay alike until they are let go', async ({ page }) => {
  await drawFreely(page);
  const at = await choose(page, 3);
  const lengthOf = () => figureOf(page, 'Outline, over-all length');
  const before = await lengthOf();
  await page.keyboard.down('Alt');
  await drag(page, at, 20, 0);
  await page.keyboard.up('Alt');
  await page.mouse.up();
  const first = (await lengthOf()) - before;
  await undo(page).click();
  await page.getByRole('checkbox', { name: 'Both sides alike about the centreline' }).uncheck();
  const same = await choose(page, 3);
  await page.keyboard.down('Alt');
  await drag(page, same, 20, 0);
  await page.keyboard.up('Alt');
  await page.mouse.up();
  const second = (await lengthOf()) - before;
  expect(first).toBeCloseTo(2 * second, 1);
});

test('nodes are added on the outline, taken away by a key, and an outline that crosses itself is not kept', async ({
  page,
}) => {
  await drawFreely(page);
  const summary = page.getByText(/^Nodes of the outline/);
  const count = async () => Number(/\d+/.exec((await summary.textContent()) ?? '')?.[0]);
  const before = await count();
  const one = await choose(page, 2);
  await page.getByRole('button', { name: 'Add nodes', exact: true }).click();
  const canvas = await page.locator('canvas').boundingBox();
  await page.mouse.click((canvas?.x ?? 0) + 20, (canvas?.y ?? 0) + 20);
  await expect(statusOf(page)).toHaveText('Press on the outline itself: a node is put there.');
  // The front edge is straight, so its middle lies between any two places of it.
  const front = await choose(page, 1);
  await page.mouse.click((front.x + one.x) / 2, (front.y + one.y) / 2);
  await expect(undo(page)).toHaveAttribute('title', 'Undo: Add a node');
  const added = await count();
  expect(added).toBeGreaterThan(before);
  await page.getByRole('button', { name: 'Move', exact: true }).click();
  await page.getByRole('group', { name: 'View of the bridge' }).focus();
  await page.keyboard.press('Delete');
  await expect(undo(page)).toHaveAttribute('title', /^Undo: Delete node/);
  expect(await count()).toBe(before);

  const at = await choose(page, 3);
  const x = await figureOf(page, 'Node 3, across');
  await page.keyboard.down('Alt');
  await drag(page, at, -20, 110);
  await page.keyboard.up('Alt');
  await page.mouse.up();
  await expect(alertOf(page)).toContainText('cross');
  expect(await figureOf(page, 'Node 3, across')).toBe(x);
});

test('several are chosen and moved together, and arrow keys mirror with the hand', async ({ page }) => {
  await drawFreely(page, 'Left');
  await page.getByRole('checkbox', { name: 'Both sides alike about the centreline' }).uncheck();
  await choose(page, 2);
  const x = await figureOf(page, 'Node 2, across');
  await node(page, 3).click({ modifiers: ['Shift'] });
  await expect(page.getByText('Chosen: 2 parts')).toBeVisible();
  const view = page.getByRole('group', { name: 'View of the bridge' });
  await view.focus();
  for (let press = 0; press < 3; press += 1) await page.keyboard.press('ArrowRight');
  await page.keyboard.press('Shift+ArrowDown');
  await expect(statusOf(page)).toHaveText('Move 2 parts: 0.3 mm to the bass side, 1 mm toward the tail');
  await expect(undo(page)).toHaveAttribute('title', /^Undo: Move 2 parts: 0.3 mm to the bass side/);
  await node(page, 2).click();
  expect(await figureOf(page, 'Node 2, across')).toBeCloseTo(x - 0.3, 6);
  await undo(page).click();
  expect(await figureOf(page, 'Node 2, across')).toBeCloseTo(x, 6);
});

test('a distance is measured between pressed places, pinned, and follows its parts', async ({ page }) => {
  await openWorkbench(page);
  await showHundredths(page);
  await page.getByRole('tab', { name: 'Draw' }).click();
  await page.getByRole('button', { name: 'Distance between', exact: true }).click();
  const from = page.getByRole('combobox', { name: 'From', exact: true });
  await from.selectOption({ label: 'centre of pin 1' });
  await page.getByRole('combobox', { name: 'To', exact: true }).selectOption({ label: 'centre of pin 6' });
  const spacing = await figureOf(page, 'Pin spacing, outer');
  // Along its row, the spacing is the straight distance between the outer centres.
  await expect(page.locator('.between-answer')).toContainText(`${spacing.toFixed(2)} mm straight`);
  await page.getByRole('button', { name: 'Pin it to the drawing' }).click();
  await expect(undo(page)).toHaveAttribute('title', /^Undo: Dimension pinned/);
  await expect(page.getByRole('button', { name: 'Dimension 1', exact: true })).toBeVisible();
  await page.getByRole('button', { name: 'Done measuring' }).click();
  await box(page, 'Pin spacing, outer').fill('60');
  await box(page, 'Pin spacing, outer').press('Enter');
  const pinned = page.locator('.pinned li');
  await expect(pinned).toHaveCount(1);
  await expect(pinned).toContainText('60.00 mm');
  await pinned.getByRole('button').click();
  await expect(pinned).toHaveCount(0);
  await expect(page.getByRole('button', { name: 'Dimension 1', exact: true })).toHaveCount(0);
});

test('actual size is set once by a thing held to the glass, and is for looking only', async ({ page }) => {
  await openWorkbench(page);
  await page.getByRole('tab', { name: 'Draw' }).click();
  await page.getByRole('button', { name: 'Actual size', exact: true }).click();
  const dialog = page.getByRole('dialog', { name: 'Actual size on this screen' });
  await expect(dialog).toBeVisible();
  const slider = dialog.getByRole('slider', { name: 'Length of the bar' });
  // 428 px for a card of 85.6 mm are 5 px to a millimetre, 5 · 25.4 / 96 = 132 %.
  await slider.fill('428');
  await dialog.getByRole('button', { name: 'The bar fits' }).click();
  await expect(page.locator('.zoom')).toHaveText('132 %');
  await expect(page.getByText('Look, don’t measure.')).toBeVisible();
  await page.getByRole('button', { name: 'Whole bridge' }).click();
  await expect(page.getByText('Look, don’t measure.')).toBeHidden();
  await page.reload();
  await expect(page.getByRole('button', { name: 'Actual size', exact: true })).toBeVisible();
  await page.getByRole('button', { name: 'Actual size', exact: true }).click();
  await expect(page.locator('.zoom')).toHaveText('132 %');
});
