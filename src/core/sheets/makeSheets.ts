import { TEXT_HEIGHT } from '../drawing/textHeights';
import type { Item } from '../drawing/types';
import { fail, type Issue, issue, ok, type Result } from '../result';
import { measureText } from '../text/measureText';
import { showLength } from '../units/showLength';
import { correctedFor } from './correctedFor';
import { correctionWords } from './correctionWords';
import { fittedText } from './fittedText';
import type { Frame } from './frame';
import { layParts, tooLarge } from './layParts';
import { longLines } from './longLines';
import { papersThatDo } from './papers';
import type { SheetContext, SheetPart } from './parts/types';
import { correctionBy, type PrinterProfile } from './proof/printerProfile';
import type { PrintCorrection } from './proof/types';
import { sheetText } from './sheetItems';
import { SHEET_KINDS, TAPE_DOWN } from './sheetKinds';
import { framesOf, tapeDownTemplate, templatePages } from './tapeDownTemplate';
import { tilePages } from './tiles/tilePages';
import type { Page, Paper, SheetDocument } from './types';

/** The pages, and why a sheet that was asked for is not among them; path: the sheet's id. */
export interface MadeSheets {
  readonly document: SheetDocument;
  readonly missing: readonly Issue[];
}

/** Small print. */
const NOTE = [TEXT_HEIGHT.note, 'regular'] as const;
/** At the right end of the head, for a map of tiles, mm. */
const MAP_ROOM = 40;

/** What a page of parts is of, after ISO 7200, in two lines over them. */
const pageHead = (
  { project, date }: SheetContext,
  frame: Frame,
  correction: PrintCorrection | null,
  number: number,
  of: number,
): readonly Item[] => {
  const width = frame.right - frame.left - MAP_ROOM;
  const after = ` · ${project.instrument.hand} hand · sheet ${number} of ${of} · 1:1`;
  const name = fittedText(project.about.name, width - measureText(after, TEXT_HEIGHT.note, 'regular'), ...NOTE);
  return [
    sheetText('head-1', 'note', { x: frame.left, y: frame.top + 2 }, `${name}${after}`),
    sheetText(
      'head-2',
      'note',
      { x: frame.left, y: frame.top + 6.2 },
      fittedText(`${correctionWords(correction)} · ${date}, revision ${project.revision}`, width, ...NOTE),
    ),
  ];
};

interface Wanted {
  readonly profile: PrinterProfile | null;
  readonly template: boolean;
  readonly parts: readonly SheetPart[];
}

/** The items of each page: parts that fit, then those that may be cut, in tiles; null when a part can be neither. */
const laidOn = (frame: Frame, parts: readonly SheetPart[], unit: 'mm' | 'in'): readonly (readonly Item[])[] | null => {
  const tiled = parts.filter((part) => tooLarge(part, frame)).map((part) => tilePages(part, frame, unit));
  if (tiled.includes(null)) return null;
  const whole = layParts(
    parts.filter((part) => !tooLarge(part, frame)),
    frame,
  );
  return [...whole, ...tiled.flatMap((pages) => pages ?? [])];
};

/** All pages on one frame; null when something does not fit it. */
const pagesOn = (frame: Frame, { profile, template, parts }: Wanted, context: SheetContext): readonly Page[] | null => {
  const laid = laidOn(frame, parts, context.style.unit);
  if (laid === null) return null;
  const first = template
    ? templatePages(context.project, context.derived, frame, { ...context, profile }, laid.length)
    : [];
  if (first === null) return null;
  const of = first.length + laid.length;
  const correction = profile === null ? null : correctionBy(profile, frame);
  const rest = laid.map(
    (items, index): Page => ({
      width: frame.width,
      height: frame.height,
      items: [
        ...pageHead(context, frame, correction, first.length + index + 1, of),
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
  const names = papersThatDo(
    (each) => pagesFor({ ...paper, width: each.width, height: each.height }, wanted, context) !== null,
  );
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
 * papers that would do), those of `tapeDownTemplate`. profile: the printer that all pages are corrected for, null for none.
 */
export const makeSheets = (
  chosen: readonly string[],
  paper: Paper,
  context: SheetContext,
  profile: PrinterProfile | null = null,
): Result<MadeSheets> => {
  const { project, derived, style, date } = context;
  const template = chosen.includes(TAPE_DOWN.id);
  const made = SHEET_KINDS.filter(({ id }) => chosen.includes(id)).map((kind) => ({ kind, parts: kind.make(context) }));
  const missing = made.flatMap(({ kind, parts }) =>
    parts.ok ? [] : [issue(kind.id, parts.issues[0]?.code ?? '', parts.issues.map(({ message }) => message).join(' '))],
  );
  const wanted: Wanted = { profile, template, parts: made.flatMap(({ parts }) => (parts.ok ? parts.value : [])) };
  if (wanted.parts.length === 0) {
    if (!template) return fail('sheets', 'sheet.none', 'Choose a sheet to print.');
    const alone = tapeDownTemplate(project, derived, { paper, style, date, profile });
    return alone.ok ? ok({ document: alone.value, missing }) : alone;
  }
  const alone = template ? tapeDownTemplate(project, derived, { paper, style, date, profile }) : null;
  if (alone?.ok === false) return alone;
  const pages = pagesFor(paper, wanted, context);
  if (pages === null) return refusal(paper, wanted, context);
  const document = correctedFor(profile, {
    title: `${project.about.name}: sheets`,
    language: 'en',
    date,
    fileKey: `${project.id} ${project.revision} ${chosen.join('+')} ${paper.id} ${style.unit} ${date}`,
    pages,
  });
  return document.ok ? ok({ document: document.value, missing }) : document;
};
