import type { BridgePlace, SaddlePlace, SlotPlace } from '../bridge/types';
import type { Derived } from '../derive/types';
import { pathBounds } from '../geom/pathBounds';
import { boardWidthAt } from '../instrument/boardOf';
import type { Board } from '../instrument/types';
import type { LengthStyle } from '../units/formatLength';
import { drawBridge } from './drawBridge';
import { octaveLineReach } from './drawOctaveLine';
import { WINDOW_OVERHANG } from './drawWindows';

/** Room that the drawing takes, instrument frame, mm: from top to bottom along the centreline, and to either side of it. */
export interface DrawingBox {
  readonly top: number;
  readonly bottom: number;
  readonly half: number;
}

/** How far the lines run ahead of the square line and around the bridge, mm. */
const AHEAD_OF_SQUARE_LINE = 27;
const AROUND_BRIDGE = 6;
/** Half the square line at the least, so that its words stand clear of the board edges. */
const SHORTEST_HALF = 86;
/** Outside of a board edge for its label, mm. */
const BOARD_LABEL = 5;

/** The box of everything that belongs to the bridge, a slot or pins that stick out of it included. */
const boxOf = (board: Board, saddle: SaddlePlace, slot: SlotPlace, bridge: BridgePlace, lineY: number): DrawingBox => {
  const bounds = drawBridge(bridge, slot).flatMap((item) => (item.kind === 'path' ? [pathBounds(item.path)] : []));
  const ends = saddle.strings.map(({ x }) => saddle.centre + saddle.slope * x);
  const front = Math.min(...bounds.map(({ minY }) => minY), ...ends);
  const bottom = Math.max(...bounds.map(({ maxY }) => maxY), ...ends) + AROUND_BRIDGE;
  return {
    top: Math.min(lineY - AHEAD_OF_SQUARE_LINE, front - AROUND_BRIDGE),
    bottom,
    half: Math.max(
      SHORTEST_HALF,
      pathBounds(bridge.footprint.outline).maxX + WINDOW_OVERHANG,
      ...bounds.map(({ minX, maxX }) => Math.max(-minX, maxX)),
      octaveLineReach(bridge, slot),
      boardWidthAt(board, bottom) / 2 + BOARD_LABEL,
    ),
  };
};

/** The box of the drawing; null when a part of it could not be computed. Symmetric, so the same for either hand. */
export const drawingBox = (derived: Derived, unit: LengthStyle['unit']): DrawingBox | null => {
  const { board, saddle, slot, bridge, placement } = derived;
  if (!board.ok || !saddle.ok || !slot.ok || !bridge.ok || !placement.ok) return null;
  return boxOf(board.value, saddle.value, slot.value, bridge.value, placement.value.squareLine[unit].fromNut);
};
