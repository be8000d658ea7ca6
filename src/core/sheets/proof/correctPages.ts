import type { Item } from '../../drawing/types';
import { pathToCubics } from '../../geom/pathToCubics';
import { placePath } from '../../geom/placePath';
import type { Point } from '../../geom/types';
import { fail, ok, type Result } from '../../result';
import { boundsOfItems } from '../parts/items/partOfItems';
import type { Page, SheetDocument } from '../types';
import type { PrintCorrection } from './types';

/** Printers leave up to this much white, mm: common practice, no source. */
const PRINTER_WHITE = 6.4;

/** Words keep their size; an arc stays an arc only where both axes grow alike. */
const correctItem = (item: Item, { factorX, factorY }: PrintCorrection): Item => {
  const place = ({ x, y }: Point): Point => ({ x: x * factorX, y: y * factorY });
  if (item.kind === 'text') return { ...item, at: place(item.at) };
  return { ...item, path: placePath(factorX === factorY ? item.path : pathToCubics(item.path), place) };
};

/** How far a page reaches into what a printer leaves white, mm; 0 or less: it does not. */
const beyond = ({ width, height, items }: Page): number => {
  if (items.length === 0) return 0;
  const { maxX, maxY } = boundsOfItems(items);
  return Math.max(maxX - width, maxY - height) + PRINTER_WHITE;
};

/**
 * Pages multiplied about their top left corner, so that a printer that is off by the inverse prints them true. Sizes of
 * pages stay. The words of a page, and what they say of its correction, are whoever's who lays it. Code: correction.large
 * (what is drawn would reach into the white that a printer leaves).
 */
export const correctPages = (document: SheetDocument, correction: PrintCorrection): Result<SheetDocument> => {
  const pages = document.pages.map((page) => ({
    ...page,
    items: page.items.map((item) => correctItem(item, correction)),
  }));
  const shown = `${correction.factorX.toFixed(4)} × ${correction.factorY.toFixed(4)}`;
  const most = Math.max(...pages.map(beyond));
  if (most > 0)
    return fail(
      'correction',
      'correction.large',
      `Corrected by ${shown}, these sheets would reach ${(Math.ceil(most * 10) / 10).toFixed(1)} mm into the white that a printer leaves at the edges. Set the print dialog right first, leave as much more white at every edge, or choose a larger paper.`,
    );
  return ok({ ...document, fileKey: `${document.fileKey} ${shown}`, pages });
};
