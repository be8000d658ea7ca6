import { readFile } from 'node:fs/promises';
import AxeBuilder from '@axe-core/playwright';
import { expect, type Page, test } from '@playwright/test';
import { openWorkbench, type } from './workbench';

const line = (page: Page) => page.locator('.keep-line');
const nutWidth = (page: Page) => page.getByRole('textbox', { name: 'Nut width', exact: true });
const kept = async (page: Page): Promise<void> => {
  await expect(line(page)).toHaveText(/^Kept on this device, \d\d:\d\d$/);
};

test('what was typed is there again after a reload, and so are undo’s results', async ({ page }) => {
  await openWorkbench(page);
  await expect(line(page)).toHaveCount(0);
  await type(page, 'Nut width', '45');
  await kept(page);
  await page.reload();
  await expect(nutWidth(page)).toHaveValue('45.0');
  await type(page, 'Nut width', '47');
  await kept(page);
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(nutWidth(page)).toHaveValue('45.0');
  await page.reload();
  await expect(nutWidth(page)).toHaveValue('45.0');
});

test('what was in hand opens again although the browser lost its small notes', async ({ page }) => {
  await openWorkbench(page);
  await type(page, 'Nut width', '45');
  await kept(page);
  await page.evaluate(() => localStorage.clear());
  await page.reload();
  await expect(nutWidth(page)).toHaveValue('45.0');
});

test('closing right after a change keeps it', async ({ page, context }) => {
  await openWorkbench(page);
  await type(page, 'Nut width', '45');
  await kept(page);
  await type(page, 'Nut width', '48');
  await page.close({ runBeforeUnload: false });
  const again = await context.newPage();
  await openWorkbench(again);
  await expect(nutWidth(again)).toHaveValue('48.0');
});

test('no room: told in words, work goes on, Save still gives a file, and it is tried again', async ({ page }) => {
  await openWorkbench(page);
  await page.evaluate(() => {
    const put = IDBObjectStore.prototype.put;
    const count = { refused: 0 };
    Object.assign(window, {
      count,
      makeRoom: () => {
        IDBObjectStore.prototype.put = put;
      },
    });
    IDBObjectStore.prototype.put = () => {
      count.refused += 1;
      throw new DOMException('no room', 'QuotaExceededError');
    };
  });
  await type(page, 'Nut width', '45');
  await expect(page.getByRole('alert').filter({ hasText: 'Not kept: There is no room left' })).toBeVisible();
  await type(page, 'Nut width', '46.5');
  await expect(nutWidth(page)).toHaveValue('46.5');
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Save', exact: true }).click(),
  ]);
  expect(JSON.parse(await readFile(await download.path(), 'utf8'))).toMatchObject({
    instrument: { widths: { nut: 46.5 } },
  });
  // The second change was refused as well: nothing is tried again by itself from here on.
  await expect
    .poll(() => page.evaluate(() => (window as unknown as { count: { refused: number } }).count.refused))
    .toBe(2);
  await page.evaluate(() => (window as unknown as { makeRoom(): void }).makeRoom());
  await page.getByRole('button', { name: 'Try again' }).click();
  await kept(page);
});

test('a browser without a database: the app starts and says what it does not do', async ({ page }) => {
  await page.addInitScript(() => {
    Object.defineProperty(window, 'indexedDB', {
      get: () => {
        throw new DOMException('The operation is insecure.', 'SecurityError');
      },
    });
  });
  await openWorkbench(page);
  await type(page, 'Nut width', '45');
  await expect(
    page.getByRole('alert').filter({ hasText: 'Not kept: This browser does not let the page keep anything' }),
  ).toBeVisible();
  await expect(nutWidth(page)).toHaveValue('45.0');
});

test('a connection that the browser closes is opened again, and nothing is lost', async ({ page }) => {
  await page.addInitScript(() => {
    const open = IDBFactory.prototype.open;
    const connections: IDBDatabase[] = [];
    Object.assign(window, { connections });
    IDBFactory.prototype.open = function (this: IDBFactory, ...given: [string, number?]) {
      const request = Reflect.apply(open, this, given) as IDBOpenDBRequest;
      request.addEventListener('success', () => connections.push(request.result));
      return request;
    };
  });
  await openWorkbench(page);
  await type(page, 'Nut width', '45');
  await kept(page);
  await page.evaluate(() => {
    for (const connection of (window as unknown as { connections: IDBDatabase[] }).connections) connection.close();
  });
  await type(page, 'Nut width', '47.5');
  await expect(line(page)).toHaveText(/^Keeping|^Kept/);
  await expect
    .poll(() => page.evaluate(() => (window as unknown as { connections: IDBDatabase[] }).connections.length))
    .toBe(2);
  await kept(page);
  await page.reload();
  await expect(nutWidth(page)).toHaveValue('47.5');
});

test('two tabs on one project: the second knows at once, and both ways out lose nothing', async ({ page, context }) => {
  await openWorkbench(page);
  await type(page, 'Nut width', '45');
  await kept(page);
  await page.reload();
  await expect(nutWidth(page)).toHaveValue('45.0');
  const other = await context.newPage();
  await openWorkbench(other);
  await expect(nutWidth(other)).toHaveValue('45.0');
  await type(other, 'Nut width', '46');
  await kept(other);
  const told = page.getByRole('alert').filter({ hasText: 'Another tab changed' });
  await expect(told).toBeVisible();
  await type(page, 'Nut width', '49');
  await page.getByRole('button', { name: 'Keep both' }).click();
  await kept(page);
  await expect(page.getByRole('banner')).toContainText('(this tab’s)');
  await expect(nutWidth(page)).toHaveValue('49.0');
  await other.reload();
  // What was kept last is what opens.
  await expect(nutWidth(other)).toHaveValue('49.0');
  await other.getByRole('tab', { name: 'Record' }).click();
  await expect(other.getByText('2 in the library')).toBeVisible();
});

test('the other tab’s is taken as one step that can be undone', async ({ page, context }) => {
  await openWorkbench(page);
  await type(page, 'Nut width', '45');
  await kept(page);
  const other = await context.newPage();
  await openWorkbench(other);
  await type(other, 'Nut width', '46');
  await kept(other);
  await page.getByRole('button', { name: 'Take the other tab’s' }).click();
  await expect(nutWidth(page)).toHaveValue('46.0');
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(nutWidth(page)).toHaveValue('45.0');
});

test('a clock that is moved back keeps the order of what was kept', async ({ page }) => {
  await page.clock.install({ time: new Date('2026-03-01T12:00:00Z') });
  await openWorkbench(page);
  await type(page, 'Nut width', '45');
  await page.clock.runFor(500);
  await kept(page);
  await page.clock.setSystemTime(new Date('2025-01-01T08:00:00Z'));
  await type(page, 'Nut width', '47');
  await page.clock.runFor(500);
  await expect(line(page)).toHaveText('Kept on this device, 08:00');
  await page.reload();
  await expect(nutWidth(page)).toHaveValue('47.0');
});

test('what was last in hand and cannot be opened: the app starts, says so, and hands out the text', async ({
  page,
}) => {
  await openWorkbench(page);
  await type(page, 'Nut width', '45');
  await kept(page);
  await page.evaluate(
    () =>
      new Promise<void>((resolve, reject) => {
        const request = indexedDB.open('saddlemark');
        request.onerror = () => reject(request.error);
        request.onsuccess = () => {
          const writing = request.result.transaction('projects', 'readwrite');
          const store = writing.objectStore('projects');
          const cursor = store.openCursor();
          cursor.onsuccess = () => {
            const at = cursor.result;
            if (at === null) return;
            at.update({ ...at.value, text: `${at.value.text} ` });
            at.continue();
          };
          writing.oncomplete = () => {
            request.result.close();
            resolve();
          };
        };
      }),
  );
  await page.reload();
  const told = page.getByRole('alert').filter({ hasText: 'could not be opened' });
  await expect(told).toContainText('damaged');
  await expect(nutWidth(page)).toHaveValue('46.0');
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Download its text' }).click(),
  ]);
  expect(await readFile(await download.path(), 'utf8')).toContain('"nut": 45');
  await page.getByRole('button', { name: 'Go on with this one' }).click();
  await expect(told).toHaveCount(0);
});

test('trouble with keeping has no fault that axe finds', async ({ page, context }) => {
  await openWorkbench(page);
  await type(page, 'Nut width', '45');
  await kept(page);
  const other = await context.newPage();
  await openWorkbench(other);
  await type(other, 'Nut width', '46');
  await expect(page.getByRole('alert').filter({ hasText: 'Another tab changed' })).toBeVisible();
  const { violations } = await new AxeBuilder({ page }).analyze();
  expect(violations.map(({ id }) => id)).toEqual([]);
});

const sample = async (page: Page): Promise<string> => {
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Save', exact: true }).click(),
  ]);
  return readFile(await download.path(), 'utf8');
};

/** Drops a file with this text on the page. */
const drop = (page: Page, name: string, text: string): Promise<void> =>
  page.evaluate(
    ([file, held]) => {
      const data = new DataTransfer();
      data.items.add(new File([held ?? ''], file ?? '', { type: 'application/json' }));
      document.body.dispatchEvent(new DragEvent('drop', { dataTransfer: data, bubbles: true, cancelable: true }));
    },
    [name, text],
  );

test('a project is opened by being dropped or pasted; what is none changes nothing', async ({ page }) => {
  await openWorkbench(page);
  await type(page, 'Nut width', '45');
  await kept(page);
  const file = await sample(page);
  await type(page, 'Nut width', '48');
  await drop(page, 'wren.saddlemark.json', file);
  await expect(nutWidth(page)).toHaveValue('45.0');
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(nutWidth(page)).toHaveValue('48.0');
  await drop(page, 'other.json', '{"format":"saddlemark-project","version":1}');
  await expect(page.getByRole('alert')).toContainText('other.json was not opened.');
  await expect(nutWidth(page)).toHaveValue('48.0');
  await page.evaluate((text) => {
    const data = new DataTransfer();
    data.setData('text/plain', text);
    document.body.dispatchEvent(new ClipboardEvent('paste', { clipboardData: data, bubbles: true }));
  }, file);
  await expect(nutWidth(page)).toHaveValue('45.0');
});

test('a file that is chosen is whole before it is touched, and a change of mind is no fault', async ({ page }) => {
  await page.addInitScript(() => {
    const log: string[] = [];
    Object.assign(window, {
      log,
      cancel: false,
      showSaveFilePicker: async () => {
        if ((window as unknown as { cancel: boolean }).cancel) throw new DOMException('changed mind', 'AbortError');
        log.push('picked');
        return {
          createWritable: async () => ({
            write: async (bytes: Uint8Array) =>
              log.push(`wrote ${new TextDecoder().decode(bytes).includes('"nut": 46')}`),
            close: async () => log.push('closed'),
            abort: async () => log.push('aborted'),
          }),
        };
      },
    });
  });
  await openWorkbench(page);
  await page.getByRole('tab', { name: 'Record' }).click();
  const button = page.getByRole('button', { name: 'Save this one to a file you choose' });
  await button.click();
  const log = () => page.evaluate(() => (window as unknown as { log: string[] }).log);
  await expect.poll(log).toEqual(['picked', 'wrote true', 'closed']);
  await expect(page.getByRole('status')).toHaveText('Saved to the file that you chose');
  await page.evaluate(() => {
    (window as unknown as { cancel: boolean }).cancel = true;
  });
  await button.click();
  await expect.poll(log).toHaveLength(3);
  await expect(page.getByRole('alert')).toHaveText('');
});

test('what was read goes into a table for other programs', async ({ page }) => {
  await openWorkbench(page);
  await page.getByRole('tab', { name: 'Place' }).click();
  await type(page, 'Edge to string at the last fret, treble', '6.22');
  await kept(page);
  await page.getByRole('tab', { name: 'Record' }).click();
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'History as CSV' }).click(),
  ]);
  expect(download.suggestedFilename()).toMatch(/^Saddlemark history \d{4}-\d{2}-\d{2}\.csv$/);
  const [header = '', row = ''] = (await readFile(await download.path(), 'utf8')).split(/\r?\n/);
  expect(header).toContain('length (mm)');
  expect(row).toContain('place');
  expect(row).toContain('margin-treble');
  expect(row).toContain('6.22');
});

test('a tab with an older Saddlemark holds the database: told so, and kept once it is closed', async ({
  page,
  context,
}) => {
  const older = await context.newPage();
  await older.goto('./manifest.webmanifest');
  await older.evaluate(
    () =>
      new Promise<void>((resolve, reject) => {
        // An older one that does not let go when it is asked to.
        const request = indexedDB.open('saddlemark', 1);
        request.onupgradeneeded = () => {
          for (const table of ['entries', 'projects', 'versionTexts', 'pictures'])
            request.result.createObjectStore(table);
          request.result.createObjectStore('versions').createIndex('project', 'project');
        };
        request.onsuccess = () => {
          Object.assign(window, { held: request.result });
          resolve();
        };
        request.onerror = () => reject(request.error);
      }),
  );
  await openWorkbench(page);
  await type(page, 'Nut width', '45');
  await expect(page.getByRole('alert').filter({ hasText: 'still has an older Saddlemark open' })).toBeVisible({
    timeout: 15_000,
  });
  await expect(nutWidth(page)).toHaveValue('45.0');
  await older.close();
  await page.getByRole('button', { name: 'Try again' }).click();
  await kept(page);
});
