import { closedSegments } from '../geom/closedSegments';
import { distanceToPath } from '../geom/distanceToPath';
import { distance } from '../geom/points';
import { segmentPoint } from '../geom/snap/segmentPoint';
import type { Path, Point } from '../geom/types';
import type { WholeDesign } from './designed';
import type { Finding } from './finding';
import { checkPart } from './wallCheck';

const NAME = 'The outline is symmetric';

/** Far beyond what is asked about, mm: the sides are said to differ, not by how much. */
const MUCH_MM = 1;

/** Places along the outline that are looked for on the other side: its nodes, and the middle of each segment. */
const SHARES = [0, 0.5];

interface Apart {
  readonly far: number;
  readonly at: Point;
}

/** How far the mirror images of an outline's points lie from it at most. */
const mostApart = (outline: Path, limit: number): Apart => {
  const sides = closedSegments(outline);
  const points = sides.flatMap(({ start, segment }) => SHARES.map((t) => segmentPoint(start, segment, t)));
  // Most points have their fellow in the list: by how far from the centreline and along they lie, it is found at once.
  const key = ({ x, y }: Point): number => Math.round(Math.abs(x) / limit / 4) * 1_000_000 + Math.round(y / limit / 4);
  const byPlace = new Map<number, Point[]>();
  for (const point of points) {
    const same = byPlace.get(key(point));
    if (same === undefined) byPlace.set(key(point), [point]);
    else same.push(point);
  }
  let most: Apart = { far: 0, at: outline.start };
  for (const at of points) {
    const image = { x: -at.x, y: at.y };
    const near = byPlace.get(key(at)) ?? [];
    let far = near.reduce((least, each) => Math.min(least, distance(image, each)), Number.POSITIVE_INFINITY);
    if (far > limit && far > most.far) far = distanceToPath(outline, image);
    if (far > most.far && Number.isFinite(far)) most = { far, at };
    if (most.far > MUCH_MM) break;
  }
  return most;
};

/** Whether an outline that is said to be symmetric about the centreline is so. */
export const symmetryCheck = ({ project, bridge, limits }: WholeDesign): readonly Finding[] => {
  const { outline } = project.bridge;
  if (outline.kind !== 'drawn' || !outline.symmetric) return [];
  const limit = limits.symmetry;
  const { far, at } = mostApart(bridge.footprint.outline, limit.value);
  const about = {
    id: 'symmetry',
    lengths: [far, limit.value],
    source: limit.source,
    at: [at],
    part: checkPart(NAME),
    limit: 'limits.symmetry',
  };
  return far > limit.value
    ? [
        {
          ...about,
          verdict: 'look',
          message: `The outline is said to be symmetric, but its sides differ by {0}${far > MUCH_MM ? ' or more' : ''}; {1} at most.`,
        },
      ]
    : [{ ...about, verdict: 'good', message: `${NAME} within {0}.` }];
};
