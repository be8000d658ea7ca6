import { afterAll, describe, expect, it } from 'vitest';
import { type Deviation, describeWorst, deviations } from '../readback/deviations';
import { TEMPLATES } from '../reference/templates';
import { popplerPage } from './popplerPage';
import { temporaryFolder } from './temporaryFolder';

/** cairo keeps lines in 1/256 pt, 1.4 µm: half a step each way is 1 µm aslant. mm. */
const THREE_MICRONS = 0.003;

describe("poppler's vectors", () => {
  const { templateFile } = temporaryFolder();
  const all: Deviation[] = [];
  afterAll(() => console.info(describeWorst("poppler's vectors", all)));

  it.each(TEMPLATES)('have every mark of $instrument, $paper, $unit within 3 µm', (template) => {
    const file = templateFile(template);
    const pages = template.pages.map((_, index) => popplerPage(file, index + 1));
    const found = deviations(template, pages);
    all.push(...found);
    expect(found.filter(({ by }) => !(by <= THREE_MICRONS))).toEqual([]);
  });
});
