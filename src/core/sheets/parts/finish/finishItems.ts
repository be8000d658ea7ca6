import { drawFinishLine } from '../../../drawing/drawFinishLine';
import { drawHoles } from '../../../drawing/drawHoles';
import { drawNutArrow, drawSides } from '../../../drawing/drawSides';
import { handedItem } from '../../../drawing/handed';
import { polyline } from '../../../drawing/polyline';
import type { Item } from '../../../drawing/types';
import { pathBounds } from '../../../geom/pathBounds';
import { sheetPath } from '../../sheetItems';
import { noteLines } from '../items/noteLines';
import type { SheetContext } from '../types';
import type { BareArea } from './bareArea';
import { hatchInside } from './hatchInside';

/** How far the centreline and the front edge's mark run beyond the footprint, mm. */
const BEYOND = 6;
const AHEAD = 22;
/** The notes reach at least as far as this to either side, mm. */
const NARROWEST = 80;
/** Light enough that the lines of the drawing stay clear, mm. */
const HATCH_APART = 4;

/** What one sheet about the finish says. */
export interface FinishWords {
  readonly heading: string;
  readonly notes: readonly string[];
  /** Whether the area to clear is hatched. */
  readonly hatched: boolean;
}

/** Footprint, line of the finish, locating-pin holes and centreline, with the notes beneath; hand applied. */
export const finishItems = (
  { project, derived }: SheetContext,
  { outline, bare }: BareArea,
  { heading, notes, hatched }: FinishWords,
): readonly Item[] => {
  const { bridge } = derived;
  if (!bridge.ok) return [];
  const { hand } = project.instrument;
  const { minX, maxX, minY, maxY } = pathBounds(outline);
  const half = Math.max(NARROWEST, maxX, -minX);
  const hatch = hatched ? hatchInside(bare, HATCH_APART) : [];
  const sided: readonly Item[] = [
    ...hatch.map(({ from, to }, index) => sheetPath(`hatch-${index}`, 'cross', polyline(from, to))),
    sheetPath('footprint', 'outline', outline),
    sheetPath('centreline', 'centreline', polyline({ x: 0, y: minY - BEYOND }, { x: 0, y: maxY + BEYOND })),
    ...drawHoles(bridge.value.locating, 'locating'),
    ...drawSides(bridge.value),
  ];
  return [
    ...sided.map((item) => handedItem(hand, item)),
    ...(project.bridge.rim === 0 ? [] : drawFinishLine(bare, hand)),
    ...drawNutArrow(0, minY - AHEAD),
    ...noteLines({ x: -half, y: maxY + BEYOND + 4 }, 2 * half, `${heading} · ${hand} hand`, notes),
  ];
};
