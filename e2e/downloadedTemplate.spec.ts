import { readFile } from 'node:fs/promises';
import { expect, test } from '@playwright/test';
import { deviations } from '../test/readback/deviations';
import { makeTemplate } from '../test/readback/makeTemplate';
import { READERS } from '../test/readback/readers';
import { TEMPLATES } from '../test/reference/templates';
import { openWorkbench } from './workbench';

/** A micron, mm. */
const MICRON = 0.001;

// The instruments and the coordinates worked by hand for them stand in test/reference. The bytes are those that the other
// checks read back, made on the day that stands in them.
for (const template of TEMPLATES)
  test(`the template of ${template.instrument}, ${template.paper}, ${template.unit}, as downloaded, is the one that is checked`, async ({
    page,
  }) => {
    await page.clock.setFixedTime(new Date('2026-11-25T12:00:00Z'));
    await openWorkbench(page);
    const [chooser] = await Promise.all([
      page.waitForEvent('filechooser'),
      page.getByRole('button', { name: 'Open', exact: true }).click(),
    ]);
    const file = new URL(`../test/reference/instruments/${template.instrument}.json`, import.meta.url);
    await chooser.setFiles({ name: 'one.json', mimeType: 'application/json', buffer: await readFile(file) });
    await expect(page.getByRole('status')).toContainText('Opened');
    await page.getByRole('radio', { name: template.unit, exact: true }).check();
    await page.getByRole('tab', { name: 'Print' }).click();
    await page.getByRole('combobox', { name: 'Paper' }).selectOption(template.paper);
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name: 'Download PDF', exact: true }).click(),
    ]);
    const bytes = new Uint8Array(await readFile(await download.path()));
    for (const { read } of READERS)
      expect(deviations(template, await read(bytes)).filter(({ by }) => !(by <= MICRON))).toEqual([]);
    expect(Buffer.from(bytes).equals(makeTemplate(template))).toBe(true);
  });
