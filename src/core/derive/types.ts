import type { BridgePlace, SaddlePlace, SlotPlace } from '../bridge/types';
import type { DesignCheck } from '../checks/types';
import type { Board, Scale, StringPlace } from '../instrument/types';
import type { Placement } from '../placement/types';
import type { Issue, Result } from '../result';

/** Everything computed from a project. A part that fails takes down only what needs it. */
export interface Derived {
  readonly scale: Result<Scale>;
  readonly board: Result<Board>;
  readonly strings: Result<readonly StringPlace[]>;
  readonly saddle: Result<SaddlePlace>;
  readonly slot: Result<SlotPlace>;
  readonly bridge: Result<BridgePlace>;
  readonly placement: Result<Placement>;
  readonly checks: readonly DesignCheck[];
  /** Every reason for a part that failed, each once. */
  readonly issues: readonly Issue[];
}
