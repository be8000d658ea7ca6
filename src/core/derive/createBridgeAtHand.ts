import { auditOf } from '../audit/auditOf';
import type { BridgeAudit } from '../audit/types';
import type { SaddlePlace } from '../bridge/types';
import type { Audit, Bridge, HeightGate, Instrument, PlayingSetup, Project } from '../document/types';
import { heightOf } from '../height/heightOf';
import type { HeightChain } from '../height/types';
import type { Board, Scale, StringPlace } from '../instrument/types';
import type { Result } from '../result';
import { remember } from './remember';
import type { Derived } from './types';

/** What readings of neck and bridge say: computed apart from the drawing, which does not wait for it. */
export interface BridgeAtHand {
  /** The chain of heights; null until the straightedge was read. */
  readonly height: (project: Project, derived: Derived) => Result<HeightChain> | null;
  /** The bridge that is there; null until both of its outer strings were read. */
  readonly audit: (project: Project, derived: Derived) => Result<BridgeAudit> | null;
}

/** Both answers, each remembered by the identity of what it needs; null too when what they need has failed. */
export const createBridgeAtHand = (): BridgeAtHand => {
  const heightStep = remember(
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
  );
  const auditStep = remember(
    (
      audit: Audit,
      bridge: Bridge,
      limits: Project['limits'],
      setup: PlayingSetup,
      scale: Result<Scale>,
      saddle: Result<SaddlePlace>,
    ): Result<BridgeAudit> | null =>
      scale.ok && saddle.ok ? auditOf({ audit, bridge, limits, setup }, scale.value, saddle.value) : null,
  );
  return {
    height: ({ instrument, setup, bridge, height, limits }, { scale, board, strings, saddle }) =>
      heightStep(instrument, setup, bridge, height, limits, scale, board, strings, saddle),
    audit: ({ audit, bridge, limits, setup }, { scale, saddle }) =>
      auditStep(audit, bridge, limits, setup, scale, saddle),
  };
};
