import { pathBounds } from '../../../core/geom/pathBounds';
import type { Path, Point } from '../../../core/geom/types';
import { roundDecimal } from '../../../core/units/roundDecimal';

/** Where one more clamp has most room: half way between two neighbours, or between the last and a tip. Frame of the outline. */
export const widestGap = (clamps: readonly Point[], outline: Path): Point => {
  const { minX, maxX, minY, maxY } = pathBounds(outline);
  const stops = [minX, ...clamps.map(({ x }) => x), maxX].sort((one, other) => one - other);
  const gaps = stops.slice(1).map((to, index) => ({ from: stops[index] ?? to, to }));
  const widest = gaps.reduce((best, gap) => (gap.to - gap.from > best.to - best.from ? gap : best));
  return { x: roundDecimal((widest.from + widest.to) / 2, 1), y: roundDecimal((minY + maxY) / 2, 1) };
};
