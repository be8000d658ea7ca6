import type { LengthStyle } from '../units/formatLength';
import { showLength } from '../units/showLength';
import { readWords } from './correctionWords';
import type { PrinterProfile } from './proof/printerProfile';
import type { Paper } from './types';

/** What does not go with the paper that the pages are laid for. */
export interface PaperCaution {
  /** loaded: another paper is in the printer. profile: the printer's factors are of another paper. proof: so are the readings. */
  readonly code: 'paper.loaded' | 'paper.profile' | 'paper.proof';
  /** What is wrong, what would come of it, and the mend. */
  readonly message: string;
  /** That the pages are laid for, and the other that it speaks of. */
  readonly paper: Paper;
  readonly other: Paper;
}

/** What a maker said of paper and printer; null where nothing was. */
export interface PaperClaims {
  /** That the pages are laid for. */
  readonly paper: Paper;
  readonly loaded: Paper | null;
  /** Chosen to print with, for whichever paper it was read on; and that paper. */
  readonly profile: { readonly of: PrinterProfile; readonly on: Paper } | null;
  /** That the readings of the print in hand were typed for. */
  readonly read: Paper | null;
}

const sameSize = (one: Paper, other: Paper): boolean =>
  Math.abs(one.width - other.width) < 0.05 && Math.abs(one.height - other.height) < 0.05;

/** What becomes of pages on another paper: fitted to it, and at 100 %. Hand arithmetic on their sides. */
const onOtherPaper = (paper: Paper, loaded: Paper, style: LengthStyle): string => {
  const fitted = Math.min(loaded.width / paper.width, loaded.height / paper.height);
  const [across, along] = [paper.width - loaded.width, paper.height - loaded.height];
  const lost = [
    ...(along > 0 ? [`${showLength(along, style)} of their length`] : []),
    ...(across > 0 ? [`${showLength(across, style)} of their width`] : []),
  ].join(' and ');
  const whole = lost === '' ? 'they keep their size' : `${lost} would be missing`;
  return `Fitted, they would print at ${(fitted * 100).toFixed(1)} %; at 100 %, ${whole}.`;
};

/**
 * Where paper, printer and readings do not go together, in words, with the mend. Papers of one size are one paper. A4 and
 * Letter fitted to each other print at 97.3 and 94.1 %: see `printCause`.
 */
export const paperCautions = (
  { paper, loaded, profile, read }: PaperClaims,
  style: LengthStyle,
): readonly PaperCaution[] => [
  ...(loaded === null || sameSize(loaded, paper)
    ? []
    : [
        {
          code: 'paper.loaded' as const,
          message: `${loaded.name} is in the printer, but these pages are laid for ${paper.name}. ${onOtherPaper(paper, loaded, style)} Lay them for ${loaded.name}, or put ${paper.name} in the printer.`,
          paper,
          other: loaded,
        },
      ]),
  ...(profile === null || profile.of.paper === paper.id
    ? []
    : [
        {
          code: 'paper.profile' as const,
          message: `The factors of ${profile.of.printer}, ${readWords(profile.of)}, were read on ${profile.on.name}: these pages for ${paper.name} carry no correction. Read a print on ${paper.name}, lay the pages for ${profile.on.name}, or print without them.`,
          paper,
          other: profile.on,
        },
      ]),
  ...(read === null || read.id === paper.id
    ? []
    : [
        {
          code: 'paper.proof' as const,
          message: `The readings under Print proof are of a print on ${read.name}, whose lines have other lengths: they say nothing of ${paper.name}. Clear them, or lay the pages for ${read.name}.`,
          paper,
          other: read,
        },
      ]),
];
