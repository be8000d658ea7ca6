import AxeBuilder from '@axe-core/playwright';
import { expect, type Locator, type Page, test } from '@playwright/test';
import { openMore, openWorkbench, rowsOf, statusOf, type } from './workbench';

const MORNING = new Date('2026-03-01T09:00:00Z');

const glue = (page: Page): Locator => page.getByRole('region', { name: 'Glue card' });
const run = (page: Page): Locator => page.getByRole('region', { name: 'The run' });
const bench = (page: Page): Locator => page.getByRole('dialog', { name: /^At the bench/ });
const clocks = (page: Page): Locator => page.getByRole('list', { name: 'Clocks that run' });

const openPlace = async (page: Page): Promise<void> => {
  await page.getByRole('tab', { name: 'Place' }).click();
  await expect(glue(page)).toBeVisible();
  await expect(glue(page).getByText(/^Glue area/)).toContainText('mm²');
};

/** The demo, with a bracing, plate and soundhole to start from, on Place. */
const openBraced = async (page: Page): Promise<void> => {
  await openWorkbench(page);
  await page.getByRole('tab', { name: 'Draw' }).click();
  await page.getByRole('checkbox', { name: 'Check what lies beneath the top' }).check();
  await page.getByRole('button', { name: 'X-braced steel-string' }).click();
  await openPlace(page);
};

/** Counts the tones that the page asks for, in place of its loudspeaker. */
const countTones = async (page: Page): Promise<void> => {
  await page.addInitScript(() => {
    const counted = window as unknown as { tones: number };
    counted.tones = 0;
    class Silent {
      currentTime = 0;
      destination = {};
      resume = async () => {};
      createGain = () => ({
        gain: { setValueAtTime: () => {}, linearRampToValueAtTime: () => {} },
        connect: () => ({}),
      });
      createOscillator = () => ({
        frequency: { value: 0 },
        connect: (next: object) => next,
        start: () => {
          counted.tones += 1;
        },
        stop: () => {},
      });
    }
    Object.assign(window, { AudioContext: Silent });
  });
};
const tones = (page: Page): Promise<number> => page.evaluate(() => (window as unknown as { tones: number }).tones);

test('force for a pressure: figure and caution in one cell, claims side by side', async ({ page }) => {
  await openWorkbench(page);
  await openPlace(page);
  const area = Number(
    /([\d.]+) mm²/.exec(
      (await glue(page)
        .getByText(/^Glue area/)
        .textContent()) ?? '',
    )?.[1],
  );
  await type(page, 'Pressure to reckon with', '150');
  const rows = await rowsOf(page, 'Force for 150 psi');
  const inAll = rows['In all']?.[0] ?? '';
  const each = rows['Each of 3 clamps']?.[0] ?? '';
  // 1 in² = 645.16 mm², 1 lbf = 4.4482 N: hand arithmetic.
  const lbf = (area / 645.16) * 150;
  const figures = (cell: string): readonly number[] => (cell.match(/\d+(?= N| lbf)/g) ?? []).map(Number);
  for (const [cell, share] of [
    [inAll, 1],
    [each, 3],
  ] as const) {
    expect(cell).toContain('not an order');
    const [newton = 0, pounds = 0] = figures(cell);
    expect(Math.abs(newton - (lbf * 4.4482) / share)).toBeLessThan(2);
    expect(Math.abs(pounds - lbf / share)).toBeLessThan(1);
  }
  const claims = page.getByRole('table', { name: /^Pressures side by side/ });
  // A vacuum of 20 to 25 inHg, an adhesive maker's dense hardwood, a handbook.
  for (const psi of ['9.8 to 12.3', '100 to 150', '125 to 175', '175 to 250', '100 to 247'])
    await expect(claims).toContainText(psi);
  await expect(claims).toContainText('from memory');

  await test.step('after the page was loaded anew at this station', async () => {
    await page.reload();
    await expect(glue(page).getByText(/^Glue area/)).toContainText('mm²');
    await type(page, 'Pressure to reckon with', '150');
  });

  await test.step('in the units of a data sheet', async () => {
    await type(page, 'Pressure to reckon with', '1 MPa');
    await expect(page.getByRole('table', { name: 'Force for 145 psi' })).toBeVisible();
    await type(page, 'Pressure to reckon with', 'tight');
    await expect(glue(page).getByText('“tight” is no pressure')).toBeVisible();
    await page.keyboard.press('Escape');
    await page.getByRole('button', { name: 'Undo' }).click();
    await expect(page.getByRole('table', { name: 'Force for 150 psi' })).toBeVisible();
  });
});

test('clamps: order, reach, caul, one more and one less', async ({ page }) => {
  await openBraced(page);
  const table = page.getByRole('table', { name: /^Each clamp/ });
  await expect(table.locator('tbody tr')).toHaveCount(3);
  await expect(table.locator('tbody tr').first()).toContainText('centre');
  await expect(table.locator('tbody tr').first()).toContainText('reaches');
  await expect(glue(page).getByText(/^Inside caul/)).toContainText('through the soundhole');
  await expect(glue(page).getByRole('img', { name: /^Clamps on the bridge, nut side up.*1: centre/ })).toBeVisible();

  await type(page, 'Reach of the clamps', '90');
  await expect(table.locator('tbody tr').first()).toContainText('too far');
  await expect(table.locator('tbody tr').first()).toContainText('short');

  await glue(page).getByRole('button', { name: 'One clamp more' }).click();
  await expect(table.locator('tbody tr')).toHaveCount(4);
  await glue(page).getByRole('button', { name: 'Tighten clamp 2 earlier' }).click();
  await expect(table.locator('tbody tr').first()).toContainText('bass');
  await glue(page).getByRole('button', { name: 'Take out clamp 1' }).click();
  await expect(table.locator('tbody tr').first()).toContainText('centre');
  await openMore(page, 'Place the clamps by figures');
  await type(page, 'Clamp 1, to the side', '4 bass');
  await expect(table.locator('tbody tr').first()).toContainText('4.0 mm bass');
  await glue(page).getByRole('button', { name: 'As proposed' }).click();
  await expect(table.locator('tbody tr')).toHaveCount(3);
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(table.locator('tbody tr').first()).toContainText('4.0 mm bass');
});

test('both hands: the picture of the clamps changes sides, its words stay', async ({ page }) => {
  await openBraced(page);
  const picture = glue(page).getByRole('img', { name: /^Clamps on the bridge/ });
  const left = async (): Promise<number> => {
    const [treble, bass] = await Promise.all(
      ['TREBLE', 'BASS'].map((word) => picture.getByText(word, { exact: true }).boundingBox()),
    );
    return (treble?.x ?? 0) - (bass?.x ?? 0);
  };
  expect(await left()).toBeGreaterThan(0);
  await page.getByRole('radio', { name: 'Left' }).check();
  await expect(async () => expect(await left()).toBeLessThan(0)).toPass();
});

test('wood moisture and movement, in °C and °F', async ({ page }) => {
  await openWorkbench(page);
  await openPlace(page);
  const water = 'Water that wood comes to hold, % of its dry weight';
  await type(page, 'Air temperature, where it is glued', '20');
  await type(page, 'Relative humidity, where it is glued', '65');
  // The usual reference climate of wood testing: 12 %.
  expect(await rowsOf(page, water)).toEqual({ 'Where it is glued': ['12.00'] });
  await type(page, 'Relative humidity, where it is glued', '45');
  await type(page, 'Air temperature, where it is kept', '68 °F');
  await type(page, 'Relative humidity, where it is kept', '55 %');
  expect(await rowsOf(page, water)).toMatchObject({ Change: ['+1.62'] });
  const movement = await rowsOf(page, 'Wider (+) or narrower (−) across the grain, mm');
  // 100 mm of Sitka spruce from 45 to 55 % at 20 °C: 0.239 and 0.425 mm, hand arithmetic from the Wood Handbook’s table.
  const [radial, tangential] = (movement['Top, over 100 mm'] ?? []).map(Number);
  expect(Math.abs((radial ?? 0) - 0.239)).toBeLessThan(0.006);
  expect(Math.abs((tangential ?? 0) - 0.425)).toBeLessThan(0.006);
  const bridge = Object.entries(movement).find(([name]) => name.startsWith('Bridge'));
  expect(bridge?.[1]).toEqual(['not known', 'not known']);
  await openMore(page, 'Woods and their figures');
  await page.getByRole('combobox', { name: 'Wood of the bridge' }).selectOption({ label: 'Mahogany' });
  await expect(page.getByRole('table', { name: /^Wider/ }).getByText('not known')).toHaveCount(0);
});

test('clocks: several at once, over a reload, on every station, heard and seen', async ({ page }) => {
  await page.clock.install({ time: MORNING });
  await countTones(page);
  await openWorkbench(page);
  await openPlace(page);
  await expect(glue(page).getByRole('button', { name: /^Start/ })).toHaveCount(0);
  await type(page, 'Open time', '5');
  await type(page, 'Cure time', '24');
  await expect(glue(page).getByText('Type 24 min or 24 h')).toBeVisible();
  await type(page, 'Cure time', '24 h');
  await glue(page).getByRole('button', { name: 'Start open time, 5 min' }).click();
  await glue(page).getByRole('button', { name: 'Start cure time, 24 h' }).click();
  await page.clock.pauseAt(new Date(MORNING.getTime() + 3_600_000));
  await glue(page).getByRole('button', { name: 'Heard open time' }).click();
  await glue(page).getByRole('button', { name: 'Start open time, 5 min' }).click();
  await expect(glue(page).getByRole('timer', { name: 'Open time, left' })).toHaveText('5:00');
  await page.clock.runFor(61_000);
  await expect(glue(page).getByRole('timer', { name: 'Open time, left' })).toHaveText('3:59');
  await expect(clocks(page).getByRole('listitem')).toHaveCount(2);
  await expect(clocks(page)).toContainText('Open time, Wren 14');

  await test.step('they go on while the page is loaded anew, on another station', async () => {
    await page.getByRole('tab', { name: 'Measure' }).click();
    await page.clock.resume();
    await page.reload();
    await expect(clocks(page)).toContainText(/3:[0-5]/);
    await page.clock.runFor(60_000);
    await expect(clocks(page)).toContainText(/2:[0-5]/);
    await expect(clocks(page)).toContainText('Cure time, Wren 14');
  });

  await test.step('sound has to be allowed anew, and then is heard', async () => {
    await clocks(page).getByRole('button', { name: 'Turn the sound on' }).click();
    const before = await tones(page);
    expect(before).toBe(3);
    await page.clock.runFor(180_000);
    await expect(clocks(page)).toContainText('Time is up');
    expect(await tones(page)).toBeGreaterThan(before);
  });

  await test.step('until the maker has heard', async () => {
    await page.getByRole('button', { name: 'Heard open time of Wren 14' }).click();
    await expect(clocks(page).getByRole('listitem')).toHaveCount(1);
    const before = await tones(page);
    await page.clock.runFor(20_000);
    expect(await tones(page)).toBe(before);
  });
});

test('a clock that is moved back is noticed, and the count goes on', async ({ page }) => {
  await page.clock.install({ time: MORNING });
  await openWorkbench(page);
  await openPlace(page);
  await type(page, 'Clamp time', '1 h');
  await glue(page).getByRole('button', { name: 'Start clamp time, 1 h' }).click();
  await page.clock.pauseAt(new Date(MORNING.getTime() + 1_800_000));
  await page.clock.runFor(1000);
  const shown = await glue(page).getByRole('timer', { name: 'Clamp time, left' }).textContent();
  await page.clock.setSystemTime(MORNING);
  await page.clock.runFor(1000);
  await expect(page.getByText('The clock of this device went back by 30 min')).toBeVisible();
  const minutes = (text: string | null): number => {
    const [whole, seconds] = (text ?? '').split(':').map(Number);
    return (whole ?? 0) * 60 + (seconds ?? 0);
  };
  const after = await glue(page).getByRole('timer', { name: 'Clamp time, left' }).textContent();
  expect(Math.abs(minutes(after) - minutes(shown))).toBeLessThanOrEqual(2);
  await page.getByRole('button', { name: 'Noted' }).click();
  await expect(page.getByText('The clock of this device went back')).toHaveCount(0);
});

/** What has the focus, by its accessible name's beginning. */
const tabTo = async (page: Page, control: Locator): Promise<void> => {
  for (let count = 0; count < 200; count += 1) {
    if (await control.evaluate((element) => element === document.activeElement)) return;
    await page.keyboard.press('Tab');
  }
  throw new Error('Tab does not lead there.');
};

test('the run by keyboard alone: at the bench, ticked, taken up again, undone', async ({ page }) => {
  await openWorkbench(page);
  await page.getByRole('tab', { name: 'Measure' }).focus();
  for (let count = 0; count < 3; count += 1) await page.keyboard.press('ArrowDown');
  await expect(run(page)).toContainText('0 of 17 done. Next: neck angle and height pass.');
  await tabTo(page, run(page).getByRole('button', { name: 'At the bench' }));
  await page.keyboard.press('Enter');
  await expect(bench(page)).toBeVisible();
  const first = bench(page).getByRole('checkbox', { name: '1 Neck angle and height pass' });
  await expect(first).toBeFocused();
  await page.keyboard.press('Space');
  await expect(first).toBeChecked();
  await expect(bench(page)).toContainText('1 of 17 done');
  await tabTo(page, bench(page).getByRole('checkbox', { name: '2 Braces and plate found' }));
  await page.keyboard.press('Space');
  await page.keyboard.press('Escape');
  await expect(bench(page)).toHaveCount(0);
  await expect(run(page)).toContainText('2 of 17 done. Next: sole fitted');

  await tabTo(page, run(page).getByRole('button', { name: 'At the bench' }));
  await page.keyboard.press('Enter');
  await expect(bench(page).getByRole('checkbox', { name: '3 Sole fitted' })).toBeFocused();
  await page.keyboard.press('Escape');
  await page.keyboard.press('Control+z');
  await expect(statusOf(page)).toHaveText('Undone: Done: Braces and plate found, by mirror and light');
  await expect(run(page)).toContainText('1 of 17 done. Next: braces');
});

test('boxes at the bench are large, and are told how far the work has come', async ({ page }) => {
  await openWorkbench(page);
  await openPlace(page);
  await run(page).getByRole('button', { name: 'At the bench' }).click();
  for (const control of await bench(page).locator('input[type=checkbox], button').all()) {
    const box = await control.boundingBox();
    expect(Math.min(box?.width ?? 0, box?.height ?? 0)).toBeGreaterThanOrEqual(44);
  }
  const size = await bench(page)
    .getByText('1 Neck angle and height pass')
    .evaluate((element) => Number.parseFloat(getComputedStyle(element).fontSize));
  expect(size).toBeGreaterThanOrEqual(24);
  await bench(page).getByRole('checkbox').last().scrollIntoViewIfNeeded();
  await expect(bench(page).getByRole('button', { name: 'To the next step' })).toBeInViewport();
  // Figures that the worksheet prints stand beside the steps.
  await expect(bench(page)).toContainText('Line from nut');
  await expect(bench(page)).toContainText('Not read wet yet.');
  await bench(page).getByRole('button', { name: 'Readings, wet' }).click();
  await expect(bench(page)).toHaveCount(0);
  const readings = page.getByRole('region', { name: 'Read the bridge in its place' });
  await expect(readings.locator(':focus')).toHaveCount(1);
  await expect(readings.getByRole('combobox', { name: 'Read while it is' })).toHaveValue('wet');
});

test.describe('by touch', () => {
  test.use({ hasTouch: true, viewport: { width: 820, height: 1180 } });

  test('a step is ticked, a time typed and its clock started at the bench', async ({ page }) => {
    await openWorkbench(page);
    await page.getByRole('tab', { name: 'Place' }).tap();
    await run(page).getByRole('button', { name: 'At the bench' }).tap();
    await bench(page).getByText('1 Neck angle and height pass').tap();
    await expect(bench(page)).toContainText('1 of 17 done');
    const box = bench(page).getByRole('textbox', { name: 'Open time' });
    await box.tap();
    await box.fill('4');
    await box.press('Enter');
    await bench(page).getByRole('button', { name: 'Start open time, 4 min' }).tap();
    await expect(bench(page).getByRole('timer', { name: 'Open time, left' })).toHaveText(/^(4:00|3:5)/);
    await expect(clocks(page).last()).toContainText('Open time, Wren 14');
  });
});

test('repair, and a slot cut after gluing, have their own steps; the worksheet is the same list', async ({ page }) => {
  await openWorkbench(page);
  await page.getByRole('tab', { name: 'Draw' }).click();
  await page.getByRole('checkbox', { name: 'There was a bridge here before' }).check();
  await openMore(page, 'Slot cut after gluing, or filled and cut again');
  await page.getByRole('checkbox', { name: 'Fence settings for a router' }).check();
  await openPlace(page);
  await expect(run(page)).toContainText('0 of 23 done. Next: old bridge read while it is still on.');
  const titles = await run(page)
    .getByRole('checkbox')
    .evaluateAll((boxes) =>
      boxes.map((box) => (box.closest('label')?.textContent ?? '').replace('Next step', '').trim()),
    );
  await run(page).getByRole('checkbox').first().check();
  await run(page).getByRole('button', { name: 'Print as worksheet' }).click();
  const pages = page.getByRole('region', { name: 'Pages' });
  await expect(pages.getByText('Worksheet: cut the slot, string')).toBeVisible();
  for (const title of titles) await expect(pages.getByText(title, { exact: true })).toBeVisible();
});

for (const colorScheme of ['light', 'dark'] as const)
  test(`glue card, run and bench have no fault that axe finds, ${colorScheme}`, async ({ page }) => {
    await page.emulateMedia({ colorScheme });
    await page.clock.install({ time: MORNING });
    await openBraced(page);
    await type(page, 'Pressure to reckon with', '150');
    await type(page, 'Relative humidity, where it is kept', '30');
    await type(page, 'Open time', '5');
    await type(page, 'Cure time', '2 h');
    await type(page, 'Clamp time', 'long');
    await glue(page).getByRole('button', { name: 'Start open time' }).click();
    await glue(page).getByRole('button', { name: 'Start cure time' }).click();
    await page.clock.runFor(301_000);
    await expect(glue(page).getByText('Time is up')).toBeVisible();
    const closed = glue(page).locator('details.more:not([open]) > summary');
    while ((await closed.count()) > 0) await closed.first().click();
    const found = async (): Promise<readonly string[]> =>
      (await new AxeBuilder({ page }).analyze()).violations.map(
        ({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html.slice(0, 120)).join(' | ')}`,
      );
    expect(await found()).toEqual([]);
    await run(page).getByRole('button', { name: 'At the bench' }).click();
    await expect(bench(page)).toBeVisible();
    expect(await found()).toEqual([]);
  });

test('a telephone shows card, run and bench with nothing to scroll sideways', async ({ page }) => {
  await page.setViewportSize({ width: 360, height: 780 });
  await openBraced(page);
  await type(page, 'Pressure to reckon with', '150');
  await type(page, 'Relative humidity, where it is kept', '30');
  await type(page, 'Open time', '5');
  await glue(page).getByRole('button', { name: 'Start open time' }).click();
  /** What of these runs beyond the screen. */
  const wide = async (...shown: readonly Locator[]): Promise<readonly string[]> => {
    const lists = await Promise.all(
      shown.map((each) =>
        each.locator('*').evaluateAll((all) =>
          all
            // A picture cuts off what runs beyond its frame.
            .filter((element) => element.closest('svg') === null)
            .filter((element) => element.getBoundingClientRect().right > innerWidth + 0.5)
            .map(({ outerHTML }) => outerHTML.slice(0, 80)),
        ),
      ),
    );
    return lists.flat();
  };
  expect(await wide(run(page), glue(page), clocks(page))).toEqual([]);
  await run(page).getByRole('button', { name: 'At the bench' }).click();
  await expect(bench(page)).toBeVisible();
  expect(await wide(bench(page))).toEqual([]);
});
