import { expect, it } from 'vitest';
import { readWithPdfium } from '../readPdf/readWithPdfium';
import { TEMPLATES } from '../reference/templates';
import { circlesOf } from './deviations';
import { makeTemplate } from './makeTemplate';

it.each(TEMPLATES)('$instrument, $paper, $unit has no hole beyond those expected', async (template) => {
  const pages = await readWithPdfium(makeTemplate(template));
  expect(pages.map(({ paths }) => circlesOf(paths).length)).toEqual(template.pages.map(({ holes }) => holes.length));
});
