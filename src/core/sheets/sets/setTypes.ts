import type { SheetContext } from '../parts/types';
import type { PrinterProfile } from '../proof/printerProfile';
import type { Paper, SheetDocument } from '../types';

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

/** Where something begins in a file; page: from 0. */
export interface SetStart {
  readonly name: string;
  readonly page: number;
}

/** A set as one document. */
export interface LaidSet {
  readonly document: SheetDocument;
  /** Contents and instruments, as they follow one another; none where instruments share pages. */
  readonly starts: readonly SetStart[];
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
