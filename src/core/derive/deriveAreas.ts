import { throughHoles } from '../bridge/throughHoles';
import type { BridgePlace } from '../bridge/types';
import { finishLineCheck } from '../checks/finishLineCheck';
import { rimCheck } from '../checks/rimCheck';
import type { DesignCheck } from '../checks/types';
import type { Bridge, Project } from '../document/types';
import { areaWithout } from '../geom/offset/areaWithout';
import { offsetPath } from '../geom/offset/offsetPath';
import { pathCentroid } from '../geom/pathCentroid';
import { NO_AREA_MM2 } from '../geom/tolerances';
import type { Path } from '../geom/types';
import { fail, ok, type Result } from '../result';

/** What the bridge covers, what holds it, and what it weighs. footprint − holes − underRim = glue. */
export interface Areas {
  /** mm², as all areas here. */
  readonly footprint: number;
  /** Through holes, what lies inside the footprint. */
  readonly holes: number;
  /** Finish left under the rim, less the holes in it. */
  readonly underRim: number;
  readonly glue: number;
  /** What the rim takes of the area that could be glued without it, 0 to 1. */
  readonly shareLost: number;
  /** From the front edge back to the balance point of the footprint, mm. */
  readonly centroidFromFront: number;
  /** Of a plain blank of the footprint, as thick all over as at the slot, g: an upper figure for the bridge. */
  readonly weight: number;
  /** Where the finish ends under the bridge, instrument frame; none without a rim, and none where the rim takes it all. */
  readonly finishLine: readonly Path[];
  readonly checks: readonly DesignCheck[];
}

/** What the areas of a bridge in place depend on. */
export type BridgeCover = Pick<BridgePlace, 'area' | 'front' | 'pins' | 'locating'> & {
  readonly footprint: Pick<BridgePlace['footprint'], 'outline'>;
};

/** kg/m³ × mm³ in grams. */
const GRAMS = 1e-6;

/**
 * What of a bridge takes the offset library, which is loaded here: apart from the drawing, which does not wait for it.
 * rebate: how wide its rim is rebated, mm. Total. Codes: those of the bridge in place when it could not be computed, path.noArea, those of offsetPath.
 */
export const deriveAreas = async (
  { rim, density, thickness }: Pick<Bridge, 'rim' | 'density' | 'thickness'>,
  limits: Project['limits'],
  place: Result<BridgeCover>,
  rebate = 0,
): Promise<Result<Areas>> => {
  if (!place.ok) return place;
  const { area: footprint, front } = place.value;
  const { outline } = place.value.footprint;
  if (footprint < NO_AREA_MM2) return fail('', 'path.noArea', 'Expected a footprint that encloses an area.');
  const drilled = throughHoles(place.value);
  const finishLine = rim === 0 ? ok([]) : await offsetPath(outline, -rim);
  if (!finishLine.ok) return finishLine;
  const net = await areaWithout([outline], drilled);
  if (!net.ok) return net;
  const glue = rim === 0 ? net : await areaWithout(finishLine.value, drilled);
  if (!glue.ok) return glue;
  const shareLost = net.value < NO_AREA_MM2 ? 0 : Math.max(0, 1 - glue.value / net.value);
  return ok({
    footprint,
    holes: Math.max(0, footprint - net.value),
    underRim: Math.max(0, net.value - glue.value),
    glue: glue.value,
    shareLost,
    centroidFromFront: pathCentroid(outline).y - front,
    weight: density * footprint * thickness * GRAMS,
    finishLine: finishLine.value,
    checks: [...rimCheck(rim, shareLost, limits, rebate), ...finishLineCheck(rim, finishLine.value)],
  });
};
