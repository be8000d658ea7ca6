import { ok, type Result } from '../../result';
import { distance } from '../points';
import type { Path, Point } from '../types';
import { differenceOf } from './differenceOf';
import { FLAT_STRAY_MM } from './flatCorners';
import { fromUnits } from './libraryUnits';
import { polygonArea } from './polygonArea';

/** What is left of some outlines. */
export interface PathsLeft {
  /** mm², within 0.02 mm² at the size of a bridge. */
  readonly area: number;
  /**
   * Straight chords that stray at most 0.4 µm from the curves: outlines clockwise as seen on the page, holes in them the
   * other way. What is thinner than chords stray is left out of these and of the area.
   */
  readonly outlines: readonly Path[];
}

/**
 * What lies inside any of some closed outlines and outside of every hole. All may run either way, holes may overlap and
 * stick out. Codes: those of offsetPath on the paths themselves, and offset.notLoaded.
 */
export async function pathsWithout(outlines: readonly Path[], holes: readonly Path[]): Promise<Result<PathsLeft>> {
  const difference = await differenceOf(outlines, holes);
  if (!difference.ok) return difference;
  const { left, middle } = difference.value;
  const kept = left.map((corners) => corners.map((corner) => fromUnits(corner, middle))).filter(isThick);
  return ok({ area: kept.reduce((sum, corners) => sum + polygonArea(corners), 0), outlines: kept.map(toPath) });
}

const isThick = (corners: readonly Point[]): boolean => {
  const around = corners.reduce((sum, corner, index) => sum + distance(corner, corners.at(index - 1) ?? corner), 0);
  return Math.abs(polygonArea(corners)) >= FLAT_STRAY_MM * around;
};

const toPath = (corners: readonly Point[]): Path => ({
  start: corners[0] ?? { x: 0, y: 0 },
  segments: [...corners.slice(1), ...corners.slice(0, 1)].map((to) => ({ kind: 'line', to })),
  closed: true,
});
