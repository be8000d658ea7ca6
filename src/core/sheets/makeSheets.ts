import type { Item } from '../drawing/types';
import { fail, type Issue, issue, ok, type Result } from '../result';
import { showLength } from '../units/showLength';
import type { Frame } from './frame';
import { layParts, tooLarge } from './layParts';
import { longLines } from './longLines';
import { LARGER_PAPERS, PAPERS } from './papers';
import type { SheetContext, SheetPart } from './parts/types';
import { sheetText } from './sheetItems';
import { SHEET_KINDS, TAPE_DOWN } from './sheetKinds';
import { framesOf, tapeDownTemplate, templatePages } from './tapeDownTemplate';
import type { Page, Paper, SheetDocument } from './types';

/** The pages, and why a sheet that was asked for is not among them; path: the sheet's id. */
export interface MadeSheets {
  readonly document: SheetDocument;
  readonly missing: readonly Issue[];
}

/** What a page of parts is of, after ISO 7200, in two lines over them. */
const pageHead = ({ project, date }: SheetContext, frame: Frame, number: number, of: number): readonly Item[] => [
  sheetText(
    'head-1',
    'note',
    { x: frame.left, y: frame.top + 2 },
    `${[...project.about.name].slice(0, 60).join('')} · ${project.instrument.hand} hand · sheet ${number} of ${of} · 1:1`,
  ),
  sheetText(
    'head-2',
    'note',
    { x: frame.left, y: frame.top + 6.2 },
    `no print correction (1.000 × 1.000) · ${date}, revision ${project.revision}`,
  ),
];

interface Wanted {
  readonly template: boolean;
  readonly parts: readonly SheetPart[];
}

/** All pages on one frame; null when something does not fit it. */
const pagesOn = (frame: Frame, { template, parts }: Wanted, context: SheetContext): readonly Page[] | null => {
  if (tooLarge(parts, frame) !== null) return null;
  const laid = layParts(parts, frame);
  const first = template ? templatePages(context.project, context.derived, frame, context, laid.length) : [];
  if (first === null) return null;
  const of = first.length + laid.length;
  const rest = laid.map(
    (items, index): Page => ({
      width: frame.width,
      height: frame.height,
      items: [
        ...pageHead(context, frame, first.length + index + 1, of),
        ...items,
        ...longLines(frame, context.style.unit),
      ],
    }),
  );
  return [...first, ...rest];
};

/** All pages on this paper, whichever way it lies: the way that takes fewer pages, upright when both take as many. */
const pagesFor = (paper: Paper, wanted: Wanted, context: SheetContext): readonly Page[] | null => {
  const ways = framesOf(paper).flatMap((frame) => {
    const pages = pagesOn(frame, wanted, context);
    return pages === null ? [] : [pages];
  });
  return ways.sort((one, other) => one.length - other.length)[0] ?? null;
};

const largest = (parts: readonly SheetPart[]): SheetPart | undefined =>
  [...parts].sort((one, other) => other.width * other.height - one.width * one.height)[0];

/** The sheets that would not fit, in words, with the papers that would do. */
const refusal = (paper: Paper, wanted: Wanted, context: SheetContext): Result<MadeSheets> => {
  const wouldDo = [...PAPERS, ...LARGER_PAPERS].filter((each) => pagesFor(each, wanted, context) !== null);
  const names = wouldDo.map(({ name }) => name).join(', ');
  const part = largest(wanted.parts);
  const what =
    part === undefined
      ? 'These sheets are'
      : `“${part.name}” is ${showLength(part.width, context.style)} wide and ${showLength(part.height, context.style)} long, and all pages of one file lie the same way: that is`;
  const remedy = names === '' ? 'Print them one by one.' : `These papers would do: ${names}. Or print them one by one.`;
  return fail('paper', 'sheet.large', `${what} too much for ${paper.name}. ${remedy}`);
};

/**
 * The chosen sheets as one document for a paper, the tape-down template first. A sheet that this instrument does not have is
 * left out and told why. Codes: sheet.none (nothing is left to print), sheet.large (too large for this paper, with the
 * papers that would do), those of `tapeDownTemplate`.
 */
export const makeSheets = (chosen: readonly string[], paper: Paper, context: SheetContext): Result<MadeSheets> => {
  const { project, derived, style, date } = context;
  const template = chosen.includes(TAPE_DOWN.id);
  const made = SHEET_KINDS.filter(({ id }) => chosen.includes(id)).map((kind) => ({ kind, parts: kind.make(context) }));
  const missing = made.flatMap(({ kind, parts }) =>
    parts.ok ? [] : [issue(kind.id, parts.issues[0]?.code ?? '', parts.issues.map(({ message }) => message).join(' '))],
  );
  const wanted: Wanted = { template, parts: made.flatMap(({ parts }) => (parts.ok ? parts.value : [])) };
  if (wanted.parts.length === 0) {
    if (!template) return fail('sheets', 'sheet.none', 'Choose a sheet to print.');
    const alone = tapeDownTemplate(project, derived, { paper, style, date });
    return alone.ok ? ok({ document: alone.value, missing }) : alone;
  }
  const alone = template ? tapeDownTemplate(project, derived, { paper, style, date }) : null;
  if (alone?.ok === false) return alone;
  const pages = pagesFor(paper, wanted, context);
  if (pages === null) return refusal(paper, wanted, context);
  const document: SheetDocument = {
    title: `${project.about.name}: sheets`,
    language: 'en',
    date,
    fileKey: `${project.id} ${project.revision} ${chosen.join('+')} ${paper.id} ${style.unit} ${date}`,
    pages,
  };
  return ok({ document, missing });
};
