import type { Segment } from '../../geom/types';
import { failed, type Issue, issue, ok, type Result } from '../../result';
import type { Footprint } from '../types';
import { corner } from './corner';
import { edgePoints } from './edgePoints';

export interface BellyParameters {
  readonly length: number;
  readonly wing: number;
  readonly full: number;
  readonly belly: number;
  readonly shoulder: number;
  readonly corner: number;
}

const path = (name: keyof BellyParameters): string => `bridge.outline.parameters.${name}`;

/** What is wrong with these dimensions taken together. */
const bellyIssues = (p: BellyParameters, radiusSum: number): readonly Issue[] => {
  const issues: Issue[] = [];
  if (p.full <= p.wing)
    issues.push(issue(path('full'), 'belly.flat', 'The width at the belly is more than the width at the wings.'));
  if (p.belly / 2 > p.length / 2 - p.corner)
    issues.push(issue(path('belly'), 'belly.wide', 'The belly and the corners together are longer than the bridge.'));
  if (p.corner > p.wing / 2)
    issues.push(issue(path('corner'), 'belly.corner', 'The corner radius is at most half the width at the wings.'));
  if (p.full - p.wing > p.belly / 2)
    issues.push(issue(path('full'), 'belly.deep', 'The belly is at most half as deep as it is across.'));
  if (p.full > p.wing && p.shoulder >= radiusSum)
    issues.push(
      issue(
        path('shoulder'),
        'belly.shoulder',
        `The shoulder radius is below ${radiusSum.toFixed(1)} mm for this belly.`,
      ),
    );
  return issues;
};

/**
 * Bridge with a belly toward the tail, in the footprint frame. The belly is a reverse curve of true arcs, tangent to the
 * wings and to each other: for half a belly of run dx and depth dy the two radii add up to (dx² + dy²) / (2·dy), and both
 * arcs turn by 2·atan(dy / dx). Source: reverse curve between parallel tangents, any surveying handbook.
 */
export const belly = (p: BellyParameters): Result<Footprint> => {
  const run = p.belly / 2;
  const depth = p.full - p.wing;
  const radiusSum = (run ** 2 + depth ** 2) / (2 * depth);
  const issues = bellyIssues(p, radiusSum);
  if (issues.length > 0) return failed(issues);
  const turn = 2 * Math.atan(depth / run);
  const round = radiusSum - p.shoulder;
  const x = round * Math.sin(turn);
  const y = p.full - round * (1 - Math.cos(turn));
  const half = p.length / 2;
  const c = p.corner;
  const segments: readonly Segment[] = [
    { kind: 'line', to: { x: half - c, y: 0 } },
    ...corner({ x: half, y: c }, { x: half - c, y: c }, c),
    { kind: 'line', to: { x: half, y: p.wing - c } },
    ...corner({ x: half - c, y: p.wing }, { x: half - c, y: p.wing - c }, c),
    ...straight(half - c, run, p.wing),
    { kind: 'arc', to: { x, y }, centre: { x: run, y: p.wing + p.shoulder }, clockwise: false },
    { kind: 'arc', to: { x: -x, y }, centre: { x: 0, y: p.full - round }, clockwise: true },
    { kind: 'arc', to: { x: -run, y: p.wing }, centre: { x: -run, y: p.wing + p.shoulder }, clockwise: false },
    ...straight(-run, -(half - c), p.wing),
    ...corner({ x: -half, y: p.wing - c }, { x: -(half - c), y: p.wing - c }, c),
    { kind: 'line', to: { x: -half, y: c } },
    ...corner({ x: -(half - c), y: 0 }, { x: -(half - c), y: c }, c),
  ];
  return ok({
    outline: { start: { x: -(half - c), y: 0 }, segments, closed: true },
    points: edgePoints(c, { x: half - c, y: 0 }, { x: half - c, y: p.wing }),
    faceLines: [],
  });
};

/** A straight along an edge, or nothing when the belly takes up the whole of it. */
const straight = (fromX: number, toX: number, y: number): readonly Segment[] =>
  fromX === toX ? [] : [{ kind: 'line', to: { x: toX, y } }];
