import type { Item } from '../core/drawing/types';
import { fail, ok, type Result } from '../core/result';
import type { Cut } from '../core/text/advanceWidth';
import { MM_PER_INCH } from '../core/units/mmPerInch';
import { checkItems } from '../exporters/checkItems';
import { drawingFrame } from '../exporters/drawingFrame';
import type { PdfFonts } from '../exporters/pdf/writePdf';
import { paintItems } from '../exporters/png/paintItems';
import { pictureSize } from '../exporters/png/pictureSize';
import { withResolution } from '../exporters/png/withResolution';

/** The name by which the printed font is known in the worker. */
const FAMILY = 'Printed';
const WEIGHTS: Readonly<Record<Cut, string>> = { regular: 'normal', bold: 'bold' };

/** Where a worker keeps its fonts; not in the types of a page. */
interface WithFonts {
  readonly fonts: { add(font: FontFace): void };
}

const takeFonts = async (fonts: PdfFonts): Promise<void> => {
  for (const cut of ['regular', 'bold'] as const) {
    const face = new FontFace(FAMILY, new Uint8Array(fonts[cut]), { weight: WEIGHTS[cut] });
    (self as unknown as WithFonts).fonts.add(await face.load());
  }
};

/**
 * A drawing as a PNG at true size that says its own resolution, painted off the page. Codes: as checkItems and pictureSize;
 * picture.failed (the browser did not give what it takes).
 */
export const paintPicture = async (
  items: readonly Item[],
  dpi: number,
  fonts: PdfFonts,
): Promise<Result<Uint8Array>> => {
  const checked = checkItems(items);
  if (!checked.ok) return checked;
  const frame = drawingFrame(items);
  const size = pictureSize(frame, dpi);
  if (!size.ok) return size;
  await takeFonts(fonts);
  const canvas = new OffscreenCanvas(size.value.width, size.value.height);
  const context = canvas.getContext('2d');
  if (context === null)
    return fail('dpi', 'picture.failed', 'The browser has no room for a picture this large. Choose fewer pixels.');
  paintItems(context, items, frame, dpi / MM_PER_INCH, FAMILY);
  const png = new Uint8Array(await (await canvas.convertToBlob({ type: 'image/png' })).arrayBuffer());
  return ok(withResolution(png, dpi));
};
