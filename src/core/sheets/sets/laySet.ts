import { fail, ok, type Result } from '../../result';
import type { Frame } from '../frame';
import { makeSheets } from '../makeSheets';
import { pageHead, pagesOn, wantedOf } from '../pagesOn';
import { correctionBy } from '../proof/printerProfile';
import { framesOf } from '../tapeDownTemplate';
import type { Page } from '../types';
import { type ContentsRow, contentsCount, contentsPages } from './contentsPages';
import { laySharedSet } from './laySharedSet';
import { documentOf, lackingOf, setName, withLines } from './setDocument';
import type { ContextMember, LaidSet, SetPrint } from './setTypes';

interface Laid {
  readonly frame: Frame;
  /** Of each instrument, in their order; null when it does not fit this frame. */
  readonly each: readonly (readonly Page[] | null)[];
  readonly count: number;
  /** How many parts are cut over several pages. */
  readonly cuts: number;
}

const layOn = (frame: Frame, members: readonly ContextMember[], { chosen, profile }: SetPrint): Laid => {
  const each = members.map(({ context }) => {
    const { wanted } = wantedOf(chosen, context, profile);
    if (!wanted.template && wanted.parts.length === 0) return null;
    return pagesOn(frame, wanted, context);
  });
  return {
    frame,
    each: each.map((laid) => laid?.pages ?? null),
    count: each.reduce((sum, laid) => sum + (laid?.pages.length ?? 0), 0),
    cuts: each.reduce((sum, laid) => sum + (laid?.cut.length ?? 0), 0),
  };
};

/** Why an instrument is left out, by what its own sheets say. */
const reasonOf = ({ context }: ContextMember, { chosen, paper, profile }: SetPrint): string => {
  const alone = makeSheets(chosen, paper, context, profile);
  if (alone.ok) return 'its pages lie the other way. Print it by itself.';
  return alone.issues.map(({ message }) => message).join(' ');
};

const held = ({ each }: Laid): number => each.filter((pages) => pages !== null).length;

/** The way that holds most instruments, then the one that cuts fewer parts, then fewer pages; upright when both are alike. */
const bestWay = (ways: readonly Laid[]): Laid | undefined =>
  [...ways].sort((one, other) => held(other) - held(one) || one.cuts - other.cuts || one.count - other.count)[0];

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
    const head = pageHead(frame, setName(members), after, { correction, issued: date });
    return withLines(frame, style.unit, [...head, ...items]);
  });
  const document = documentOf(members, print, [...contents, ...each.flatMap((pages) => pages ?? [])]);
  const starts = [
    { name: 'Contents', page: 0 },
    ...rows.flatMap(({ name, page }) => (page === null ? [] : [{ name, page: page - 1 }])),
  ];
  return document.ok ? ok({ document: document.value, starts, left }) : document;
};
