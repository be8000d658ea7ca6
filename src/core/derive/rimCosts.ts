import type { BridgePlace } from '../bridge/types';
import type { Bridge } from '../document/types';
import { ok, type Result } from '../result';
import { deriveAreas } from './deriveAreas';

/** What a width without glue all round costs a bridge. */
export interface RimCost {
  /** mm */
  readonly width: number;
  /** mm² */
  readonly lost: number;
  /** Of what could be glued without it, 0 to 1. */
  readonly share: number;
}

/** What each of these widths under the rim would cost, with all else that was said of it. Codes: those of deriveAreas. */
export const rimCosts = async <Asked extends Pick<RimCost, 'width'>>(
  bridge: Pick<Bridge, 'density' | 'thickness'>,
  place: Result<BridgePlace>,
  asked: readonly Asked[],
): Promise<Result<readonly (Asked & RimCost)[]>> => {
  const costs: (Asked & RimCost)[] = [];
  for (const each of asked) {
    const areas = await deriveAreas({ ...bridge, rim: each.width }, {}, place);
    if (!areas.ok) return areas;
    costs.push({ ...each, lost: areas.value.underRim, share: areas.value.shareLost });
  }
  return ok(costs);
};
