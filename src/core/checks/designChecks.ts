import type { AuditLimits } from '../audit/auditLimits';
import type { BridgePlace, SaddlePlace, SlotPlace } from '../bridge/types';
import type { Bridge, CompensationBy } from '../document/types';
import type { Board } from '../instrument/types';
import type { Result } from '../result';
import { compensationSign } from './compensationSign';
import { crownChecks } from './crownChecks';
import { pinWalls, slotWall } from './holeWalls';
import { locatingHidden } from './locatingHidden';
import { stringsOnBoard } from './stringsOnBoard';
import type { DesignCheck } from './types';

/** Every check that the parts at hand allow, in the order a maker would look. by: how the compensation is found. */
export const designChecks = (
  design: Bridge,
  by: CompensationBy,
  board: Result<Board>,
  saddle: Result<SaddlePlace>,
  slot: Result<SlotPlace>,
  bridge: Result<BridgePlace>,
  limits: AuditLimits,
): readonly DesignCheck[] => [
  ...(board.ok && saddle.ok ? stringsOnBoard(board.value, saddle.value) : []),
  ...(saddle.ok ? compensationSign(saddle.value) : []),
  ...(saddle.ok ? crownChecks(by, saddle.value) : []),
  ...(slot.ok && bridge.ok ? slotWall(slot.value, bridge.value, limits) : []),
  ...(slot.ok && bridge.ok ? pinWalls(slot.value, bridge.value, limits) : []),
  ...locatingHidden(design),
];
