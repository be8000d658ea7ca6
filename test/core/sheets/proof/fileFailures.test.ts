import { describe, expect, it } from 'vitest';
import { demoProject } from '../../../../src/core/kinds/demo';
import { makeSheets } from '../../../../src/core/sheets/makeSheets';
import { PAPERS } from '../../../../src/core/sheets/papers';
import { makePdf } from '../../../../src/exporters/pdf/makePdf';
import { FONTS } from '../../../exporters/pdf/handMadeSheet';
import { readWithPdfjs } from '../../../readPdf/readWithPdfjs';
import { readWithPdfLib } from '../../../readPdf/readWithPdfLib';
import { FILE_FAILURES } from '../../../reference/printProof';
import { valueOf as answerOf } from '../../document/valueOf';
import { contextOf } from '../parts/partCase';

const CHOSEN = ['tape-down', 'window', 'drill-card', 'worksheet'];

const fileFor = async (paperId: 'a4' | 'letter') => {
  const paper = PAPERS.find(({ id }) => id === paperId);
  if (paper === undefined) throw new Error(`There is no ${paperId}.`);
  const context = await contextOf(demoProject('demo', '2026-01-01T00:00:00.000Z'));
  const { bytes } = answerOf(makePdf(answerOf(makeSheets(CHOSEN, paper, context)).document, FONTS));
  return { read: await readWithPdfjs(bytes), inside: await readWithPdfLib(bytes) };
};

describe.each(['a4', 'letter'] as const)('failures that others met, on %s', (paper) => {
  it('cannot happen to the file', async () => {
    const { read, inside } = await fileFor(paper);
    expect(inside.pages.length).toBeGreaterThan(2);
    const [short, long] = FILE_FAILURES.papers[paper];
    const [first] = inside.pages;
    for (const { mediaBox, cropBox, rotation } of inside.pages) {
      expect(mediaBox, FILE_FAILURES.oneWay).toEqual(first?.mediaBox);
      const sides = mediaBox.slice(2).sort((one, other) => one - other);
      for (const [index, side] of [short, long].entries())
        expect(Math.abs((sides[index] ?? Number.NaN) - side), FILE_FAILURES.realPaper).toBeLessThan(2e-5);
      expect(cropBox, FILE_FAILURES.cropBox).toBeNull();
      expect(rotation).toBe(0);
    }
    expect(inside.viewerPreferences.PrintScaling, FILE_FAILURES.dialog).toBe('/None');
    for (const { texts } of read.pages) {
      const words = texts.map(({ text }) => text).join(' ');
      expect(words, FILE_FAILURES.measure).toMatch(/Long lines: .* across, .* along .*Read both with a steel rule/);
    }
  });

  it(`has a square of 100 mm (${FILE_FAILURES.fileIsRight})`, async () => {
    const { read } = await fileFor(paper);
    const sides = read.pages.flatMap(({ paths }) =>
      paths.flatMap(({ points, closed }) => {
        const [xs, ys] = [points.map(({ x }) => x), points.map(({ y }) => y)];
        const [width, height] = [Math.max(...xs) - Math.min(...xs), Math.max(...ys) - Math.min(...ys)];
        return closed && Math.abs(width - 100) < 1 && Math.abs(height - 100) < 1 ? [[width, height]] : [];
      }),
    );
    expect(sides).toHaveLength(1);
    for (const side of sides[0] ?? []) expect(Math.abs((side * 72) / 25.4 - FILE_FAILURES.square)).toBeLessThan(0.0005);
  });
});
