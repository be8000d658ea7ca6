import { add, cross, dot, scale, subtract } from '../../geom/points';
import type { Point } from '../../geom/types';
import { fail, ok, type Result } from '../../result';
import type { Pose } from '../poseTypes';
import { placePoint } from './placePoint';

/** The best turn and shift from one set of points onto another. */
export interface RigidFit {
  readonly pose: Pose;
  /** What is left at each point: wanted − placed, mm. */
  readonly residuals: readonly Point[];
  /** Root of the weighted mean of the squared lengths of the residuals, and the longest of them, mm. */
  readonly rms: number;
  readonly worst: number;
}

const isFinitePoint = ({ x, y }: Point): boolean => Number.isFinite(x) && Number.isFinite(y);

/**
 * The turn and shift, never a reflection or a change of size, that bring `from` nearest to `to`, point by point, in
 * weighted least squares (Kabsch, Acta Cryst. A 32, 1976, in its closed form for the plane: the turn is the angle of
 * Σw·from·to and Σw·from×to about the centroids). Where every turn fits equally well, as for a single point, none is made.
 *
 * Codes: rigid.count (as many points and weights on either side, one at least), rigid.notFinite, rigid.weight (above 0).
 */
export const fitRigid = (
  from: readonly Point[],
  to: readonly Point[],
  weights: readonly number[] = from.map(() => 1),
): Result<RigidFit> => {
  if (from.length === 0 || to.length !== from.length || weights.length !== from.length)
    return fail('', 'rigid.count', `Expected as many points on either side, got ${from.length} and ${to.length}.`);
  if (![...from, ...to].every(isFinitePoint)) return fail('', 'rigid.notFinite', 'Expected finite coordinates.');
  if (!weights.every((weight) => Number.isFinite(weight) && weight > 0))
    return fail('', 'rigid.weight', 'Expected weights above 0.');
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  const share = weights.map((weight) => weight / total);
  const centroid = (points: readonly Point[]): Point =>
    points.reduce((sum, point, index) => add(sum, scale(point, share[index] ?? 0)), { x: 0, y: 0 });
  const middleFrom = centroid(from);
  const middleTo = centroid(to);
  let along = 0;
  let aside = 0;
  for (const [index, point] of from.entries()) {
    const one = subtract(point, middleFrom);
    const other = subtract(to[index] ?? middleTo, middleTo);
    along += (share[index] ?? 0) * dot(one, other);
    aside += (share[index] ?? 0) * cross(one, other);
  }
  const angle = Math.atan2(aside, along);
  const shift = subtract(middleTo, placePoint({ x: 0, y: 0, angle }, middleFrom));
  const pose: Pose = { ...shift, angle };
  const residuals = from.map((point, index) => subtract(to[index] ?? middleTo, placePoint(pose, point)));
  const lengths = residuals.map(({ x, y }) => Math.hypot(x, y));
  return ok({
    pose,
    residuals,
    rms: Math.sqrt(lengths.reduce((sum, length, index) => sum + (share[index] ?? 0) * length ** 2, 0)),
    worst: Math.max(...lengths),
  });
};
