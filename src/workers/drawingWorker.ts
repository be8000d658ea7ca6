import { expose } from 'comlink';
import type { DrawingFormat, FileDrawing } from '../core/ports';
import { ok, type Result } from '../core/result';
import { makeDxf } from '../exporters/dxf/makeDxf';
import { makeSvg } from '../exporters/svg/makeSvg';
import { loadFonts } from './loadFonts';
import { paintPicture } from './paintPicture';

const asBytes = (text: Result<string>): Result<Uint8Array> =>
  text.ok ? ok(new TextEncoder().encode(text.value)) : text;

const drawingWorker = {
  /** Writes a drawing in this worker; a picture's font is fetched from `fontBase`. */
  async makeDrawing(drawing: FileDrawing, format: DrawingFormat, fontBase: string): Promise<Result<Uint8Array>> {
    switch (format.kind) {
      case 'svg':
        return asBytes(makeSvg(drawing));
      case 'dxf':
        return asBytes(makeDxf(drawing, format.version));
      case 'png': {
        const fonts = await loadFonts(fontBase, self.location.origin, (address) => fetch(address));
        return fonts.ok ? paintPicture(drawing.items, format.dpi, fonts.value) : fonts;
      }
    }
  },
};

/** What the worker offers to the page. */
export type DrawingWorker = typeof drawingWorker;

expose(drawingWorker);
