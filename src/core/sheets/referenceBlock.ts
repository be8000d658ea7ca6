import type { Item } from '../drawing/types';
import { BEFORE_GLUE_HEIGHT, beforeGlue } from './beforeGlue';
import { calibrationSquare, squareSide } from './calibrationSquare';
import type { Frame } from './frame';
import { placementTable, placementTableHeight } from './placementTable';
import { squaringTable, squaringTableHeight } from './squaringTable';
import type { TemplateContent } from './templateContent';
import { titleBlock, titleBlockHeight } from './titleBlock';

/** White between blocks of the page, mm. The note under the scissors line stands in the first of it. */
export const REFERENCE_GAP = 6;
const GAP = 3;
/** Columns narrower than this would cut their words, mm. */
const NARROWEST = 70;

/** Which sheet of how many. */
export interface SheetNumber {
  readonly number: number;
  readonly of: number;
}

/** A block of tables with its height and its items when its top left corner lies there. */
export interface Block {
  readonly height: number;
  readonly at: (x: number, y: number, sheet: SheetNumber) => readonly Item[];
}

const KIND = 'tape-down template';

const title = (content: TemplateContent, x: number, y: number, width: number, sheet: SheetNumber): readonly Item[] =>
  titleBlock(
    { x, y },
    width,
    content.project,
    content.scale,
    { kind: KIND, ...sheet, date: content.date, correction: content.correction },
    content.style,
  );

const places = (content: TemplateContent, x: number, y: number, width: number): readonly Item[] => {
  const { project, placement, style } = content;
  return placementTable({ x, y }, width, placement, project.instrument.nut.datum, project.bridge.slot.length, style);
};

const squaring = (content: TemplateContent, x: number, y: number, width: number): readonly Item[] => {
  const join = `fret-${content.project.instrument.frets.bodyJoin}-`;
  const takes = (baseId: string): boolean => baseId.startsWith('nut-') || baseId.startsWith(join);
  return squaringTable({ x, y }, width, content.placement.distances, takes, content.style);
};

/** The calibration square with the squaring table in it, and beside it placement numbers, checks and title; null when too narrow. */
export const referenceBlock = (content: TemplateContent, width: number): Block | null => {
  const side = squareSide(content.style.unit);
  const x2 = side + REFERENCE_GAP;
  const column = width - x2;
  if (column < NARROWEST) return null;
  const tables =
    placementTableHeight(content.placement) + GAP + BEFORE_GLUE_HEIGHT + GAP + titleBlockHeight(content.correction);
  const height = Math.max(side, tables);
  return {
    height,
    at: (x, y, sheet) => {
      const glueY = y + placementTableHeight(content.placement) + GAP;
      return [
        ...calibrationSquare({ x, y: y + height - side }, content.style.unit),
        ...squaring(content, x + 5, y + height - side + 45, side - 10),
        ...places(content, x + x2, y, column),
        ...beforeGlue({ x: x + x2, y: glueY }),
        ...title(content, x + x2, y + height - titleBlockHeight(content.correction), column, sheet),
      ];
    },
  };
};

/** Placement numbers, checks and title side by side, for a page whose square has a page of its own; null when too narrow. */
export const bottomRow = (content: TemplateContent, width: number): Block | null => {
  const columns = Math.floor((width + REFERENCE_GAP) / (NARROWEST + REFERENCE_GAP));
  if (columns < 3) return null;
  const column = (width - 2 * REFERENCE_GAP) / 3;
  const height = Math.max(
    placementTableHeight(content.placement),
    BEFORE_GLUE_HEIGHT,
    titleBlockHeight(content.correction),
  );
  return {
    height,
    at: (x, y, sheet) => [
      ...places(content, x, y, column),
      ...beforeGlue({ x: x + column + REFERENCE_GAP, y }),
      ...title(
        content,
        x + 2 * (column + REFERENCE_GAP),
        y + height - titleBlockHeight(content.correction),
        column,
        sheet,
      ),
    ],
  };
};

/** A page for the calibration square alone, with the squaring table beside or below it. */
export const squarePage = (content: TemplateContent, frame: Frame, sheet: SheetNumber): readonly Item[] => {
  const side = squareSide(content.style.unit);
  const beside = frame.right - frame.left - side - REFERENCE_GAP >= NARROWEST;
  const x = beside ? frame.left + side + REFERENCE_GAP : frame.left;
  const y = beside ? frame.top : frame.top + side + REFERENCE_GAP;
  const width = frame.right - x;
  return [
    ...calibrationSquare({ x: frame.left, y: frame.top }, content.style.unit),
    ...squaring(content, x, y, Math.min(width, 110)),
    ...title(content, x, y + squaringTableHeight(4) + REFERENCE_GAP, Math.min(width, 110), sheet),
  ];
};
