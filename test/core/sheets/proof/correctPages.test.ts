import { describe, expect, it } from 'vitest';
import type { Item } from '../../../../src/core/drawing/types';
import { circlePath } from '../../../../src/core/geom/circlePath';
import { correctPages } from '../../../../src/core/sheets/proof/correctPages';
import type { SheetDocument } from '../../../../src/core/sheets/types';
import { instrumentNamed, layTemplate } from '../../../readback/makeTemplate';
import { FILE_FAILURES } from '../../../reference/printProof';
import { valueOf as answerOf, codesOf } from '../../document/valueOf';

const HOLE: Item = {
  kind: 'path',
  id: 'hole',
  part: 'pin 1',
  role: 'hole',
  layer: 'pins',
  path: circlePath({ x: 100, y: 50 }, 10),
};
const WORDS: Item = {
  kind: 'text',
  id: 'words',
  part: 'sheet',
  role: 'note',
  layer: 'sheet',
  at: { x: 40, y: 200 },
  text: 'BASS',
  height: 2.9,
  anchor: 'start',
  angle: 0.1,
};
const ONE_PAGE: SheetDocument = {
  title: 't',
  language: 'en',
  date: '2026-11-25',
  fileKey: 'k',
  pages: [{ width: 210, height: 297, items: [HOLE, WORDS] }],
};
const BY = { factorX: 1.004, factorY: 0.998, name: 'Bench laser', date: '2026-11-25' };

describe('correctPages', () => {
  it('keeps arcs where both axes grow alike', () => {
    const made = answerOf(correctPages(ONE_PAGE, { ...BY, factorX: 1.01, factorY: 1.01 }));
    const [hole] = made.pages[0]?.items ?? [];
    if (hole?.kind !== 'path') throw new Error('There is no hole.');
    for (const segment of hole.path.segments) {
      if (segment.kind !== 'arc') throw new Error('Expected an arc.');
      expect(segment.centre.x).toBeCloseTo(101, 9);
      expect(segment.centre.y).toBeCloseTo(50.5, 9);
      expect(Math.hypot(segment.to.x - 101, segment.to.y - 50.5)).toBeCloseTo(10.1, 9);
    }
  });

  // The ellipse (x/1.004 − 100)² + (y/0.998 − 50)² = 10²: every point of the cubics lies on it within 4e-6 mm.
  it('makes an ellipse of a circle where they do not', () => {
    const made = answerOf(correctPages(ONE_PAGE, BY));
    const [hole, words] = made.pages[0]?.items ?? [];
    if (hole?.kind !== 'path' || words?.kind !== 'text') throw new Error('Expected a hole and words.');
    let { start } = hole.path;
    for (const segment of hole.path.segments) {
      if (segment.kind !== 'cubic') throw new Error('Expected a cubic.');
      for (const t of [0.25, 0.5, 0.75, 1]) {
        const [a, b, c, d] = [(1 - t) ** 3, 3 * t * (1 - t) ** 2, 3 * t ** 2 * (1 - t), t ** 3];
        const x = a * start.x + b * segment.c1.x + c * segment.c2.x + d * segment.to.x;
        const y = a * start.y + b * segment.c1.y + c * segment.c2.y + d * segment.to.y;
        expect(Math.abs(Math.hypot(x / 1.004 - 100, y / 0.998 - 50) - 10)).toBeLessThan(1e-5);
      }
      start = segment.to;
    }
    // Words keep their size and their lean, and move with what they name: 40 · 1.004, 200 · 0.998.
    expect(words).toMatchObject({ height: 2.9, angle: 0.1, text: 'BASS' });
    expect(words.at.x).toBeCloseTo(40.16, 9);
    expect(words.at.y).toBeCloseTo(199.6, 9);
  });

  it('keeps the size of the page and the file apart from the uncorrected one', () => {
    const made = answerOf(correctPages(ONE_PAGE, BY));
    expect(made.pages.map(({ width, height }) => [width, height])).toEqual([[210, 297]]);
    expect(made.fileKey).not.toBe(ONE_PAGE.fileKey);
    expect(ONE_PAGE.pages[0]?.items[0]).toBe(HOLE);
  });

  it(`never reaches into the printer’s white (${FILE_FAILURES.fileIsRight})`, () => {
    const template = answerOf(layTemplate(instrumentNamed('steel'), 'a4', 'mm'));
    expect(correctPages(template, { ...BY, factorX: 1.005, factorY: 1.005 }).ok).toBe(true);
    expect(codesOf(correctPages(template, { ...BY, factorX: 1.06, factorY: 1 }))).toEqual(['correction.large']);
    expect(codesOf(correctPages(template, { ...BY, factorX: 1, factorY: 1.06 }))).toEqual(['correction.large']);
  });
});
