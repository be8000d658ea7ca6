import { afterAll, describe, expect, it } from 'vitest';
import { TEMPLATES } from '../reference/templates';
import { type Deviation, describeWorst, deviations } from './deviations';
import { makeTemplate } from './makeTemplate';
import { READERS } from './readers';

/** A micron, mm. */
const MICRON = 0.001;

describe.each(READERS)('$reader finds every mark of a template within a micron', ({ reader, read }) => {
  const all: Deviation[] = [];
  afterAll(() => console.info(describeWorst(reader, all)));

  it.each(TEMPLATES)('$instrument, $paper, $unit', async (template) => {
    const pages = await read(makeTemplate(template));
    expect(pages).toHaveLength(template.pages.length);
    const found = deviations(template, pages);
    all.push(...found);
    expect(found.filter(({ by }) => !(by <= MICRON))).toEqual([]);
  });
});
