import { fail, type Issue, ok, type Result } from '../result';
import { showLength } from '../units/showLength';
import { correctedFor } from './correctedFor';
import { pagesOn, type Wanted, wantedOf } from './pagesOn';
import { papersThatDo } from './papers';
import type { SheetContext, SheetPart } from './parts/types';
import type { PrinterProfile } from './proof/printerProfile';
import { framesOf, tapeDownTemplate } from './tapeDownTemplate';
import type { Page, Paper, SheetDocument } from './types';

/** The pages, and why a sheet that was asked for is not among them; path: the sheet's id. */
export interface MadeSheets {
  readonly document: SheetDocument;
  readonly missing: readonly Issue[];
}

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
  const { wanted, missing } = wantedOf(chosen, context, profile);
  const { template } = wanted;
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
