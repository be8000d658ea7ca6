import type { Item } from '../../core/drawing/types';
import type { Point, Segment } from '../../core/geom/types';
import { validatePath } from '../../core/geom/validatePath';
import { failed, type Issue, issue, ok, type Result } from '../../core/result';
import type { Page, SheetDocument } from '../../core/sheets/types';

/** A PDF page side holds at most 14 400 units of 1/72 in. Source: ISO 32000-1, Annex C.2. */
const LONGEST_SIDE_MM = 5080;

/** Nothing on a page can mean a place farther away than this, mm; it keeps every number in the file short. */
const FARTHEST_MM = 100_000;

/** jsPDF writes creation dates of these years only. */
const ISO_DATE = /^(19[7-9]\d|20[0-2]\d|203[0-7])-(0[1-9]|1[0-2])-(0[1-9]|[12]\d|3[01])$/u;

const LANGUAGE_TAG = /^[A-Za-z]{2,8}(-[A-Za-z0-9]{1,8})*$/u;

/**
 * The sheet itself when it can be written as a PDF, or everything that stands in the way.
 *
 * Codes: pdf.noPages, pdf.pageSize (a side that is not above 0 and at most 5080 mm), pdf.pageSizes (pages of different
 * sizes), pdf.number (a coordinate, size or angle that is not finite or lies beyond 100 m), pdf.date, pdf.language, and
 * those of `validatePath`.
 */
export function checkSheet(sheet: SheetDocument): Result<SheetDocument> {
  const issues = [
    ...documentIssues(sheet),
    ...sheet.pages.flatMap(sizeIssues),
    ...oneSizeIssues(sheet.pages),
    ...sheet.pages.flatMap(({ items }, page) => items.flatMap((item, index) => itemIssues(item, page, index))),
  ];
  return issues.length === 0 ? ok(sheet) : failed(issues);
}

function documentIssues({ pages, date, language }: SheetDocument): Issue[] {
  const issues: Issue[] = [];
  if (pages.length === 0) issues.push(issue('pages', 'pdf.noPages', 'There is no page to print.'));
  if (!ISO_DATE.test(date)) {
    issues.push(issue('date', 'pdf.date', `Expected a date from 1970-01-01 to 2037-12-31, got “${date}”.`));
  }
  if (!LANGUAGE_TAG.test(language)) {
    issues.push(issue('language', 'pdf.language', `Expected a language such as “en” or “de-AT”, got “${language}”.`));
  }
  return issues;
}

function sizeIssues({ width, height }: Page, page: number): Issue[] {
  return Object.entries({ width, height })
    .filter(([, side]) => !(side > 0 && side <= LONGEST_SIDE_MM))
    .map(([side, value]) => {
      const expected = `expected a ${side} above 0 and at most ${LONGEST_SIDE_MM} mm, the longest side that a PDF can hold`;
      return issue(`pages.${page}.${side}`, 'pdf.pageSize', `Page ${page + 1}: ${expected}, got ${value} mm.`);
    });
}

function oneSizeIssues(pages: readonly Page[]): Issue[] {
  const other = pages.findIndex(
    ({ width, height }) => !Object.is(width, pages[0]?.width) || !Object.is(height, pages[0]?.height),
  );
  if (other === -1) return [];
  const sizes = [pages[0], pages[other]].map((page) => `${page?.width} × ${page?.height} mm`);
  const message = `All pages must be of one size, or printers shift them: page 1 is ${sizes[0]}, page ${other + 1} is ${sizes[1]}.`;
  return [issue(`pages.${other}`, 'pdf.pageSizes', message)];
}

function itemIssues(item: Item, page: number, index: number): Issue[] {
  const field = `pages.${page}.items.${index}`;
  const where = `Page ${page + 1}, “${item.id}”`;
  const badNumber = numbersOf(item).find((value) => !(Math.abs(value) <= FARTHEST_MM));
  if (badNumber !== undefined) {
    return [issue(field, 'pdf.number', `${where}: expected numbers of at most ${FARTHEST_MM} mm, got ${badNumber}.`)];
  }
  if (item.kind === 'text') {
    if (item.height > 0) return [];
    return [issue(field, 'pdf.number', `${where}: expected a font size above 0 mm, got ${item.height}.`)];
  }
  const path = validatePath(item.path);
  if (path.ok) return [];
  return path.issues.map(({ path: part, code, message }) =>
    issue(`${field}.path.${part}`, code, `${where}: ${message}`),
  );
}

function numbersOf(item: Item): number[] {
  if (item.kind === 'text') return [item.at.x, item.at.y, item.height, item.angle];
  return [item.path.start, ...item.path.segments.flatMap(pointsOf)].flatMap(({ x, y }) => [x, y]);
}

function pointsOf(segment: Segment): Point[] {
  switch (segment.kind) {
    case 'line':
      return [segment.to];
    case 'arc':
      return [segment.to, segment.centre];
    case 'cubic':
      return [segment.c1, segment.c2, segment.to];
  }
}
