import { jsPDF } from 'jspdf';
import type { Point } from '../../core/geom/types';
import type { SheetDocument } from '../../core/sheets/types';
import type { Cut } from '../../core/text/advanceWidth';
import { fileIdentifier } from './fileIdentifier';
import type { PageOperation } from './pageOperations';
import { subsetTrueType } from './subsetTrueType';

/** TrueType files of the printed font, one a cut. */
export type PdfFonts = Readonly<Record<Cut, Uint8Array>>;

/** Each cut under a name of its own: programs may take two fonts of one name for one. */
const FONT_NAMES: Readonly<Record<Cut, string>> = {
  regular: 'DejaVuSansCondensed',
  bold: 'DejaVuSansCondensed-Bold',
};

/** Decimals of a point in the file: 0.000005 pt is 0.002 µm. */
const DECIMALS = 5;

/**
 * Writes pages of drawing steps as a PDF: the only place that knows jsPDF. The sheet is one that `checkSheet` passed.
 *
 * @returns the file; the same bytes for the same sheet, in any time zone
 * @throws what jsPDF throws, for instance on a damaged font
 */
export function writePdf(
  sheet: SheetDocument,
  pages: readonly (readonly PageOperation[])[],
  fonts: PdfFonts,
): Uint8Array {
  const [{ width, height } = { width: 0, height: 0 }] = sheet.pages;
  const format = [width, height];
  const orientation = width > height ? 'landscape' : 'portrait';
  const document = new jsPDF({
    unit: 'mm',
    format,
    orientation,
    compress: true,
    putOnlyUsedFonts: true,
    floatPrecision: DECIMALS,
  });
  describeFile(document, sheet);
  addFonts(document, pages.flat(), fonts);
  for (const [index, operations] of pages.entries()) {
    if (index > 0) document.addPage(format, orientation);
    document.setLineJoin('round');
    for (const operation of operations) draw(document, operation);
  }
  shortenWidths(document);
  return new Uint8Array(document.output('arraybuffer'));
}

/**
 * A carriage return inside a string of a PDF reads as a line feed, and jsPDF does not escape it: in UTF-16 these
 * letters hold such a byte, so they are written as letter and accent.
 */
const HOLDS_CARRIAGE_RETURN = /[\u010d\u020d\u040d]/gu;

function describeFile(document: jsPDF, { title, language, date, fileKey }: SheetDocument): void {
  const safeTitle = title.replace(HOLDS_CARRIAGE_RETURN, (letter) => letter.normalize('NFD'));
  document.setProperties({ title: safeTitle, creator: 'Saddlemark' });
  document.setCreationDate(`D:${date.replaceAll('-', '')}000000+00'00'`);
  document.setFileId(fileIdentifier(fileKey));
  document.setDisplayMode('original');
  document.viewerPreferences({ PrintScaling: 'None', PickTrayByPDFSize: true, DisplayDocTitle: true });
  const internal = document.internal as typeof document.internal & { write(line: string): void };
  // jsPDF heads every file 1.3, but two of the preferences came with 1.6 and 1.7; its own language table is not complete.
  internal.events.subscribe('putCatalog', () => {
    internal.write('/Version /1.7');
    internal.write(`/Lang (${language})`);
  });
}

/** Each cut that is used, with the characters that are printed in it. */
function addFonts(document: jsPDF, operations: readonly PageOperation[], fonts: PdfFonts): void {
  const printed: Record<Cut, string> = { regular: '', bold: '' };
  for (const operation of operations) if (operation.kind === 'text') printed[operation.cut] += operation.text;
  for (const cut of ['regular', 'bold'] as const) {
    if (printed[cut] === '') continue;
    const file = `${FONT_NAMES[cut]}.ttf`;
    document.addFileToVFS(file, binaryString(subsetTrueType(fonts[cut], printed[cut])));
    document.addFont(file, FONT_NAMES[cut], 'normal', undefined, 'Identity-H');
  }
}

/** Of an embedded font: glyph, its width in brackets, glyph, its width in brackets, in the order of their first use. */
interface EmbeddedFont {
  readonly metadata?: { readonly Unicode?: { readonly widths: (number | readonly number[])[] } };
}

/** Tells the widths of glyphs that follow one another as one row, as a PDF may: a fifth of the characters. */
function shortenWidths(document: jsPDF): void {
  for (const name of Object.keys(document.getFontList()).filter((each) => Object.values(FONT_NAMES).includes(each))) {
    document.setFont(name, 'normal');
    const widths = (document.getFont() as EmbeddedFont).metadata?.Unicode?.widths;
    if (widths === undefined) continue;
    const told = widths.flatMap((glyph, index): readonly (readonly [number, readonly number[]])[] => {
      const width = widths[index + 1];
      return typeof glyph === 'number' && Array.isArray(width) ? [[glyph, width]] : [];
    });
    const rows: [first: number, widths: number[]][] = [];
    for (const [glyph, width] of told.sort(([one], [other]) => one - other)) {
      const row = rows.at(-1);
      if (row !== undefined && row[0] + row[1].length === glyph) row[1].push(...width);
      else rows.push([glyph, [...width]]);
    }
    widths.splice(0, widths.length, ...rows.flat());
  }
}

/** Bytes that become text in one call; more arguments than this are too many for some browsers. */
const CHUNK = 0x2000;

/** A font as jsPDF takes it, one character a byte. */
function binaryString(bytes: Uint8Array): string {
  let text = '';
  for (let from = 0; from < bytes.length; from += CHUNK) {
    text += String.fromCharCode.apply(null, bytes.subarray(from, from + CHUNK) as unknown as number[]);
  }
  return text;
}

const both = ({ x, y }: Point): [number, number] => [x, y];

function draw(document: jsPDF, operation: PageOperation): void {
  switch (operation.kind) {
    case 'pen':
      document.setLineWidth(operation.width);
      document.setLineDashPattern([...operation.dash], 0);
      return;
    case 'fill': {
      const grey = 255 * operation.grey;
      document.setFillColor(grey, grey, grey);
      return;
    }
    case 'move':
      document.moveTo(...both(operation.to));
      return;
    case 'line':
      document.lineTo(...both(operation.to));
      return;
    case 'curve':
      document.curveTo(...both(operation.c1), ...both(operation.c2), ...both(operation.to));
      return;
    case 'close':
      document.close();
      return;
    case 'paint':
      if (operation.filled) document.fillStroke();
      else document.stroke();
      return;
    case 'text': {
      const { start, text, height, cut, angle } = operation;
      document.setFont(FONT_NAMES[cut], 'normal');
      document.setFontSize(Number((height * document.internal.scaleFactor).toFixed(DECIMALS)));
      document.text(text, ...both(start), { angle: (angle * 180) / Math.PI, rotationDirection: 0 });
    }
  }
}
