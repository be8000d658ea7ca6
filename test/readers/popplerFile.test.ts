import { describe, expect, it } from 'vitest';
import { TEMPLATES } from '../reference/templates';
import { runReader } from './runReader';
import { temporaryFolder } from './temporaryFolder';

/** 72 pt to the inch, 25.4 mm to the inch; pdfinfo rounds to a hundredth. */
const points = (mm: number): string => ((mm * 72) / 25.4).toFixed(2);

describe.each(TEMPLATES)('poppler, $instrument, $paper, $unit', (template) => {
  const { templateFile } = temporaryFolder();

  it('finds every box of every page to be the paper, none turned', () => {
    const told = runReader('pdfinfo', ['-box', '-f', '1', '-l', '99', templateFile(template)]);
    const boxes = Array.from(told.matchAll(/Page +\d+ \w+Box: +(.*)/gu), ([, box = '']) => box.split(/\s+/u).join(' '));
    const paper = `0.00 0.00 ${points(template.width)} ${points(template.height)}`;
    expect(boxes).toEqual(template.pages.flatMap(() => [paper, paper, paper, paper, paper]));
    const turns = Array.from(told.matchAll(/Page +\d+ rot: +(\d+)/gu), ([, turn]) => turn);
    expect(turns).toEqual(template.pages.map(() => '0'));
  });

  it('finds both cuts of the font embedded, and their letters named', () => {
    const [, , ...rows] = runReader('pdffonts', [templateFile(template)])
      .trim()
      .split('\n');
    const fonts = rows.map((row) => /^(\S+) .*Identity-H +(yes|no) +(?:yes|no) +(yes|no)/u.exec(row)?.slice(1));
    expect(fonts).toEqual([
      ['DejaVuSansCondensed', 'yes', 'yes'],
      ['DejaVuSansCondensed-Bold', 'yes', 'yes'],
    ]);
  });

  it('extracts the words intact', () => {
    const text = runReader('pdftotext', ['-layout', templateFile(template), '-']).replace(/ +/gu, ' ');
    for (const row of template.figures) expect(text).toContain(row.join(' '));
    const [figure = '', from = ''] = template.squareLine;
    expect(text).toContain(`${figure} ${from}`);
    for (const sign of ['″', '×', '±', '⌀', '⅜', '√(d² + r²)']) expect(text).toContain(sign);
  });
});
