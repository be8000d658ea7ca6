import { execFileSync } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { buildGolden } from './buildGolden.mjs';
import { goldenFiles } from './goldenFiles';

const folder = fileURLToPath(new URL('../../golden', import.meta.url));

describe('the golden files', () => {
  it('are what is written now; npm run golden writes them anew', async () => {
    const files = await goldenFiles();
    expect(readdirSync(folder).sort()).toEqual(Object.keys(files).sort());
    for (const [name, text] of Object.entries(files))
      expect(readFileSync(path.join(folder, name), 'utf8') === text, name).toBe(true);
  });
});

describe('in other languages and time zones', () => {
  const built = mkdtempSync(path.join(tmpdir(), 'saddlemark-golden-'));
  let script = '';
  beforeAll(async () => {
    script = await buildGolden(built);
  }, 60_000);
  afterAll(() => rmSync(built, { recursive: true, force: true }));

  // As each language writes 1234.5, from the Unicode CLDR: proof that the process is in it.
  it.each([
    ['de-DE', 'Asia/Kolkata', '1.234,5'],
    ['fr-FR', 'America/Los_Angeles', '1\u202f234,5'],
    ['ar-EG', 'Africa/Cairo', '١٬٢٣٤٫٥'],
  ])('%s, %s: every file is the same, byte for byte', (language, zone, written) => {
    const run = `
      const { goldenFiles } = await import(${JSON.stringify(pathToFileURL(script).href)});
      process.stdout.write(JSON.stringify({ files: await goldenFiles(), here: (1234.5).toLocaleString(), zone: new Date(0).getTimezoneOffset() }));`;
    const answer = execFileSync(process.execPath, ['--input-type=module', '-e', run], {
      encoding: 'utf8',
      maxBuffer: 64e6,
      env: { ...process.env, LC_ALL: `${language.replace('-', '_')}.UTF-8`, LANG: language, TZ: zone },
    });
    const { files, here, zone: minutes } = JSON.parse(answer);
    expect(here).toBe(written);
    expect(minutes).not.toBe(0);
    for (const [name, text] of Object.entries(files))
      expect(readFileSync(path.join(folder, name), 'utf8') === text, name).toBe(true);
  });
});

it('no exporter asks for the language of the machine', () => {
  const src = fileURLToPath(new URL('../../../src/exporters', import.meta.url));
  const sources = readdirSync(src, { recursive: true, encoding: 'utf8' }).filter((file) => /\.ts$/.test(file));
  expect(sources.length).toBeGreaterThan(15);
  const asking = sources.filter((file) =>
    /toLocale|\bIntl\b|localeCompare/.test(readFileSync(path.join(src, file), 'utf8')),
  );
  expect(asking).toEqual([]);
});
