import { readWithPdfium } from '../readPdf/readWithPdfium';
import { readWithPdfjs } from '../readPdf/readWithPdfjs';

/** pdfjs by its operator list, PDFium by its page objects; both keep coordinates as 32-bit floats. */
export const READERS = [
  { reader: 'pdfjs', read: async (bytes: Uint8Array) => (await readWithPdfjs(bytes)).pages },
  { reader: 'PDFium', read: readWithPdfium },
];
