import type { Item } from '../../drawing/types';
import { fail, type Result } from '../../result';
import { correctedFor } from '../correctedFor';
import type { Frame } from '../frame';
import { longLines } from '../longLines';
import { wantedOf } from '../pagesOn';
import { SHEET_KINDS } from '../sheetKinds';
import type { Page, SheetDocument } from '../types';
import type { ContextMember, SetPrint } from './setTypes';

/** Which of the chosen sheets an instrument does not have, with the reasons. */
export const lackingOf = ({ context }: ContextMember, { chosen, profile }: SetPrint): string => {
  const lacking = wantedOf(chosen, context, profile).missing.map(({ path, message }) => {
    const name = SHEET_KINDS.find(({ id }) => id === path)?.name ?? path;
    return `without ${name.toLowerCase()}: ${message}`;
  });
  return lacking.join(' ');
};

/** A page with its long lines. */
export const withLines = (frame: Frame, unit: 'mm' | 'in', items: readonly Item[]): Page => ({
  width: frame.width,
  height: frame.height,
  items: [...items, ...longLines(frame, unit)],
});

/** What a set is called. */
export const setName = ({ length }: readonly ContextMember[]): string =>
  `Set of ${length} instrument${length === 1 ? '' : 's'}`;

/** Pages of a set as a document, corrected for its printer. */
export const documentOf = (
  members: readonly ContextMember[],
  { chosen, paper, profile, shared }: SetPrint,
  pages: readonly Page[],
): Result<SheetDocument> => {
  const [first] = members;
  if (first === undefined) return fail('models', 'set.empty', 'Choose a model for the set.');
  const { date, style } = first.context;
  const key = members.map(({ name, context }) => `${name} ${context.project.id} ${context.project.revision}`).join('|');
  return correctedFor(profile, {
    title: setName(members),
    language: 'en',
    date,
    fileKey: `set ${shared} ${key} ${chosen.join('+')} ${paper.id} ${style.unit} ${date}`,
    pages,
  });
};
