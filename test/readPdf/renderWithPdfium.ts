import { MM_PER_POINT } from './pageFrame';
import { withMemory, withPage, withPdfium } from './withPdfium';

/** A page as a picture: one byte of grey a pixel, 0 black, 255 white, row by row from the top left. */
export interface Picture {
  readonly width: number;
  readonly height: number;
  readonly pixelsPerMm: number;
  readonly grey: Uint8Array;
}

/** FPDFBitmap_Gray. Source: fpdfview.h of PDFium. */
const GREY_FORMAT = 1;
const WHITE = 0xffffffff;

/** Paints a page (from 0) with PDFium at exactly this many pixels an inch; a last part of a pixel is rounded up. */
export const renderWithPdfium = (bytes: Uint8Array, pageIndex: number, dpi: number): Promise<Picture> =>
  withPdfium(bytes, (pdfium, document) =>
    withPage(pdfium, document, pageIndex, (page) => {
      const scale = dpi / 72;
      const width = Math.ceil(pdfium._FPDF_GetPageWidthF(page) * scale);
      const height = Math.ceil(pdfium._FPDF_GetPageHeightF(page) * scale);
      return withMemory(pdfium, width * height, (pixels) => {
        const bitmap = pdfium._FPDFBitmap_CreateEx(width, height, GREY_FORMAT, pixels, width);
        pdfium._FPDFBitmap_FillRect(bitmap, 0, 0, width, height, WHITE);
        withMemory(pdfium, 40, (pointer) => {
          pdfium.HEAPF32.set([scale, 0, 0, scale, 0, 0, 0, 0, width, height], pointer / 4);
          pdfium._FPDF_RenderPageBitmapWithMatrix(bitmap, page, pointer, pointer + 24, 0);
        });
        pdfium._FPDFBitmap_Destroy(bitmap);
        const grey = pdfium.HEAPU8.slice(pixels, pixels + width * height);
        return { width, height, pixelsPerMm: scale / MM_PER_POINT, grey };
      });
    }),
  );
