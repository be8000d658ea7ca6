import { sideChecks } from '../checks/sole/sideChecks';
import { soleChecks } from '../checks/sole/soleChecks';
import type { DesignCheck } from '../checks/types';
import type { Bridge, HeightGate, Instrument, PlayingSetup, Project } from '../document/types';
import { heightLimitsInUse } from '../height/limitsInUse';
import { blankOf } from '../height/sole/blankOf';
import { footprintReach } from '../height/sole/footprintReach';
import type { SaddleBlank } from '../height/sole/saddleBlank';
import { type SideHeights, sideHeights } from '../height/sole/sideHeights';
import { soleLimitsInUse } from '../height/sole/soleLimits';
import { soleOf } from '../height/sole/soleOf';
import type { SoleFit } from '../height/sole/soleTypes';
import type { Result } from '../result';
import { remember } from './remember';
import type { Derived } from './types';
import { withAll } from './withAll';

/** The bridge from the side: heights, sole and saddle. */
export interface Side {
  readonly heights: Result<SideHeights>;
  /** Null while nothing was said of the sole. */
  readonly fit: Result<SoleFit> | null;
  readonly blank: Result<SaddleBlank>;
  readonly checks: readonly DesignCheck[];
}

/** That, in three remembered steps, so that moving a node of the outline leaves the heights alone. Total. */
export const createSideStep = (): ((project: Project, derived: Derived) => Side) => {
  const heightStep = remember(
    (
      instrument: Instrument,
      setup: PlayingSetup,
      bridge: Bridge,
      height: HeightGate,
      limits: Project['limits'],
      scale: Derived['scale'],
      board: Derived['board'],
      strings: Derived['strings'],
      saddle: Derived['saddle'],
    ): Result<SideHeights> =>
      withAll([scale, board, strings, saddle], (...values) =>
        sideHeights({ instrument, setup, bridge, height, limits }, ...values),
      ),
  );
  const fitStep = remember((bridge: Bridge, place: Derived['bridge']): Result<SoleFit> | null =>
    bridge.sole !== null && place.ok ? soleOf(bridge, place.value) : null,
  );
  const blankStep = remember(
    (
      bridge: Bridge,
      height: HeightGate,
      limits: Project['limits'],
      heights: Result<SideHeights>,
      saddle: Derived['saddle'],
      slot: Derived['slot'],
    ): Result<SaddleBlank> =>
      withAll([heights, saddle, slot], (...values) => blankOf({ bridge, height, limits }, ...values)),
  );
  const checkStep = remember(
    (
      bridge: Bridge,
      height: HeightGate,
      limits: Project['limits'],
      heights: Result<SideHeights>,
      fit: Result<SoleFit> | null,
      saddle: Derived['saddle'],
      place: Derived['bridge'],
    ): readonly DesignCheck[] => {
      const { sole } = bridge;
      const reach = place.ok ? footprintReach(place.value.footprint.outline, 0) : null;
      return [
        ...(heights.ok && saddle.ok ? sideChecks(heights.value, saddle.value, { bridge, height, limits }) : []),
        ...(fit?.ok && sole !== null && reach !== null
          ? soleChecks(
              { ...bridge, sole },
              fit.value,
              soleLimitsInUse(limits),
              heightLimitsInUse(height.kind, limits).woodUnder,
              (reach.front + reach.back) / 2,
            )
          : []),
      ];
    },
  );
  const joined = remember(
    (heights: Side['heights'], fit: Side['fit'], blank: Side['blank'], checks: Side['checks']): Side => ({
      heights,
      fit,
      blank,
      checks,
    }),
  );
  return ({ instrument, setup, bridge, height, limits }, derived) => {
    const { scale, board, strings, saddle, slot, bridge: place } = derived;
    const heights = heightStep(instrument, setup, bridge, height, limits, scale, board, strings, saddle);
    const fit = fitStep(bridge, place);
    const blank = blankStep(bridge, height, limits, heights, saddle, slot);
    return joined(heights, fit, blank, checkStep(bridge, height, limits, heights, fit, saddle, place));
  };
};
