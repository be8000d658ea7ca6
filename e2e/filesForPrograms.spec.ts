import { readFile } from 'node:fs/promises';
import { crc32 } from 'node:zlib';
import { type Download, expect, type Page, test } from '@playwright/test';
import { chunksOf } from '../test/exporters/png/pngChunks';
import { pngPixels } from '../test/exporters/png/pngPixels';
import { alertOf, openWorkbench, statusOf } from './workbench';

const get = async (page: Page, name: string): Promise<Download> => {
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: `Download ${name}`, exact: true }).click(),
  ]);
  return download;
};
const bytesOf = async (download: Download): Promise<Buffer> => readFile(await download.path());

test.beforeEach(async ({ page }) => {
  await page.clock.setFixedTime(new Date('2026-11-25T12:00:00Z'));
  await openWorkbench(page);
  await page.getByRole('tab', { name: 'Print' }).click();
});

// The golden files are of the same instrument, whose id is made anew on each start and stands in none of them.
for (const [name, golden, choice] of [
  ['SVG', 'demo.svg', null],
  ['DXF', 'demo-2007.dxf', null],
  ['DXF', 'demo-R12.dxf', ['DXF kind', 'R12']],
  ['CSV', 'demo.csv', null],
  ['CSV', 'demo-decimal-comma.csv', ['CSV marks', 'decimal-comma']],
] as const)
  test(`the ${name} as downloaded is ${golden}, byte for byte`, async ({ page }) => {
    if (choice !== null) await page.getByRole('combobox', { name: choice[0] }).selectOption(choice[1]);
    const download = await get(page, name);
    expect(download.suggestedFilename()).toBe(
      `Wren 14 ${name === 'CSV' ? 'placement' : 'drawing'}.${name.toLowerCase()}`,
    );
    await expect(statusOf(page)).toContainText(`Downloaded ${download.suggestedFilename()}`);
    const wanted = await readFile(new URL(`../test/golden/${golden}`, import.meta.url));
    expect((await bytesOf(download)).equals(wanted)).toBe(true);
    await expect(alertOf(page)).toBeEmpty();
  });

test('the PNG says its resolution, has the pixels of its size, and the lines where the SVG has them', async ({
  page,
}) => {
  const svg = (await bytesOf(await get(page, 'SVG'))).toString('utf8');
  const [, left = 0, top = 0, across = 0, along = 0] = (/viewBox="(\S+) (\S+) (\S+) (\S+)"/.exec(svg) ?? []).map(
    Number,
  );
  for (const dpi of [300, 150]) {
    await page.getByRole('combobox', { name: 'PNG resolution' }).selectOption(String(dpi));
    const bytes = await bytesOf(await get(page, 'PNG'));
    const chunks = chunksOf(bytes);
    expect(chunks.every(({ type, data, check }) => crc32(Buffer.concat([Buffer.from(type), data])) === check)).toBe(
      true,
    );
    const size = chunks.filter(({ type }) => type === 'pHYs').map(({ data }) => data);
    expect(size).toHaveLength(1);
    // Pixels to a metre, and the metre's number.
    const perMetre = Math.round(dpi / 0.0254);
    expect([size[0]?.readUInt32BE(0), size[0]?.readUInt32BE(4), size[0]?.[8]]).toEqual([perMetre, perMetre, 1]);
    const { width, height, rgba } = pngPixels(bytes);
    expect([width, height]).toEqual([Math.round((across * dpi) / 25.4), Math.round((along * dpi) / 25.4)]);
    const dark = (x: number, y: number): boolean => {
      const pixel = Math.floor(((y - top) * dpi) / 25.4) * width + Math.floor(((x - left) * dpi) / 25.4);
      return (rgba[pixel * 4] ?? 255) < 100;
    };
    // The square line of the demo: 610 from the nut, 0.7 thick, 86 to each side; white 1 mm from it.
    for (const x of [-80, -40, 20, 80]) expect([dark(x, 610), dark(x, 611)]).toEqual([true, false]);
    // Words are there: the bold figure over the left end of the line, in a box that is white otherwise.
    const inked = Array.from({ length: 200 }, (_, step) => dark(-85 + step * 0.1, 606.6)).filter(Boolean).length;
    expect(inked).toBeGreaterThan(20);
  }
});

test('the files follow the hand', async ({ page }) => {
  const holes = async (): Promise<readonly number[]> => {
    const svg = (await bytesOf(await get(page, 'SVG'))).toString('utf8');
    return [...svg.matchAll(/<circle class="hole"[^>]* cx="(\S+)" cy="(\S+)"/g)].map(([, x]) => Number(x));
  };
  const right = await holes();
  await page.getByRole('radio', { name: 'Left', exact: true }).check();
  const left = await holes();
  expect(right.length).toBe(8);
  expect(left).toEqual(right.map((x) => 0 - x));
});
