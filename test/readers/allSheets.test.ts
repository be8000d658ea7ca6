import { writeFileSync } from 'node:fs';
import { afterAll, describe, expect, it } from 'vitest';
import { ALL_SHEETS, allSheetFiles } from '../readback/allSheets';
import { checkSheets } from '../readback/checkSheets';
import { popplerPage } from './popplerPage';
import { readQdf } from './readQdf';
import { runReader } from './runReader';
import { temporaryFolder } from './temporaryFolder';

/** A micron, and what cairo's steps of 1/256 pt can make of it, mm. */
const MICRON = 0.001;
const THREE_MICRONS = 0.003;

const { fileNamed } = temporaryFolder();

describe('qpdf and poppler find long lines and named points of every sheet', () => {
  const worst = { qpdf: 0, poppler: 0 };
  afterAll(() =>
    console.info(
      `largest deviation on all sheets: qpdf ${(1000 * worst.qpdf).toFixed(3)} µm, poppler ${(1000 * worst.poppler).toFixed(3)} µm`,
    ),
  );

  it.each(ALL_SHEETS)('of $name, $hand hand, $paper.name', async (sheets) => {
    const files = (await allSheetFiles(sheets)).map((bytes, index) => {
      const file = fileNamed(`all-${index}.pdf`);
      writeFileSync(file, bytes);
      return file;
    });
    for (const file of files) {
      const said = runReader('qpdf', ['--check', file]);
      expect(said).toContain('No syntax or stream encoding errors');
      expect(said).not.toMatch(/warning/iu);
    }
    const spelled = files.map((file) => readQdf(runReader('qpdf', ['--qdf', file, '-'], 'latin1')));
    worst.qpdf = Math.max(worst.qpdf, checkSheets(spelled.flat(), sheets, MICRON));
    const drawn = spelled.flatMap((pages, index) =>
      pages.map(({ width, height }, page) => ({ width, height, ...popplerPage(files[index] ?? '', page + 1) })),
    );
    worst.poppler = Math.max(worst.poppler, checkSheets(drawn, sheets, THREE_MICRONS));
  });
});
