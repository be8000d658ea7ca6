import { afterAll, describe, expect, it } from 'vitest';
import { type Deviation, describeWorst, deviations } from '../readback/deviations';
import { TEMPLATES } from '../reference/templates';
import { readQdf } from './readQdf';
import { runReader } from './runReader';
import { temporaryFolder } from './temporaryFolder';

/** A micron, mm. */
const MICRON = 0.001;

describe('qpdf', () => {
  const { templateFile } = temporaryFolder();
  const all: Deviation[] = [];
  afterAll(() => console.info(describeWorst('qpdf', all)));

  it.each(TEMPLATES)('finds nothing to complain about in $instrument, $paper, $unit', (template) => {
    const said = runReader('qpdf', ['--check', templateFile(template)]);
    expect(said).toContain('No syntax or stream encoding errors');
    expect(said).not.toMatch(/warning/iu);
  });

  it.each(TEMPLATES)('spells out every mark of $instrument, $paper, $unit within a micron', (template) => {
    const pages = readQdf(runReader('qpdf', ['--qdf', templateFile(template), '-'], 'latin1'));
    expect(pages).toHaveLength(template.pages.length);
    const found = deviations(template, pages);
    all.push(...found);
    expect(found.filter(({ by }) => !(by <= MICRON))).toEqual([]);
  });
});
