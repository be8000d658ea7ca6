import { TEXT_HEIGHT } from '../drawing/textHeights';
import type { Item } from '../drawing/types';
import { type Issue, issue } from '../result';
import { measureText } from '../text/measureText';
import { correctionWords } from './correctionWords';
import { fittedText } from './fittedText';
import type { Frame } from './frame';
import { layParts, tooLarge } from './layParts';
import { longLines } from './longLines';
import type { SheetContext, SheetPart } from './parts/types';
import { correctionBy, type PrinterProfile } from './proof/printerProfile';
import type { PrintCorrection } from './proof/types';
import { sheetText } from './sheetItems';
import { SHEET_KINDS, TAPE_DOWN } from './sheetKinds';
import { templatePages } from './tapeDownTemplate';
import { tilePages } from './tiles/tilePages';
import type { Page } from './types';

/** Small print. */
const NOTE = [TEXT_HEIGHT.note, 'regular'] as const;
/** At the right end of the head, for a map of tiles, mm. */
const MAP_ROOM = 40;

/** Over the parts of a page, after ISO 7200, in two lines: what they are of, and what the print carries. */
export const pageHead = (
  frame: Frame,
  name: string,
  after: string,
  told: { readonly correction: PrintCorrection | null; readonly issued: string },
): readonly Item[] => {
  const width = frame.right - frame.left - MAP_ROOM;
  const fitting = fittedText(name, width - measureText(after, ...NOTE), ...NOTE);
  const second = (printer: string): string => `${correctionWords(told.correction, printer)} · ${told.issued}`;
  // A long name of a printer is cut, what is said after it never.
  const printer = fittedText(told.correction?.name ?? '', width - measureText(second(''), ...NOTE), ...NOTE);
  return [
    sheetText('head-1', 'note', { x: frame.left, y: frame.top + 2 }, `${fitting}${after}`),
    sheetText('head-2', 'note', { x: frame.left, y: frame.top + 6.2 }, fittedText(second(printer), width, ...NOTE)),
  ];
};

/** What is to be printed. */
export interface Wanted {
  readonly profile: PrinterProfile | null;
  readonly template: boolean;
  readonly parts: readonly SheetPart[];
}

/** The drawings of the chosen sheets, and why a sheet is not among them; path: the sheet's id. */
export const wantedOf = (
  chosen: readonly string[],
  context: SheetContext,
  profile: PrinterProfile | null,
): { readonly wanted: Wanted; readonly missing: readonly Issue[] } => {
  const made = SHEET_KINDS.filter(({ id }) => chosen.includes(id)).map((kind) => ({ kind, parts: kind.make(context) }));
  const missing = made.flatMap(({ kind, parts }) =>
    parts.ok ? [] : [issue(kind.id, parts.issues[0]?.code ?? '', parts.issues.map(({ message }) => message).join(' '))],
  );
  const parts = made.flatMap((each) => (each.parts.ok ? each.parts.value : []));
  return { wanted: { profile, template: chosen.includes(TAPE_DOWN.id), parts }, missing };
};

/** A part that is cut over pages, and how many it takes. */
export interface CutPart {
  readonly part: SheetPart;
  readonly pages: number;
}

/** Parts laid on pages: the items of each page, and which parts are cut. */
export interface LaidParts {
  readonly pages: readonly (readonly Item[])[];
  readonly cut: readonly CutPart[];
}

/** Parts that fit a page, then those that may be cut, in tiles; null when a part can be neither. */
export const laidOn = (frame: Frame, parts: readonly SheetPart[], unit: 'mm' | 'in'): LaidParts | null => {
  const tiled = parts
    .filter((part) => tooLarge(part, frame))
    .map((part) => ({ part, pages: tilePages(part, frame, unit) ?? [] }));
  if (tiled.some(({ pages }) => pages.length === 0)) return null;
  const whole = layParts(
    parts.filter((part) => !tooLarge(part, frame)),
    frame,
  );
  return {
    pages: [...whole, ...tiled.flatMap(({ pages }) => pages)],
    cut: tiled.map(({ part, pages }) => ({ part, pages: pages.length })),
  };
};

/** Pages of one frame, and which parts are cut over several of them. */
export interface LaidPages {
  readonly pages: readonly Page[];
  readonly cut: readonly CutPart[];
}

/** The better of two ways that a paper can lie comes first: fewer parts cut, then fewer pages. */
export const betterWay = (one: LaidPages, other: LaidPages): number =>
  one.cut.length - other.cut.length || one.pages.length - other.pages.length;

/** All pages on one frame; null when something does not fit it, or the template cannot be drawn. */
export const pagesOn = (
  frame: Frame,
  { profile, template, parts }: Wanted,
  context: SheetContext,
): LaidPages | null => {
  const laid = laidOn(frame, parts, context.style.unit);
  if (laid === null) return null;
  const first = template
    ? templatePages(context.project, context.derived, frame, { ...context, profile }, laid.pages.length)
    : [];
  if (first === null) return null;
  const of = first.length + laid.pages.length;
  const { project, date, style } = context;
  const told = {
    correction: profile === null ? null : correctionBy(profile, frame),
    issued: `${date}, revision ${project.revision}`,
  };
  const rest = laid.pages.map((items, index): Page => {
    const after = ` · ${project.instrument.hand} hand · sheet ${first.length + index + 1} of ${of} · 1:1`;
    return {
      width: frame.width,
      height: frame.height,
      items: [...pageHead(frame, project.about.name, after, told), ...items, ...longLines(frame, style.unit)],
    };
  });
  return { pages: [...first, ...rest], cut: laid.cut };
};
