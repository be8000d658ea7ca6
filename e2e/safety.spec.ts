import { readFile } from 'node:fs/promises';
import { type Download, expect, type Page, test } from '@playwright/test';
import { Resvg } from '@resvg/resvg-js';
import { SaxesParser, type SaxesTagPlain } from 'saxes';
import { HOSTILE } from '../test/importers/hostile';
import { readWithPdfjs } from '../test/readPdf/readWithPdfjs';
import { alertOf, begin, openMore, openWorkbench, statusOf, type } from './workbench';

/** What the page notes of itself while it is used. */
declare global {
  interface Window {
    violations?: string[];
    ran?: number;
  }
}

test.beforeEach(async ({ page }) => {
  await page.addInitScript(() => {
    window.violations = [];
    document.addEventListener('securitypolicyviolation', ({ effectiveDirective, blockedURI }) =>
      window.violations?.push(`${effectiveDirective} ${blockedURI}`),
    );
  });
});

const violationsOf = (page: Page): Promise<readonly string[]> => page.evaluate(() => window.violations ?? []);

const download = async (page: Page, name: string): Promise<Download> => {
  const [made] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name, exact: true }).first().click(),
  ]);
  return made;
};
const bytesOf = async (made: Download): Promise<Buffer> => readFile(await made.path());

const openFile = async (page: Page, name: string, text: string): Promise<void> => {
  const [chooser] = await Promise.all([
    page.waitForEvent('filechooser'),
    page.getByRole('button', { name: 'Open', exact: true }).click(),
  ]);
  await chooser.setFiles({ name, mimeType: 'application/json', buffer: Buffer.from(text) });
};

const importFile = async (page: Page, name: string, text: string): Promise<void> =>
  page
    .getByRole('dialog', { name: 'Import an outline' })
    .getByLabel('SVG or DXF file')
    .setInputFiles({ name, mimeType: 'application/octet-stream', buffer: Buffer.from(text) });

const OUTLINE =
  '<svg xmlns="http://www.w3.org/2000/svg" width="200mm" viewBox="0 0 200 50"><path d="M9 9H159V39H9Z"/></svg>';

test('a whole journey asks nothing of any other host and keeps to the policy of the page', async ({
  page,
  context,
}) => {
  const addresses: string[] = [];
  context.on('request', (request) => addresses.push(request.url()));
  const refused: string[] = [];
  page.on('console', (message) => {
    if (/content security policy|refused to/i.test(message.text())) refused.push(message.text());
  });
  await openWorkbench(page);

  for (const kind of ['Twelve-string guitar', 'Classical guitar']) {
    await begin(page, kind);
    for (const station of ['Measure', 'Draw', 'Place', 'Record', 'Print'])
      await page.getByRole('tab', { name: station }).click();
  }
  await page.getByRole('tab', { name: 'Measure' }).click();
  await page.getByRole('radio', { name: 'Cents by fret' }).check();
  await expect(page.getByRole('region', { name: 'Pictures' }).locator('svg').first()).toBeVisible();
  await page.getByRole('tab', { name: 'Draw' }).click();
  await page.getByRole('button', { name: 'Import an outline' }).click();
  await importFile(page, 'bridge.svg', OUTLINE);
  const dialog = page.getByRole('dialog', { name: 'Import an outline' });
  await expect(dialog.getByText('Outline 1 150.0 mm × 30.0 mm, 4 pieces')).toBeVisible();
  await dialog.getByRole('button', { name: 'Take this outline' }).click();
  await expect(statusOf(page)).toHaveText('Outline from a file');
  await page.getByRole('tab', { name: 'Print' }).click();
  await openMore(page, 'Your papers and margins');
  for (const name of ['PDF', 'SVG', 'DXF', 'CSV', 'PNG', 'set'])
    await download(page, name === 'set' ? 'Download set' : `Download ${name}`);
  const saved = (await bytesOf(await download(page, 'Save'))).toString('utf8');
  await openFile(page, 'again.json', saved);
  await expect(statusOf(page)).toContainText('Opened');
  await page.emulateMedia({ colorScheme: 'dark' });
  await page.emulateMedia({ media: 'print' });

  const own = new URL(page.url()).origin;
  expect(addresses.length).toBeGreaterThan(20);
  expect(addresses.filter((address) => !new RegExp(`^(?:blob:)?${own}/|^data:`).test(address))).toEqual([]);
  expect(refused).toEqual([]);
  expect(await violationsOf(page)).toEqual([]);
});

test('the page as built has a policy and no script or style of its own, and the policy holds', async ({ page }) => {
  const html = (await (await page.goto('./'))?.text()) ?? '';
  expect(html.match(/<script(?![^>]*\ssrc=)/g)).toBeNull();
  expect(html).not.toMatch(/<style|\sstyle=|\son\w+=/);
  const policy = await page.locator('meta[http-equiv="Content-Security-Policy"]').getAttribute('content');
  expect(policy).toContain("default-src 'none'");
  expect(policy).not.toMatch(/unsafe|\*|https?:/);

  await page.evaluate(() => {
    const script = document.createElement('script');
    script.textContent = 'window.ran = 1';
    const image = document.createElement('img');
    image.src = 'https://elsewhere.invalid/a.png';
    const button = document.createElement('button');
    button.setAttribute('onclick', 'window.ran = 2');
    document.body.append(script, image, button);
    button.click();
  });
  await expect
    .poll(async () => [...(await violationsOf(page))].sort())
    .toEqual(['img-src https://elsewhere.invalid/a.png', 'script-src-attr inline', 'script-src-elem inline']);
  expect(await page.evaluate(() => window.ran)).toBeUndefined();
});

const NAME = '</title></script><script>window.ran=1</script><img src=x onerror=window.ran=1>';
const STRING_NAME = '"><svg onload=ran=1>';
const NOTES = '<img src=x onerror=window.ran=1> javascript:window.ran=1 &lt;b&gt;';

/** Nothing that stood in a file has become part of the page, and nothing of it ran. */
const expectPlain = async (page: Page): Promise<void> => {
  await expect(
    page.locator('img[src="x"], iframe, object, embed, [onerror], [onload], [href^="javascript:"]'),
  ).toHaveCount(0);
  expect(await page.evaluate(() => window.ran)).toBeUndefined();
  expect(await violationsOf(page)).toEqual([]);
};

/** Names and attributes of all elements, as another XML parser reads them; it throws when the file is not well-formed. */
const elementsOf = (svg: string): readonly SaxesTagPlain[] => {
  const found: SaxesTagPlain[] = [];
  const parser = new SaxesParser();
  parser.on('opentag', (tag) => found.push(tag as SaxesTagPlain));
  parser.write(svg).close();
  return found;
};

test('text from a project file is text: on screen, in the PDF and in the SVG', async ({ page }) => {
  await openWorkbench(page);
  const project = JSON.parse((await bytesOf(await download(page, 'Save'))).toString('utf8'));
  project.about = { ...project.about, name: NAME, notes: NOTES };
  for (const string of project.strings) Object.assign(string, { name: STRING_NAME, source: NOTES });
  project.compensation.rule.source = NOTES;
  await openFile(page, '<img src=x onerror=window.ran=1>.json', JSON.stringify(project));
  await expect(alertOf(page)).toHaveText('');
  await expect(statusOf(page)).toHaveText(`Opened ${NAME}`);
  await expect(page.locator('.work-name strong')).toHaveText(NAME);
  await expect(page.getByRole('table', { name: 'Compensation by string' })).toContainText(`1 ${STRING_NAME}`);
  for (const station of ['Draw', 'Place', 'Record', 'Measure', 'Print']) {
    await page.getByRole('tab', { name: station }).click();
    await expectPlain(page);
  }

  const pdf = await bytesOf(await download(page, 'Download PDF'));
  const read = await readWithPdfjs(new Uint8Array(pdf));
  expect(read.title).toContain(NAME);
  // Where the name is too long for its place in the title block, it ends in an ellipsis.
  expect(read.pages.flatMap(({ texts }) => texts.map(({ text }) => text)).join('\n')).toContain(NAME.slice(0, 14));
  // An action may be a place to open at, an array; one that does something is a dictionary (ISO 32000-1, 12.6).
  const objects = pdf.toString('latin1').replace(/stream\r?\n[\s\S]*?endstream/g, '');
  expect(objects.match(/\/(?:JavaScript|JS|AA|URI|Launch)\b|\/OpenAction\s*<</g)).toBeNull();

  const made = await download(page, 'Download SVG');
  expect(made.suggestedFilename()).not.toMatch(/[<>"/\\:]/);
  const svg = (await bytesOf(made)).toString('utf8');
  const elements = elementsOf(svg);
  expect([...new Set(elements.map(({ name }) => name))].sort()).toEqual(
    expect.arrayContaining(['circle', 'desc', 'g', 'path', 'svg', 'text', 'title']),
  );
  expect(elements.filter(({ name }) => !/^(?:svg|title|desc|g|path|circle|text)$/.test(name))).toEqual([]);
  expect(elements.flatMap(({ attributes }) => Object.keys(attributes)).filter((key) => /^on|href/i.test(key))).toEqual(
    [],
  );
  expect(new Resvg(svg, { font: { loadSystemFonts: false } }).width).toBeGreaterThan(100);
  expect((await bytesOf(await download(page, 'Download CSV'))).toString('utf8')).toContain(NAME);
  await download(page, 'Download set');
  await expectPlain(page);
});

test('text from a drawing, and the names of files, are text', async ({ page }) => {
  await openWorkbench(page);
  await page.getByRole('tab', { name: 'Draw' }).click();
  await page.getByRole('button', { name: 'Import an outline' }).click();
  const dialog = page.getByRole('dialog', { name: 'Import an outline' });
  const evil = '&lt;img src=x onerror=window.ran=1&gt;';
  await importFile(
    page,
    '<img src=x onerror=window.ran=1>.svg',
    OUTLINE.replace(
      '<path ',
      `<title>${evil}</title><text>${evil}</text><script>window.ran=1</script><path id="${evil}" onclick="window.ran=1" `,
    ),
  );
  await expect(dialog.getByText('Outline 1 150.0 mm × 30.0 mm, 4 pieces')).toBeVisible();
  await expectPlain(page);
  await importFile(page, '<img src=x onerror=window.ran=1>.svg', `<${'b'.repeat(9)}>`);
  await expect(dialog.getByRole('alert').first()).not.toBeEmpty();
  await importFile(page, '<img src=x onerror=window.ran=1>.png', 'GIF89a');
  await expect(dialog.getByRole('alert').first()).toContainText(
    '<img src=x onerror=window.ran=1>.png is a GIF picture',
  );
  await expectPlain(page);
  await page.keyboard.press('Escape');
  await openFile(page, '<img src=x onerror=window.ran=1>.json', '{"<img src=x onerror=window.ran=1>":1}');
  await expect(alertOf(page)).toContainText('<img src=x onerror=window.ran=1>.json was not opened.');
  await expectPlain(page);
});

/** Project files made to harm: each with what its message says. */
const HOSTILE_PROJECTS: readonly (readonly [name: string, make: (whole: string) => string, says: RegExp])[] = [
  ['100,000 brackets', () => '['.repeat(100_000), /cannot be read as JSON/],
  ['100,000 brackets, closed again', () => `${'['.repeat(100_000)}${']'.repeat(100_000)}`, /not a Saddlemark project/],
  ['__proto__', (whole) => whole.replace('{', '{"__proto__":{"polluted":1},'), /holds the key "__proto__"/],
  ['constructor', (whole) => whole.replace('{', '{"constructor":{"prototype":{"polluted":1}},'), /holds the key/],
  ['1e999', (whole) => whole.replace(/"entered": [\d.]+/, '"entered": 1e999'), /scale\.entered" is Infinity/],
  ['a revision beyond counting', (whole) => whole.replace(/"revision": \d+/, '"revision": 1e300'), /"revision" is/],
  ['the year 99999', (whole) => whole.replace(/"created": "\d+/, '"created": "99999'), /expected a time such as/],
  ['a million strings', (whole) => whole.replace(/"strings": \[/, `"strings": [${'0,'.repeat(1_000_000)}`), /strings/],
  ['six megabytes', (whole) => whole.replace('"notes": "', `"notes": "${'x'.repeat(6_000_000)}`), /larger than 5 MB/],
];

test('hostile project files get a message within two seconds, and the open work stays as it was', async ({ page }) => {
  await openWorkbench(page);
  await type(page, 'Name', 'Plover 7');
  const before = (await bytesOf(await download(page, 'Save'))).toString('utf8');
  for (const [name, make, says] of HOSTILE_PROJECTS)
    await test.step(name, async () => {
      await openFile(page, `${name}.json`, make(before));
      await expect(alertOf(page)).toContainText(says, { timeout: 2000 });
      const told = (await alertOf(page).textContent()) ?? '';
      expect(told).toMatch(/Your open work is as it was\.$/);
      expect(told.length).toBeLessThan(400);
      await page.getByRole('button', { name: 'Dismiss' }).click();
    });
  for (const { name, make } of HOSTILE.slice(0, 3)) {
    await openFile(page, `${name}.json`, make());
    await expect(alertOf(page)).toContainText('not a Saddlemark project');
  }
  expect(await page.evaluate(() => 'polluted' in {})).toBe(false);
  expect((await bytesOf(await download(page, 'Save'))).toString('utf8')).toBe(before);
});
