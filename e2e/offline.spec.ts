import { type CDPSession, expect, type Page, test } from '@playwright/test';
import { buildVersion, type Host, hostOf } from './hosted';
import { figure, readPdfOf, type } from './workbench';

test.use({ serviceWorkers: 'allow' });

let [first, later] = ['', ''];
test.beforeAll(async () => {
  first = await buildVersion('first');
  later = await buildVersion('later');
});

let host: Host;
test.beforeEach(async () => {
  host = await hostOf(first);
});
test.afterEach(() => host.stop());

const watchFaults = (page: Page): readonly string[] => {
  const faults: string[] = [];
  page.on('pageerror', (error) => faults.push(error.stack ?? error.message));
  return faults;
};

/** Opens the app and waits until all of it lies on this device. */
const openKept = async (page: Page): Promise<void> => {
  await page.goto(host.address);
  await expect(page.locator('canvas')).toBeVisible();
  await page.evaluate(async () => {
    await navigator.serviceWorker.ready;
  });
  await expect.poll(() => page.evaluate(() => navigator.serviceWorker.controller?.state ?? 'none')).toBe('activated');
};

/** Which build the page runs: its files have that word in their names. */
const expectVersion = (page: Page, word: 'first' | 'later'): Promise<void> =>
  expect(page.locator('script[src]')).toHaveAttribute('src', new RegExp(`assets/${word}-`));

const stripOf = (page: Page) => page.getByRole('complementary', { name: 'New version' });

const takeButton = (page: Page) => stripOf(page).getByRole('button', { name: 'Take the new version' });

/** What a browser does by itself now and then: asks the host whether there is a newer version. */
const lookForUpdate = (page: Page): Promise<void> =>
  page.evaluate(async () => {
    await (await navigator.serviceWorker.ready).update();
  });

const download = async (page: Page, name: string) => {
  const [made] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name, exact: true }).first().click(),
  ]);
  return made;
};

const printNow = async (page: Page): Promise<void> => {
  await page.getByRole('tab', { name: 'Print' }).click();
  const { head, pages } = await readPdfOf(await download(page, 'Download PDF'));
  expect([head, pages.length > 0]).toEqual(['%PDF-', true]);
};

/** Every station, which come in parts when they are first opened, and every kind of file. */
const wholeJourney = async (page: Page): Promise<void> => {
  for (const station of ['Draw', 'Place', 'Record', 'Measure']) {
    await page.getByRole('tab', { name: station }).click();
    await expect(page.getByRole('tab', { name: station })).toHaveAttribute('aria-selected', 'true');
  }
  await printNow(page);
  for (const kind of ['SVG', 'DXF', 'CSV', 'PNG'])
    expect((await download(page, `Download ${kind}`)).suggestedFilename()).toContain(`.${kind.toLowerCase()}`);
  const set = await readPdfOf(await download(page, 'Download set'));
  expect(set.head).toBe('%PDF-');
};

/** What Chromium asks of an app that is to be installed. */
const expectInstallable = async (inspector: CDPSession): Promise<void> => {
  const { data, errors } = await inspector.send('Page.getAppManifest');
  expect(errors).toEqual([]);
  expect(JSON.parse(data ?? '{}')).toMatchObject({ name: 'Saddlemark', display: 'standalone', start_url: './' });
  const { installabilityErrors } = await inspector.send('Page.getInstallabilityErrors');
  // The windows of these journeys keep nothing, and Chromium installs nothing from such.
  expect(installabilityErrors.map(({ errorId }) => errorId)).toEqual(['in-incognito']);
};

test('opened once, it opens and prints with the network gone, under a folder of its host; and it installs', async ({
  page,
  context,
}) => {
  const faults = watchFaults(page);
  await openKept(page);
  await expectInstallable(await context.newCDPSession(page));
  await host.stop();
  await page.reload();
  await expect(page.locator('canvas')).toBeVisible();
  await expect(figure(page, 'Break point, centre')).not.toBeEmpty();
  expect(await page.evaluate(() => document.fonts.check('16px "DejaVu Sans Condensed"'))).toBe(true);
  await wholeJourney(page);
  await page.getByRole('tab', { name: 'Draw' }).click();
  await page.getByRole('button', { name: 'Import an outline' }).click();
  const dialog = page.getByRole('dialog', { name: 'Import an outline' });
  await dialog.getByLabel('SVG or DXF file').setInputFiles({
    name: 'bridge.svg',
    mimeType: 'image/svg+xml',
    buffer: Buffer.from(
      '<svg xmlns="http://www.w3.org/2000/svg" width="200mm" viewBox="0 0 200 50"><path d="M9 9H159V39H9Z"/></svg>',
    ),
  });
  await expect(dialog.getByText('Outline 1 150.0 mm × 30.0 mm, 4 pieces')).toBeVisible();
  await page.goto(`${host.address}index.html?from=elsewhere`);
  await expect(page.locator('canvas')).toBeVisible();
  expect(faults).toEqual([]);
});

/** Puts the later version on the host and lets the page find it. */
const deployLater = async (page: Page): Promise<void> => {
  host.deploy(later);
  await lookForUpdate(page);
  await expect(stripOf(page)).toContainText('A new version of Saddlemark is ready.');
};

test('an open tab works on with parts it had not loaded, while its version is gone from the host', async ({ page }) => {
  const faults = watchFaults(page);
  await openKept(page);
  await deployLater(page);
  await wholeJourney(page);
  await expectVersion(page, 'first');

  await test.step('and so it does after a reload, with the offer still there', async () => {
    await page.reload();
    await expect(page.getByRole('tab', { name: 'Print' })).toBeVisible();
    await expectVersion(page, 'first');
    await expect(takeButton(page)).toBeVisible();
    await page.getByRole('tab', { name: 'Draw' }).click();
    await expect(page.locator('canvas')).toBeVisible();
  });
  await test.step('Later puts the offer away', async () => {
    await stripOf(page).getByRole('button', { name: 'Later' }).click();
    await expect(stripOf(page)).toBeHidden();
    await expectVersion(page, 'first');
  });
  expect(faults).toEqual([]);
});

test('a new version comes when asked for, with the work as it was, and leaves other tabs theirs', async ({
  page,
  context,
}) => {
  await openKept(page);
  const other = await context.newPage();
  await openKept(other);
  await type(page, 'Name', 'Plover 7');
  await deployLater(page);
  await expect(takeButton(page)).toHaveAttribute('aria-disabled', 'false');

  await test.step('asked for, it is there, and so is the work', async () => {
    await takeButton(page).click();
    await expectVersion(page, 'later');
    await expect(page.locator('canvas')).toBeVisible();
    await expect(page.getByRole('textbox', { name: 'Name', exact: true })).toHaveValue('Plover 7');
    await expect(stripOf(page)).toBeHidden();
  });
  await test.step('the other tab says so, and still gets the parts of its own version', async () => {
    await expect(stripOf(other)).toContainText('Saddlemark was renewed in another tab');
    await printNow(other);
    await expectVersion(other, 'first');
    await stripOf(other).getByRole('button', { name: 'Reload' }).click();
    await expectVersion(other, 'later');
  });
  await test.step('the later one opens without a network too', async () => {
    await host.stop();
    await page.reload();
    await printNow(page);
    await expectVersion(page, 'later');
  });
});

test('never under work that is not kept: the offer says what to do first', async ({ page }) => {
  await page.addInitScript(() => {
    Object.defineProperty(window, 'indexedDB', { value: undefined });
  });
  await openKept(page);
  await type(page, 'Name', 'Plover 7');
  await deployLater(page);
  await expect(stripOf(page)).toContainText('First press Save: your work is not kept yet.');
  await expect(takeButton(page)).toHaveAttribute('aria-disabled', 'true');
  await takeButton(page).press('Enter');
  await expectVersion(page, 'first');
  await download(page, 'Save');
  await expect(stripOf(page)).not.toContainText('First press Save');
  await takeButton(page).click();
  await expectVersion(page, 'later');
});
