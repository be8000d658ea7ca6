import { fail, ok, type Result } from '../../result';
import type { Frame } from '../frame';
import { laidOn, pageHead, wantedOf } from '../pagesOn';
import { correctionBy } from '../proof/printerProfile';
import { framesOf } from '../tapeDownTemplate';
import type { Page } from '../types';
import { documentOf, lackingOf, setName, withLines } from './setDocument';
import type { ContextMember, LaidSet, SetPrint } from './setTypes';

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
    laid?.pages.map((items, index) => {
      const after = ` · sheet ${index + 1} of ${laid.pages.length} · 1:1`;
      const head = pageHead(frame, setName(members), after, { correction, issued: date });
      return withLines(frame, style.unit, [...head, ...items]);
    }) ?? null
  );
};

/** A set whose small sheets share pages. Codes: set.shared, sheet.none, those of `correctPages`. */
export const laySharedSet = (members: readonly ContextMember[], print: SetPrint): Result<LaidSet> => {
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
  return document.ok ? ok({ document: document.value, starts: [], left }) : document;
};
