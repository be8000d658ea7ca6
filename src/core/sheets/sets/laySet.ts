import type { Item } from '../../drawing/types';
import { fail, ok, type Result } from '../../result';
import { correctedFor } from '../correctedFor';
import type { Frame } from '../frame';
import { longLines } from '../longLines';
import { makeSheets } from '../makeSheets';
import { laidOn, pageHead, pagesOn, wantedOf } from '../pagesOn';
import type { SheetContext } from '../parts/types';
import { correctionBy, type PrinterProfile } from '../proof/printerProfile';
import { SHEET_KINDS } from '../sheetKinds';
import { framesOf } from '../tapeDownTemplate';
import type { Page, Paper, SheetDocument } from '../types';
import { type ContentsRow, contentsCount, contentsPages } from './contentsPages';

/** An instrument of a set with all that its sheets can tell. */
export interface ContextMember {
  readonly name: string;
  readonly context: SheetContext;
}

/** What is not in the set: a whole instrument, or sheets that one does not have; and why. */
export interface LeftOut {
  readonly name: string;
  readonly reason: string;
}

/** A set as one document. */
export interface LaidSet {
  readonly document: SheetDocument;
  readonly left: readonly LeftOut[];
}

/** What of a set is to be printed, and how. */
export interface SetPrint {
  readonly chosen: readonly string[];
  readonly paper: Paper;
  readonly profile: PrinterProfile | null;
  /** Sheets that share a page in one instrument share it with those of the others too. Not for the tape-down template. */
  readonly shared: boolean;
}

interface Laid {
  readonly frame: Frame;
  /** Of each instrument, in their order; null when it does not fit this frame. */
  readonly each: readonly (readonly Page[] | null)[];
  readonly count: number;
}

const layOn = (frame: Frame, members: readonly ContextMember[], { chosen, profile }: SetPrint): Laid => {
  const each = members.map(({ context }) => {
    const { wanted } = wantedOf(chosen, context, profile);
    if (!wanted.template && wanted.parts.length === 0) return null;
    return pagesOn(frame, wanted, context);
  });
  return { frame, each, count: each.reduce((sum, pages) => sum + (pages?.length ?? 0), 0) };
};

/** Why an instrument is left out, by what its own sheets say. */
const reasonOf = ({ context }: ContextMember, { chosen, paper, profile }: SetPrint): string => {
  const alone = makeSheets(chosen, paper, context, profile);
  if (alone.ok) return 'its pages lie the other way. Print it by itself.';
  return alone.issues.map(({ message }) => message).join(' ');
};

/** Which of the chosen sheets an instrument does not have, with the reasons. */
const lackingOf = ({ context }: ContextMember, { chosen, profile }: SetPrint): string => {
  const lacking = wantedOf(chosen, context, profile).missing.map(({ path, message }) => {
    const name = SHEET_KINDS.find(({ id }) => id === path)?.name ?? path;
    return `without ${name.toLowerCase()}: ${message}`;
  });
  return lacking.join(' ');
};

const held = ({ each }: Laid): number => each.filter((pages) => pages !== null).length;

/** The way that holds most instruments, then the one with fewer pages; upright when both are alike. */
const bestWay = (ways: readonly Laid[]): Laid | undefined =>
  [...ways].sort((one, other) => held(other) - held(one) || one.count - other.count)[0];

const withLines = (frame: Frame, unit: 'mm' | 'in', items: readonly Item[]): Page => ({
  width: frame.width,
  height: frame.height,
  items: [...items, ...longLines(frame, unit)],
});

const documentOf = (
  members: readonly ContextMember[],
  { chosen, paper, profile, shared }: SetPrint,
  pages: readonly Page[],
): Result<SheetDocument> => {
  const [first] = members;
  if (first === undefined) return fail('models', 'set.empty', 'Choose a model for the set.');
  const { date, style } = first.context;
  const key = members.map(({ name, context }) => `${name} ${context.project.id} ${context.project.revision}`).join('|');
  return correctedFor(profile, {
    title: `Set of ${members.length} instruments`,
    language: 'en',
    date,
    fileKey: `set ${shared} ${key} ${chosen.join('+')} ${paper.id} ${style.unit} ${date}`,
    pages,
  });
};

/** Parts of all instruments together, each under its name and its instrument's. */
const sharedPages = (members: readonly ContextMember[], print: SetPrint, frame: Frame): readonly Page[] | null => {
  const [first] = members;
  if (first === undefined) return null;
  const { date, style } = first.context;
  const parts = members.flatMap(({ name, context }, index) =>
    wantedOf(print.chosen, context, null).wanted.parts.map((part) => ({
      ...part,
      id: `${index}-${part.id}`,
      name: `${part.name} · ${name}`,
      items: part.items.map((item) => ({ ...item, id: `${index}-${item.id}` })),
    })),
  );
  const laid = laidOn(frame, parts, style.unit);
  const correction = print.profile === null ? null : correctionBy(print.profile, frame);
  return (
    laid?.map((items, index) => {
      const after = ` · sheet ${index + 1} of ${laid.length} · 1:1`;
      const head = pageHead(frame, `Set of ${members.length} instruments`, after, { correction, issued: date });
      return withLines(frame, style.unit, [...head, ...items]);
    }) ?? null
  );
};

const laySharedSet = (members: readonly ContextMember[], print: SetPrint): Result<LaidSet> => {
  if (print.chosen.includes('tape-down'))
    return fail('sheets', 'set.shared', 'The tape-down template has pages of its own: leave it out to share pages.');
  const ways = framesOf(print.paper).flatMap((frame) => {
    const pages = sharedPages(members, print, frame);
    return pages === null || pages.length === 0 ? [] : [pages];
  });
  const [pages] = ways.sort((one, other) => one.length - other.length);
  if (pages === undefined) return fail('sheets', 'sheet.none', 'None of the chosen sheets can be laid on this paper.');
  const document = documentOf(members, print, pages);
  const left = members.flatMap((member) => {
    const reason = lackingOf(member, print);
    return reason === '' ? [] : [{ name: member.name, reason }];
  });
  return document.ok ? ok({ document: document.value, left }) : document;
};

/**
 * The sheets of many instruments as one document: contents first, then each instrument's pages, all of one size and lying
 * one way. An instrument that cannot be among them is named in the contents, with the reason. Codes: set.empty (no instrument
 * is left), set.shared (the tape-down template shares no page), sheet.none, those of `correctPages`.
 */
export const laySet = (members: readonly ContextMember[], print: SetPrint): Result<LaidSet> => {
  if (print.shared) return laySharedSet(members, print);
  const laid = bestWay(framesOf(print.paper).map((frame) => layOn(frame, members, print)));
  const [first] = members;
  if (laid === undefined || first === undefined) return fail('models', 'set.empty', 'Choose a model for the set.');
  const { frame, each } = laid;
  const remarks = members.map((member, index) =>
    each[index] === null ? reasonOf(member, print) : lackingOf(member, print),
  );
  const left = members.flatMap(({ name }, index) => {
    const reason = remarks[index] ?? '';
    return reason === '' ? [] : [{ name, reason }];
  });
  if (laid.count === 0)
    return fail(
      'models',
      'set.empty',
      `No instrument of this set can be printed. ${left[0]?.name}: ${left[0]?.reason}`,
    );
  let next = contentsCount(members.length, frame) + 1;
  const rows = members.map(({ name }, index): ContentsRow => {
    const pages = each[index] ?? null;
    const page = pages === null ? null : next;
    next += pages?.length ?? 0;
    return { name, page, pages: pages?.length ?? 0, remark: remarks[index] ?? '' };
  });
  const { date, style } = first.context;
  const correction = print.profile === null ? null : correctionBy(print.profile, frame);
  const contents = contentsPages(rows, frame).map((items) => {
    const after = ` · ${next - 1} pages · 1:1`;
    const head = pageHead(frame, `Set of ${members.length} instruments`, after, { correction, issued: date });
    return withLines(frame, style.unit, [...head, ...items]);
  });
  const document = documentOf(members, print, [...contents, ...each.flatMap((pages) => pages ?? [])]);
  return document.ok ? ok({ document: document.value, left }) : document;
};
