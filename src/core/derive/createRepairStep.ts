import { auditLimitsInUse } from '../audit/auditLimitsInUse';
import { heightFirst } from '../checks/repair/heightFirst';
import { holeChecks } from '../checks/repair/holeChecks';
import { repairAreaChecks } from '../checks/repair/repairAreaChecks';
import { slotOverHoles } from '../checks/repair/slotOverHoles';
import type { DesignCheck } from '../checks/types';
import type { HeightGate, Project } from '../document/types';
import { centsPerMm } from '../intonation/centsPerMm';
import { formerPlace } from '../repair/formerPlace';
import { holeMatch } from '../repair/holeMatch';
import { slotOverlaps } from '../repair/slotOverlaps';
import type { RepairFound } from '../repair/types';
import { ok, type Result } from '../result';
import type { deriveRepairAreas, RepairAreas } from './deriveRepairAreas';
import { remember } from './remember';
import type { Derived } from './types';
import { withAll } from './withAll';

/** The bridge that was there, and what is said of it. */
export interface RepairStep extends RepairFound {
  /** Null until they are known. */
  readonly areas: Result<RepairAreas> | null;
  readonly checks: readonly DesignCheck[];
}

/** Answers with the areas of old bridge and new one once they are known, and null until then. */
export type AskRepairAreas = (...args: Parameters<typeof deriveRepairAreas>) => Result<RepairAreas> | null;

const checksOf = (
  { place, match }: RepairFound,
  areas: Result<RepairAreas> | null,
  slot: Derived['slot'],
  height: HeightGate,
  limits: Project['limits'],
): readonly DesignCheck[] => {
  const { wallAroundSlot, wallAroundPins } = auditLimitsInUse(limits);
  return [
    heightFirst(height),
    ...(match === null || !place.ok ? [] : holeChecks(match, limits)),
    ...(place.ok && slot.ok
      ? slotOverHoles(slot.value.outline, place.value.holes, place.value.slot !== null, wallAroundPins)
      : []),
    ...(areas?.ok ? repairAreaChecks(areas.value.showing.area, areas.value.fill, limits, wallAroundSlot) : []),
  ];
};

/** A function that computes that, remembered by what it needs; null for new work. Total. */
export const createRepairStep = (ask: AskRepairAreas): ((project: Project, derived: Derived) => RepairStep | null) => {
  const placeStep = remember(formerPlace);
  const foundStep = remember(
    (
      place: RepairFound['place'],
      scale: Derived['scale'],
      saddle: Derived['saddle'],
      slot: Derived['slot'],
      bridge: Derived['bridge'],
    ): RepairFound => {
      const filled = place.ok ? place.value.slot : null;
      const asked = place.ok && place.value.holes.length > 0 && bridge.ok && bridge.value.pins.length > 0;
      return {
        place,
        match: asked
          ? withAll([place, scale, saddle, bridge], (former, { scaleLength }, line, { pins }) =>
              holeMatch(pins, former.holes, line, centsPerMm(scaleLength, 12)),
            )
          : null,
        overlaps: filled === null ? null : withAll([slot, saddle], (...now) => ok(slotOverlaps(filled, ...now))),
      };
    },
  );
  const checkStep = remember(
    (
      found: RepairFound,
      areas: Result<RepairAreas> | null,
      slot: Derived['slot'],
      height: HeightGate,
      limits: Project['limits'],
    ): RepairStep => ({ ...found, areas, checks: checksOf(found, areas, slot, height, limits) }),
  );
  return ({ repair, height, limits }, { scale, saddle, slot, bridge }) => {
    if (repair === null) return null;
    const found = foundStep(placeStep(repair), scale, saddle, slot, bridge);
    const known = found.place.ok && slot.ok && bridge.ok;
    const areas = known ? ask(found.place.value, bridge.value.footprint.outline, slot.value.outline) : null;
    return checkStep(found, areas, slot, height, limits);
  };
};
