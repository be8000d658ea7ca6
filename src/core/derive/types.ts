import type { BridgePlace, SaddlePlace, SlotPlace } from '../bridge/types';
import type { FretSurvey } from '../instrument/surveyTypes';
import type { Taper } from '../instrument/taper';
import type { Board, Scale, StringPlace } from '../instrument/types';
import type { StringModel } from '../intonation/stringModels';
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
  /** Scale and nut offset with their doubt, from the readings; null while the scale is as entered. */
  readonly survey: Result<FretSurvey> | null;
  /** Whether the board's taper is straight; null without a width at the last fret. */
  readonly taper: Result<Taper> | null;
  /** What the stiff-string model says of every string. */
  readonly models: Result<readonly StringModel[]>;
  /** Every reason for a part that failed, each once. */
  readonly issues: readonly Issue[];
}
