import { readFileSync } from 'node:fs';
import type { Item, PathItem, Role, TextItem } from '../../../src/core/drawing/types';
import type { Path, Point, Segment } from '../../../src/core/geom/types';
import type { SheetDocument } from '../../../src/core/sheets/types';
import type { PdfFonts } from '../../../src/exporters/pdf/writePdf';

const fontFile = (name: string): Uint8Array =>
  new Uint8Array(readFileSync(new URL(`../../../public/fonts/${name}`, import.meta.url)));

/** The committed cuts of the printed font. */
export const FONTS: PdfFonts = {
  regular: fontFile('DejaVuSansCondensed.ttf'),
  bold: fontFile('DejaVuSansCondensed-Bold.ttf'),
};

/** Pages of one size with these items, one list a page. */
export const handMadeSheet = (
  width: number,
  height: number,
  ...pages: readonly (readonly Item[])[]
): SheetDocument => ({
  title: 'Hand-made sheet',
  language: 'en',
  date: '2024-02-29',
  fileKey: 'hand-made:1',
  pages: pages.map((items) => ({ width, height, items })),
});

export const pathItem = (path: Path, role: Role = 'outline'): PathItem => ({
  kind: 'path',
  id: 'a path',
  part: 'footprint',
  layer: 'bridge',
  role,
  path,
});

/** Straight lines through points. */
export const lineThrough = ([start, ...rest]: readonly [Point, ...Point[]], closed = false): Path => ({
  start,
  segments: rest.map((to): Segment => ({ kind: 'line', to })),
  closed,
});

export const textItem = (text: string, changes: Partial<TextItem> = {}): TextItem => ({
  kind: 'text',
  id: 'a text',
  part: 'sheet',
  layer: 'text',
  role: 'label',
  at: { x: 20, y: 30 },
  height: 4,
  anchor: 'start',
  angle: 0,
  text,
  ...changes,
});
