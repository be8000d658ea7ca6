import { symmetricEigen } from '../numeric/symmetricEigen';
import type { Freedom } from './poseTypes';

/** Half the length of a usual bridge, mm: a turn weighs as much as the way that it moves the wing tips. */
const ARM_MM = 78;

/** A movement that changes the readings by less than this share of what the plainest movement does leaves no trace in them. */
const NO_TRACE = 1e-6;
/** A freedom with less than this share in such a movement is fixed by the readings all the same. */
const NO_PART = 1e-3;

/**
 * The freedoms that readings with these slopes (by x and y, mm per mm, and by angle, mm per radian) do not fix: those that
 * take part in a movement of the bridge which no reading notices.
 */
export const unseenFreedoms = (
  slopes: readonly (readonly [x: number, y: number, angle: number])[],
): readonly Freedom[] => {
  const rows = slopes.map(([x, y, angle]) => [x, y, angle / ARM_MM]);
  const squares = [0, 1, 2].map((i) =>
    [0, 1, 2].map((j) => rows.reduce((sum, row) => sum + (row[i] ?? 0) * (row[j] ?? 0), 0)),
  );
  const pairs = symmetricEigen(squares);
  const most = Math.max(...pairs.map(({ value }) => value), 0);
  const unnoticed = pairs.filter(({ value }) => most === 0 || value <= most * NO_TRACE ** 2);
  const freedoms: readonly Freedom[] = ['x', 'y', 'angle'];
  return freedoms.filter((_, k) => unnoticed.some(({ vector }) => Math.abs(vector[k] ?? 0) > NO_PART));
};
