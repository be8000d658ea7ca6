import { bridgePlace } from '../bridge/bridgePlace';
import { saddlePlace } from '../bridge/saddlePlace';
import { slotPlace } from '../bridge/slotPlace';
import type { BridgePlace, SaddlePlace, SlotPlace } from '../bridge/types';
import type { Project } from '../document/types';
import { stringPlaces } from '../instrument/stringPlaces';
import type { Board, Scale, StringPlace } from '../instrument/types';
import type { StringModel } from '../intonation/stringModels';
import type { Result } from '../result';
import type { WallLimits } from './wallLimits';

/** What the design checks look at: a project, and what was computed from it. */
export interface Designed {
  readonly project: Project;
  readonly scale: Result<Scale>;
  readonly board: Result<Board>;
  readonly strings: Result<readonly StringPlace[]>;
  readonly models: Result<readonly StringModel[]>;
  readonly saddle: Result<SaddlePlace>;
  readonly slot: Result<SlotPlace>;
  readonly bridge: Result<BridgePlace>;
  readonly limits: WallLimits;
}

/** A whole bridge in its place, for the checks that need all of it. */
export interface WholeDesign {
  readonly project: Project;
  readonly strings: readonly StringPlace[];
  readonly saddle: SaddlePlace;
  readonly slot: SlotPlace;
  readonly bridge: BridgePlace;
  readonly limits: WallLimits;
}

/**
 * The same with other figures for bridge, compensation or string spacing: what of it follows from them computed anew. Scale,
 * board and model stay.
 */
export const designedAgain = (designed: Designed, project: Project): Designed => {
  const { scale, board, models, limits } = designed;
  const strings =
    board.ok && project.instrument !== designed.project.instrument
      ? stringPlaces(project.instrument, project.strings, board.value)
      : designed.strings;
  const { slot: design, outline } = project.bridge;
  const saddle =
    scale.ok && board.ok && strings.ok
      ? saddlePlace(project.compensation, design, scale.value, board.value, strings.value, models, limits.land.value)
      : designed.saddle;
  const slot = saddle.ok ? slotPlace(design, saddle.value, outline) : designed.slot;
  const bridge =
    saddle.ok && slot.ok
      ? bridgePlace(project.bridge, project.strings.length, saddle.value, slot.value)
      : designed.bridge;
  return { ...designed, project, strings, saddle, slot, bridge };
};
