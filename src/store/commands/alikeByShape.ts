import { closedSegments } from '../../core/geom/closedSegments';
import { distanceToPath } from '../../core/geom/distanceToPath';
import { segmentPoint } from '../../core/geom/snap/segmentPoint';
import type { Path } from '../../core/geom/types';

/** How far the two sides of a symmetric outline may differ, mm: below what a scribed line shows. */
const SAME_MM = 0.01;

const SHARES = [0.25, 0.5, 0.75];

/** Whether a closed outline is its own mirror image about the centreline (x → −x) within 0.01 mm, wherever it is looked at. */
export const alikeByShape = (path: Path): boolean =>
  closedSegments(path).every(({ start, segment }) =>
    [start, ...SHARES.map((t) => segmentPoint(start, segment, t))].every(
      ({ x, y }) => distanceToPath(path, { x: -x, y }) <= SAME_MM,
    ),
  );
