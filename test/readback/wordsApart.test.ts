import { expect, it } from 'vitest';
import { readWithPdfjs } from '../readPdf/readWithPdfjs';
import { boxOfText, overlap } from './boxes';
import { EVERY_TEMPLATE } from './everyTemplate';
import { makeTemplate } from './makeTemplate';

it.each(EVERY_TEMPLATE)('no words of $instrument, $paper, $unit, $hand hand lie over others', async (wanted) => {
  const { pages } = await readWithPdfjs(makeTemplate(wanted));
  const clashes = pages.flatMap(({ texts }) => {
    const boxes = texts.map((text) => ({ text: text.text, box: boxOfText(text) }));
    return boxes.flatMap((one, index) =>
      boxes.slice(index + 1).flatMap((other) => (overlap(one.box, other.box) ? [`${one.text} | ${other.text}`] : [])),
    );
  });
  expect(clashes).toEqual([]);
});
