import { auditLimitsInUse } from '../audit/auditLimitsInUse';
import { auditOf } from '../audit/auditOf';
import type { BridgeAudit } from '../audit/types';
import type { SaddlePlace } from '../bridge/types';
import type {
  Audit,
  Bridge,
  Compensation,
  HeightGate,
  Instrument,
  InstrumentString,
  PlayingSetup,
  Project,
} from '../document/types';
import { heightOf } from '../height/heightOf';
import type { HeightChain } from '../height/types';
import { surveyOf } from '../instrument/surveyOf';
import { taperOf } from '../instrument/taperOf';
import type { Board, Scale, StringPlace } from '../instrument/types';
import { type StringModel, stringModels } from '../intonation/stringModels';
import type { Result } from '../result';
import { remember } from './remember';
import { withAll } from './withAll';

/** The steps of Measure: what the instrument is like, and where each string wants the saddle. Each remembered. */
export const createMeasureSteps = () => ({
  auditLimits: remember(auditLimitsInUse),
  survey: remember(surveyOf),
  taper: remember((instrument: Instrument, scale: Result<Scale>) =>
    scale.ok ? taperOf(instrument, scale.value) : null,
  ),
  models: remember(
    (
      strings: readonly InstrumentString[],
      places: Result<readonly StringPlace[]>,
      scale: Result<Scale>,
      setup: PlayingSetup,
      fit: Compensation['fit'],
      doubts: Project['doubts'],
    ): Result<readonly StringModel[]> =>
      withAll([places, scale], (at, { scaleLength }) => stringModels(strings, at, scaleLength, setup, fit, doubts)),
  ),
  height: remember(
    (
      instrument: Instrument,
      setup: PlayingSetup,
      bridge: Bridge,
      height: HeightGate,
      limits: Project['limits'],
      scale: Result<Scale>,
      board: Result<Board>,
      strings: Result<readonly StringPlace[]>,
      saddle: Result<SaddlePlace>,
    ): Result<HeightChain> | null =>
      scale.ok && board.ok && strings.ok && saddle.ok
        ? heightOf({ instrument, setup, bridge, height, limits }, scale.value, board.value, strings.value, saddle.value)
        : null,
  ),
  audit: remember(
    (
      audit: Audit,
      bridge: Bridge,
      limits: Project['limits'],
      setup: PlayingSetup,
      scale: Result<Scale>,
      saddle: Result<SaddlePlace>,
    ): Result<BridgeAudit> | null =>
      scale.ok && saddle.ok ? auditOf({ audit, bridge, limits, setup }, scale.value, saddle.value) : null,
  ),
});
