import { fail, type Issue, ok, type Result } from '../result';
import { showLength } from '../units/showLength';
import { correctedFor } from './correctedFor';
import { tooLarge } from './layParts';
import { betterWay, type CutPart, type LaidPages, pagesOn, type Wanted, wantedOf } from './pagesOn';
import { paperRemedy } from './papers';
import type { SheetContext, SheetPart } from './parts/types';
import type { PrinterProfile } from './proof/printerProfile';
import { framesOf, tapeDownTemplate } from './tapeDownTemplate';
import type { Paper, SheetDocument } from './types';

/** A sheet that no page of the paper holds whole, and how it was helped. */
export interface TiledSheet {
  readonly name: string;
  /** Joined by their marks. */
  readonly pages: number;
  /** A paper of the maker's own that would hold it on one page; null when none does. */
  readonly whole: string | null;
}

/** The pages; which sheets are cut over several; and why one that was asked for is not there, path: the sheet's id. */
export interface MadeSheets {
  readonly document: SheetDocument;
  readonly tiled: readonly TiledSheet[];
  readonly missing: readonly Issue[];
}

/** All pages on this paper, whichever way it lies; upright when both ways are as good. */
const pagesFor = (paper: Paper, wanted: Wanted, context: SheetContext): LaidPages | null => {
  const ways = framesOf(paper).flatMap((frame) => {
    const laid = pagesOn(frame, wanted, context);
    return laid === null ? [] : [laid];
  });
  return ways.sort(betterWay)[0] ?? null;
};

const tiledOf = ({ part, pages }: CutPart, owned: readonly Paper[]): TiledSheet => ({
  name: part.name,
  pages,
  whole: owned.find((paper) => framesOf(paper).some((frame) => !tooLarge(part, frame)))?.name ?? null,
});

const largest = (parts: readonly SheetPart[]): SheetPart | undefined =>
  [...parts].sort((one, other) => other.width * other.height - one.width * one.height)[0];

/** The sheets that would not fit, in words, with the papers that would do. */
const refusal = (paper: Paper, wanted: Wanted, context: SheetContext, owned: readonly Paper[]): Result<MadeSheets> => {
  const remedy = paperRemedy(
    owned,
    (each) => pagesFor({ ...paper, width: each.width, height: each.height }, wanted, context) !== null,
  );
  const part = largest(wanted.parts.filter(({ whole }) => whole));
  const what =
    part === undefined
      ? 'These sheets are'
      : `“${part.name}” is ${showLength(part.width, context.style)} wide and ${showLength(part.height, context.style)} long, and all pages of one file lie the same way: that is`;
  const others = wanted.parts.length > 1 || wanted.template ? ' Or print them one by one.' : '';
  return fail('paper', 'sheet.large', `${what} too much for ${paper.name}. ${remedy}${others}`);
};

/**
 * The chosen sheets as one document for a paper, the tape-down template first. A sheet that this instrument does not have is
 * left out and told why. What is of the bridge stays on one page or is refused; other sheets that are too large are cut over
 * pages that are joined by marks. Codes: sheet.none (nothing is left to print), sheet.large (too large for this paper, with
 * the papers that would do), those of `tapeDownTemplate`. profile: the printer that all pages are corrected for, null for
 * none. owned: papers that the maker has.
 */
export const makeSheets = (
  chosen: readonly string[],
  paper: Paper,
  context: SheetContext,
  profile: PrinterProfile | null = null,
  owned: readonly Paper[] = [],
): Result<MadeSheets> => {
  const { project, derived, style, date } = context;
  const { wanted, missing } = wantedOf(chosen, context, profile);
  const { template } = wanted;
  if (wanted.parts.length === 0) {
    if (!template) return fail('sheets', 'sheet.none', 'Choose a sheet to print.');
    const alone = tapeDownTemplate(project, derived, { paper, style, date, profile, owned });
    return alone.ok ? ok({ document: alone.value, tiled: [], missing }) : alone;
  }
  const alone = template ? tapeDownTemplate(project, derived, { paper, style, date, profile, owned }) : null;
  if (alone?.ok === false) return alone;
  const laid = pagesFor(paper, wanted, context);
  if (laid === null) return refusal(paper, wanted, context, owned);
  const document = correctedFor(profile, {
    title: `${project.about.name}: sheets`,
    language: 'en',
    date,
    fileKey: `${project.id} ${project.revision} ${chosen.join('+')} ${paper.id} ${style.unit} ${date}`,
    pages: laid.pages,
  });
  if (!document.ok) return document;
  return ok({ document: document.value, tiled: laid.cut.map((each) => tiledOf(each, owned)), missing });
};
