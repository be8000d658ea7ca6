import type { Derived } from '../derive/types';
import type { Hand, NutDatum } from '../document/types';
import type { LengthStyle } from '../units/formatLength';
import { showLength } from '../units/showLength';
import { drawBoard, drawOuterStrings } from './drawBoard';
import { drawBridge } from './drawBridge';
import { drawingBox } from './drawingBox';
import { drawOctaveLine } from './drawOctaveLine';
import { drawNutArrow, drawSides } from './drawSides';
import { drawSquareLine } from './drawSquareLine';
import { drawWindows } from './drawWindows';
import { handedItem } from './handed';
import type { Item } from './types';

/** What the drawing depends on beyond the instrument itself. */
export interface View {
  readonly hand: Hand;
  readonly datum: NutDatum;
  readonly style: LengthStyle;
  /** How far from the centreline the square line and its words may reach, where that is less than usual, mm. */
  readonly reach?: number;
}

/**
 * The instrument's drawing as a display list: mm, x to the right and y toward the tail as seen from the front with the nut
 * side up, y 0 at the nut datum; hand applied. Empty when a part of it could not be computed.
 */
export const buildDrawing = (derived: Derived, view: View): readonly Item[] => {
  const { board, strings, saddle, slot, bridge, placement } = derived;
  const box = drawingBox(derived, view.style.unit);
  if (box === null || !board.ok || !strings.ok || !saddle.ok || !slot.ok || !bridge.ok || !placement.ok) return [];
  const show = (mm: number): string => showLength(mm, view.style);
  const line = placement.value.squareLine[view.style.unit];
  const { top, bottom, half } = box;
  const reach = Math.min(half, view.reach ?? half);
  const sided: readonly Item[] = [
    ...drawWindows(bridge.value),
    ...drawBoard(board.value, top, bottom),
    ...drawOuterStrings(strings.value, saddle.value, top),
    ...drawBridge(bridge.value, slot.value),
    ...drawOctaveLine(board.value.octave, show(board.value.octave), bridge.value, slot.value),
    ...drawSides(bridge.value),
  ];
  return [
    ...sided.map((item) => handedItem(view.hand, item)),
    ...drawSquareLine(line, view.datum, reach, show),
    ...drawNutArrow(reach - 8, top + 1),
  ];
};
