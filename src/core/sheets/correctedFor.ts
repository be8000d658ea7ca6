import { ok, type Result } from '../result';
import { correctPages } from './proof/correctPages';
import { correctionBy, type PrinterProfile } from './proof/printerProfile';
import type { SheetDocument } from './types';

/** Pages as one printer prints them true; as they are without a printer. Codes: those of `correctPages`. */
export const correctedFor = (profile: PrinterProfile | null, document: SheetDocument): Result<SheetDocument> => {
  const [page] = document.pages;
  return profile === null || page === undefined ? ok(document) : correctPages(document, correctionBy(profile, page));
};
