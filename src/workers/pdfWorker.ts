import { expose, transfer } from 'comlink';
import type { PdfFile } from '../core/ports';
import type { Result } from '../core/result';
import type { SheetDocument } from '../core/sheets/types';
import { makePdf } from '../exporters/pdf/makePdf';
import type { PdfFonts } from '../exporters/pdf/writePdf';
import { loadFonts } from './loadFonts';

let fonts: PdfFonts | undefined;

const pdfWorker = {
  /** Makes the PDF in this worker; the font is fetched once, from `fontBase`. */
  async makePdf(sheet: SheetDocument, fontBase: string): Promise<Result<PdfFile>> {
    if (fonts === undefined) {
      const loaded = await loadFonts(fontBase, self.location.origin, (address) => fetch(address));
      if (!loaded.ok) return loaded;
      fonts = loaded.value;
    }
    const file = makePdf(sheet, fonts);
    return file.ok ? transfer(file, [file.value.bytes.buffer]) : file;
  },
  /** Does the same for another worker, which asks through this port. */
  serve(port: MessagePort): void {
    expose({ makePdf: pdfWorker.makePdf }, port);
  },
};

/** What the worker offers to the page. */
export type PdfWorker = typeof pdfWorker;

expose(pdfWorker);
