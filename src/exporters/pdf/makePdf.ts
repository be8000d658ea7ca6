import type { PdfFile } from '../../core/ports';
import { fail, ok, type Result } from '../../core/result';
import type { SheetDocument } from '../../core/sheets/types';
import { missingCharacters } from '../../core/text/missingCharacters';
import { checkSheet } from './checkSheet';
import { isWholeTrueType } from './isWholeTrueType';
import { pageOperations } from './pageOperations';
import { type PdfFonts, writePdf } from './writePdf';

/**
 * A sheet as a PDF at true size: exact page boxes, coordinates to 0.002 µm, arcs as cubics of at most 30°, the font
 * embedded. The same sheet makes the same bytes. A character that the font lacks is named and stands as a box.
 *
 * Codes: those of `checkSheet`; pdf.font (the font cannot be read), pdf.failed (the PDF library gave up).
 */
export function makePdf(sheet: SheetDocument, fonts: PdfFonts): Result<PdfFile> {
  const checked = checkSheet(sheet);
  if (!checked.ok) return checked;
  if (![fonts.regular, fonts.bold].every(isWholeTrueType)) {
    return fail('', 'pdf.font', 'The printed font could not be read. Expected two TrueType files.');
  }
  try {
    const pages = sheet.pages.map(({ items }) => pageOperations(items));
    return ok({ bytes: writePdf(sheet, pages, fonts), missing: missingOn(sheet) });
  } catch (error) {
    return fail('', 'pdf.failed', `The PDF could not be written: ${error instanceof Error ? error.message : error}`);
  }
}

const missingOn = ({ pages }: SheetDocument): readonly string[] =>
  missingCharacters(
    pages.flatMap(({ items }) => items.map((item) => (item.kind === 'text' ? item.text : ''))).join(' '),
  );
