import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { PDFiumModule } from '@hyzyla/pdfium';

/**
 * The functions of PDFium's C interface that the readers call, as @hyzyla/pdfium 2.1 exports them from its WebAssembly
 * but does not declare. Pointers are addresses in its memory. Source: fpdfview.h, fpdf_edit.h, fpdf_text.h of PDFium.
 */
export interface Pdfium {
  readonly HEAPU8: Uint8Array;
  readonly HEAP32: Int32Array;
  readonly HEAPF32: Float32Array;
  _malloc(size: number): number;
  _free(pointer: number): void;
  _PDFium_Init(): void;
  _FPDF_LoadMemDocument(data: number, size: number, password: number): number;
  _FPDF_CloseDocument(document: number): void;
  _FPDF_GetPageCount(document: number): number;
  _FPDF_LoadPage(document: number, index: number): number;
  _FPDF_ClosePage(page: number): void;
  _FPDF_GetPageWidthF(page: number): number;
  _FPDF_GetPageHeightF(page: number): number;
  _FPDFPage_GetRotation(page: number): number;
  _FPDFPage_CountObjects(page: number): number;
  _FPDFPage_GetObject(page: number, index: number): number;
  _FPDFPageObj_GetType(object: number): number;
  _FPDFPageObj_GetMatrix(object: number, matrix: number): number;
  _FPDFPageObj_GetStrokeWidth(object: number, width: number): number;
  _FPDFPageObj_GetDashCount(object: number): number;
  _FPDFPageObj_GetDashArray(object: number, lengths: number, count: number): number;
  _FPDFPath_CountSegments(path: number): number;
  _FPDFPath_GetPathSegment(path: number, index: number): number;
  _FPDFPath_GetDrawMode(path: number, fill: number, stroke: number): number;
  _FPDFPathSegment_GetPoint(segment: number, x: number, y: number): number;
  _FPDFPathSegment_GetType(segment: number): number;
  _FPDFPathSegment_GetClose(segment: number): number;
  _FPDFText_LoadPage(page: number): number;
  _FPDFText_ClosePage(text: number): void;
  _FPDFTextObj_GetText(object: number, text: number, buffer: number, size: number): number;
  _FPDFTextObj_GetFontSize(object: number, size: number): number;
  _FPDFBitmap_CreateEx(width: number, height: number, format: number, data: number, stride: number): number;
  _FPDFBitmap_FillRect(
    bitmap: number,
    left: number,
    top: number,
    width: number,
    height: number,
    colour: number,
  ): number;
  _FPDFBitmap_Destroy(bitmap: number): void;
  _FPDF_RenderPageBitmapWithMatrix(bitmap: number, page: number, matrix: number, clipping: number, flags: number): void;
}

let opened: Promise<Pdfium> | undefined;

const open = async (): Promise<Pdfium> => {
  const file = await readFile(createRequire(import.meta.url).resolve('@hyzyla/pdfium/pdfium.wasm'));
  const wasmBinary = new Uint8Array(file).buffer;
  const pdfium = (await PDFiumModule({ wasmBinary })) as unknown as Pdfium;
  pdfium._PDFium_Init();
  return pdfium;
};

/** Opens a file in PDFium, lets `use` read it, and closes it. */
export async function withPdfium<T>(bytes: Uint8Array, use: (pdfium: Pdfium, document: number) => T): Promise<T> {
  opened ??= open();
  const pdfium = await opened;
  const data = pdfium._malloc(bytes.length);
  pdfium.HEAPU8.set(bytes, data);
  const document = pdfium._FPDF_LoadMemDocument(data, bytes.length, 0);
  try {
    if (document === 0) throw new Error('PDFium could not open the file');
    return use(pdfium, document);
  } finally {
    if (document !== 0) pdfium._FPDF_CloseDocument(document);
    pdfium._free(data);
  }
}

/** Opens a page of an open file, from 0, lets `use` read it, and closes it. */
export function withPage<T>(pdfium: Pdfium, document: number, index: number, use: (page: number) => T): T {
  const page = pdfium._FPDF_LoadPage(document, index);
  if (page === 0) throw new Error(`PDFium could not open page ${index + 1}`);
  try {
    return use(page);
  } finally {
    pdfium._FPDF_ClosePage(page);
  }
}

/** Lends `use` a piece of PDFium's memory. */
export function withMemory<T>(pdfium: Pdfium, size: number, use: (pointer: number) => T): T {
  const pointer = pdfium._malloc(size);
  try {
    return use(pointer);
  } finally {
    pdfium._free(pointer);
  }
}

/** Calls a function that fills `count` floats and returns them. */
export const readFloats = (pdfium: Pdfium, count: number, fill: (pointer: number) => unknown): number[] =>
  withMemory(pdfium, Math.max(4, 4 * count), (pointer) => {
    fill(pointer);
    return Array.from(pdfium.HEAPF32.subarray(pointer / 4, pointer / 4 + count));
  });
