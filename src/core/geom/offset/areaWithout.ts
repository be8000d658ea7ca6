import { ok, type Result } from '../../result';
import type { Path } from '../types';
import { differenceOf } from './differenceOf';
import { UNITS_PER_MM } from './libraryUnits';
import { polygonArea } from './polygonArea';

/**
 * The area inside any of some closed outlines that lies outside of every hole, mm²: holes may overlap one another and
 * stick out. All may run either way. Within 0.02 mm² at the size of a bridge.
 *
 * Codes: those of offsetPath on the paths themselves, and offset.notLoaded.
 */
export async function areaWithout(outlines: readonly Path[], holes: readonly Path[]): Promise<Result<number>> {
  const difference = await differenceOf(outlines, holes);
  if (!difference.ok) return difference;
  return ok(difference.value.left.reduce((sum, corners) => sum + polygonArea(corners), 0) / UNITS_PER_MM ** 2);
}
