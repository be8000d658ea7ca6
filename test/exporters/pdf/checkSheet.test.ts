import { describe, expect, it } from 'vitest';
import type { SheetDocument } from '../../../src/core/sheets/types';
import { makePdf } from '../../../src/exporters/pdf/makePdf';
import { FONTS, handMadeSheet, lineThrough, pathItem, textItem } from './handMadeSheet';

const issuesOf = (sheet: SheetDocument, fonts = FONTS) => {
  const result = makePdf(sheet, fonts);
  return result.ok ? [] : result.issues;
};
const codesOf = (sheet: SheetDocument) => issuesOf(sheet).map(({ path, code }) => [path, code]);
const a4 = handMadeSheet(210, 297, []);

describe('a sheet that cannot be a PDF', () => {
  // 14 400 units of 1/72 in = 5080 mm: ISO 32000-1 Annex C.2.
  it.each([5080.001, 0, -1, Number.NaN, Number.POSITIVE_INFINITY])('a side of %s mm', (side) => {
    expect(codesOf(handMadeSheet(side, 100, []))).toEqual([['pages.0.width', 'pdf.pageSize']]);
    expect(codesOf(handMadeSheet(100, side, []))).toEqual([['pages.0.height', 'pdf.pageSize']]);
    const [issue] = issuesOf(handMadeSheet(side, 100, []));
    expect(issue?.message).toContain('at most 5080 mm');
  });

  it('pages of different sizes', () => {
    const sheet = { ...a4, pages: [...a4.pages, { width: 297, height: 210, items: [] }] };
    expect(codesOf(sheet)).toEqual([['pages.1', 'pdf.pageSizes']]);
  });

  it('no pages', () => {
    expect(codesOf(handMadeSheet(210, 297))).toEqual([['pages', 'pdf.noPages']]);
  });

  it.each([Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY, 1e6])('a coordinate of %s', (x) => {
    const line = pathItem(
      lineThrough([
        { x: 0, y: 0 },
        { x, y: 5 },
      ]),
    );
    const curve = pathItem({
      start: { x: 0, y: 0 },
      segments: [{ kind: 'cubic', c1: { x: 1, y: 1 }, c2: { x: 2, y: x }, to: { x: 3, y: 3 } }],
      closed: false,
    });
    const text = textItem('H', { at: { x, y: 1 } });
    const turned = textItem('H', { angle: x });
    expect(codesOf(handMadeSheet(210, 297, [], [line, curve, text, turned]))).toEqual(
      [0, 1, 2, 3].map((index) => [`pages.1.items.${index}`, 'pdf.number']),
    );
    const [issue] = issuesOf(handMadeSheet(210, 297, [], [line]));
    expect(issue?.message).toContain('Page 2, “a path”');
    expect(issue?.message).toContain(String(x));
  });

  it('an arc whose ends are not equally far from its centre', () => {
    const arc = pathItem({
      start: { x: 0, y: 0 },
      segments: [{ kind: 'arc', to: { x: 10, y: 0 }, centre: { x: 4, y: 0 }, clockwise: true }],
      closed: false,
    });
    expect(codesOf(handMadeSheet(210, 297, [arc]))).toEqual([['pages.0.items.0.path.segments.0', 'path.arcRadii']]);
  });

  it.each([0, -4])('a font size of %s', (height) => {
    expect(codesOf(handMadeSheet(210, 297, [textItem('H', { height })]))).toEqual([['pages.0.items.0', 'pdf.number']]);
  });

  it.each(['', '29.2.2024', '2024-13-01', '2038-01-01'])('the date “%s”', (date) => {
    expect(codesOf({ ...a4, date })).toEqual([['date', 'pdf.date']]);
  });

  it.each(['', 'english (US)', 'en)'])('the language “%s”', (language) => {
    expect(codesOf({ ...a4, language })).toEqual([['language', 'pdf.language']]);
  });

  it('tells everything at once', () => {
    const sheet = { ...handMadeSheet(6000, 297, [textItem('H', { height: Number.NaN })]), date: 'today' };
    expect(codesOf(sheet).map(([, code]) => code)).toEqual(['pdf.date', 'pdf.pageSize', 'pdf.number']);
  });

  it.each([
    { what: 'a page of a web server instead', bytes: new TextEncoder().encode('<!doctype html>') },
    { what: 'empty', bytes: new Uint8Array() },
    { what: 'cut off in its directory', bytes: FONTS.regular.slice(0, 100) },
    { what: 'cut off at its end', bytes: FONTS.regular.slice(0, -100) },
  ])('a font file that is $what', ({ bytes }) => {
    expect(issuesOf(a4, { ...FONTS, regular: bytes }).map(({ code }) => code)).toEqual(['pdf.font']);
    expect(issuesOf(a4, { ...FONTS, bold: bytes }).map(({ code }) => code)).toEqual(['pdf.font']);
  });
});
