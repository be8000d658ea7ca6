import type { BridgePlace, SaddlePlace, SlotPlace } from '../bridge/types';
import type { Project } from '../document/types';
import type { Board } from '../instrument/types';
import type { Result } from '../result';
import { compensationSign } from './compensationSign';
import { pinWalls, slotWall } from './holeWalls';
import { locatingHidden } from './locatingHidden';
import { stringsOnBoard } from './stringsOnBoard';
import type { DesignCheck } from './types';

/** Every check that the parts at hand allow, in the order a maker would look. */
export const designChecks = (
  project: Project,
  board: Result<Board>,
  saddle: Result<SaddlePlace>,
  slot: Result<SlotPlace>,
  bridge: Result<BridgePlace>,
): readonly DesignCheck[] => [
  ...(board.ok && saddle.ok ? stringsOnBoard(board.value, saddle.value) : []),
  ...(saddle.ok ? compensationSign(saddle.value) : []),
  ...(slot.ok && bridge.ok ? slotWall(slot.value, bridge.value) : []),
  ...(slot.ok && bridge.ok ? pinWalls(slot.value, bridge.value) : []),
  ...locatingHidden(project),
];
