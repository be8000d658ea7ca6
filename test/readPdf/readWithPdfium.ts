import { finishPaths, type Matrix, MM_PER_POINT, type Outline, placeOnPage, scaleOf } from './pageFrame';
import type { ReadPage, ReadPath, ReadText } from './types';
import { type Pdfium, readFloats, withMemory, withPage, withPdfium } from './withPdfium';

/** Kinds of page object and of path segment. Source: fpdf_edit.h of PDFium. */
const TEXT_OBJECT = 1;
const PATH_OBJECT = 2;
const LINE_TO = 0;
const BEZIER_TO = 1;
const MOVE_TO = 2;

/** Reads the pages of a PDF with PDFium: every line and every text object, in painting order. */
export const readWithPdfium = (bytes: Uint8Array): Promise<readonly ReadPage[]> =>
  withPdfium(bytes, (pdfium, document) =>
    Array.from({ length: pdfium._FPDF_GetPageCount(document) }, (_, index) =>
      withPage(pdfium, document, index, (page) => readPage(pdfium, page)),
    ),
  );

function readPage(pdfium: Pdfium, page: number): ReadPage {
  const height = pdfium._FPDF_GetPageHeightF(page);
  const objects = Array.from({ length: pdfium._FPDFPage_CountObjects(page) }, (_, index) =>
    pdfium._FPDFPage_GetObject(page, index),
  );
  const ofKind = (kind: number) => objects.filter((object) => pdfium._FPDFPageObj_GetType(object) === kind);
  const text = pdfium._FPDFText_LoadPage(page);
  try {
    return {
      width: pdfium._FPDF_GetPageWidthF(page) * MM_PER_POINT,
      height: height * MM_PER_POINT,
      rotation: 90 * pdfium._FPDFPage_GetRotation(page),
      paths: ofKind(PATH_OBJECT).flatMap((object) => readPath(pdfium, object, height)),
      texts: ofKind(TEXT_OBJECT).map((object) => readText(pdfium, object, text, height)),
    };
  } finally {
    pdfium._FPDFText_ClosePage(text);
  }
}

const matrixOf = (pdfium: Pdfium, object: number): Matrix =>
  readFloats(pdfium, 6, (pointer) => pdfium._FPDFPageObj_GetMatrix(object, pointer)) as unknown as Matrix;

function readPath(pdfium: Pdfium, object: number, pageHeight: number): ReadPath[] {
  const matrix = matrixOf(pdfium, object);
  const scale = scaleOf(matrix) * MM_PER_POINT;
  const [width = 0] = readFloats(pdfium, 1, (pointer) => pdfium._FPDFPageObj_GetStrokeWidth(object, pointer));
  const dashes = pdfium._FPDFPageObj_GetDashCount(object);
  const dash = readFloats(pdfium, dashes, (pointer) => pdfium._FPDFPageObj_GetDashArray(object, pointer, dashes));
  const [fillMode = 0, stroke = 0] = withMemory(pdfium, 8, (pointer) => {
    pdfium._FPDFPath_GetDrawMode(object, pointer, pointer + 4);
    return Array.from(pdfium.HEAP32.subarray(pointer / 4, pointer / 4 + 2));
  });
  return finishPaths(readOutlines(pdfium, object, placeOnPage(matrix, pageHeight)), {
    stroked: stroke !== 0,
    filled: fillMode !== 0,
    width: width * scale,
    dash: dash.map((length) => length * scale),
  });
}

function readOutlines(pdfium: Pdfium, object: number, place: ReturnType<typeof placeOnPage>): Outline[] {
  const outlines: Outline[] = [];
  const steps = Array.from({ length: pdfium._FPDFPath_CountSegments(object) }, (_, index) => {
    const segment = pdfium._FPDFPath_GetPathSegment(object, index);
    const [x = Number.NaN, y = Number.NaN] = readFloats(pdfium, 2, (pointer) =>
      pdfium._FPDFPathSegment_GetPoint(segment, pointer, pointer + 4),
    );
    const closes = pdfium._FPDFPathSegment_GetClose(segment) !== 0;
    return { kind: pdfium._FPDFPathSegment_GetType(segment), to: place(x, y), closes };
  });
  for (let index = 0; index < steps.length; index += 1) {
    const step = steps[index];
    const [control, end] = [steps[index + 1], steps[index + 2]];
    const outline = outlines.at(-1);
    if (step?.kind === MOVE_TO) outlines.push({ start: step.to, segments: [], closed: false });
    else if (step?.kind === LINE_TO && outline) {
      outline.segments.push({ kind: 'line', to: step.to });
      outline.closed = step.closes;
    } else if (step?.kind === BEZIER_TO && control && end && outline) {
      outline.segments.push({ kind: 'cubic', c1: step.to, c2: control.to, to: end.to });
      outline.closed = end.closes;
      index += 2;
    } else throw new Error(`PDFium gave a segment of a path that this reader does not know: ${step?.kind}`);
  }
  return outlines;
}

function readText(pdfium: Pdfium, object: number, page: number, pageHeight: number): ReadText {
  const matrix = matrixOf(pdfium, object);
  const [size = 0] = readFloats(pdfium, 1, (pointer) => pdfium._FPDFTextObj_GetFontSize(object, pointer));
  const bytes = pdfium._FPDFTextObj_GetText(object, page, 0, 0);
  const text = withMemory(pdfium, bytes, (pointer) => {
    pdfium._FPDFTextObj_GetText(object, page, pointer, bytes);
    return new TextDecoder('utf-16le').decode(pdfium.HEAPU8.slice(pointer, pointer + bytes)).replace(/\0+$/u, '');
  });
  return {
    text,
    start: placeOnPage(matrix, pageHeight)(0, 0),
    height: size * scaleOf(matrix) * MM_PER_POINT,
    angle: -Math.atan2(matrix[1], matrix[0]),
    width: null,
  };
}
