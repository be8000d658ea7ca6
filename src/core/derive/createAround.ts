import type { DesignCheck } from '../checks/types';
import type { Project } from '../document/types';
import { type BodyStep, createBodyStep } from './createBodyStep';
import { createCheckStep } from './createCheckStep';
import { type AskRepairAreas, createRepairStep, type RepairStep } from './createRepairStep';
import { createSideStep, type Side } from './createSideStep';
import { remember } from './remember';
import type { Derived } from './types';

/** What lies beneath, around and before the bridge, and what that asks of it: computed once the drawing is up. */
export interface Around {
  readonly checks: readonly DesignCheck[];
  /** The bridge from the side. */
  readonly side: Side;
  /** The bridge that was there before; null for new work. */
  readonly repair: RepairStep | null;
  /** What lies beneath and around the bridge; null while nothing was said of it. */
  readonly body: BodyStep | null;
}

/** A function that computes all that, each step remembered by the identity of what it needs. Total. */
export const createAround = (askRepairAreas: AskRepairAreas): ((project: Project, derived: Derived) => Around) => {
  const checkStep = createCheckStep();
  const sideStep = createSideStep();
  const repairStep = createRepairStep(askRepairAreas);
  const bodyStep = createBodyStep();
  const joined = remember(
    (checks: readonly DesignCheck[], side: Side, repair: RepairStep | null, body: BodyStep | null): Around => ({
      checks: [...checks, ...side.checks, ...(repair?.checks ?? []), ...(body?.checks ?? [])],
      side,
      repair,
      body,
    }),
  );
  return (project, derived) => {
    const side = sideStep(project, derived);
    const repair = repairStep(project, derived);
    const body = bodyStep(project, derived);
    return joined(checkStep(project, derived), side, repair, body);
  };
};
