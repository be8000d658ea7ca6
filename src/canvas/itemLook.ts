import { LINE_STYLES } from '../core/drawing/lineStyles';
import type { Role, TextItem } from '../core/drawing/types';

/** Screen pixels for a millimetre of line width or dash: lines keep their weight however far the view is magnified. */
const PIXELS_PER_MM = 4.8;
const THINNEST = 1;
/** How much wider a chosen part is drawn, pixels. */
const CHOSEN_EXTRA = 1.4;

/** Font sizes on screen, pixels: legible from far off, and not in the way close up. */
const TEXT_PIXELS = { least: 11, most: 30 } as const;
/** Notes that would come out smaller than this, pixels, are left out: enlarged, they would lie over one another. */
const SMALLEST_NOTE = 8;

/** Width and dashes of a role's line at a magnification, mm of the drawing. */
export const lineLook = (role: Role, zoom: number, chosen: boolean): { width: number; dash: number[] } => {
  const { width, dash } = LINE_STYLES[role];
  const pixels = Math.max(THINNEST, width * PIXELS_PER_MM) + (chosen && dash.length === 0 ? CHOSEN_EXTRA : 0);
  return { width: pixels / zoom, dash: dash.map((length) => (length * PIXELS_PER_MM) / zoom) };
};

/** Size on screen of a font that is `height` mm high, pixels. */
export const textPixels = (height: number, zoom: number): number =>
  Math.min(TEXT_PIXELS.most, Math.max(TEXT_PIXELS.least, height * zoom));

/** Size of a text's font on screen, pixels; null where the text is left out. */
export const textLook = ({ role, height }: TextItem, zoom: number): number | null =>
  role === 'note' && height * zoom < SMALLEST_NOTE ? null : textPixels(height, zoom);

/** The font of the drawing's words, as in CSS. */
export const FONT_FAMILY = '"DejaVu Sans Condensed", sans-serif';
