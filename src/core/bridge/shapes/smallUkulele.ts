import type { Segment } from '../../geom/types';
import { failed, type Issue, issue, ok, type Result } from '../../result';
import type { Footprint } from '../types';
import { corner } from './corner';
import { edgePoints } from './edgePoints';

export interface SmallUkuleleParameters {
  readonly length: number;
  readonly full: number;
  readonly end: number;
  readonly corner: number;
}

const path = (name: keyof SmallUkuleleParameters): string => `bridge.outline.parameters.${name}`;

const ukuleleIssues = (p: SmallUkuleleParameters): readonly Issue[] => {
  const issues: Issue[] = [];
  if (p.end > p.full)
    issues.push(issue(path('end'), 'ukulele.end', 'The width at the ends is at most the bridge width.'));
  if (p.full - p.end >= p.length / 2)
    issues.push(issue(path('full'), 'ukulele.deep', 'The back edge bulges by less than half the bridge length.'));
  if (p.corner > p.end / 2 || p.corner >= p.length / 2)
    issues.push(
      issue(
        path('corner'),
        'ukulele.corner',
        'The corner radius is at most half the width at the ends, and below half the bridge length.',
      ),
    );
  return issues;
};

/**
 * Small ukulele bridge, in the footprint frame: straight front edge, straight ends, and a back edge that is one true arc
 * from end to end, of radius (h² + s²) / (2·s) for half length h and bulge s; or a straight line without bulge. The back
 * corners are rounded by arcs tangent to end and back edge.
 */
export const smallUkulele = (p: SmallUkuleleParameters): Result<Footprint> => {
  const issues = ukuleleIssues(p);
  if (issues.length > 0) return failed(issues);
  const half = p.length / 2;
  const c = p.corner;
  const bulge = p.full - p.end;
  const back = backEdge(half, p, bulge);
  const segments: readonly Segment[] = [
    { kind: 'line', to: { x: half - c, y: 0 } },
    ...corner({ x: half, y: c }, { x: half - c, y: c }, c),
    ...(back.endY > c ? [{ kind: 'line', to: { x: half, y: back.endY } } as const] : []),
    ...corner(back.tangent, { x: half - c, y: back.endY }, c),
    back.edge,
    ...corner({ x: -half, y: back.endY }, { x: -(half - c), y: back.endY }, c),
    ...(back.endY > c ? [{ kind: 'line', to: { x: -half, y: c } } as const] : []),
    ...corner({ x: -(half - c), y: 0 }, { x: -(half - c), y: c }, c),
  ];
  return ok({
    outline: { start: { x: -(half - c), y: 0 }, segments, closed: true },
    points: edgePoints(c, {
      front: { x: half - c, y: 0 },
      back: back.tangent,
      tipFront: { x: half, y: c },
      tipBack: { x: half, y: back.endY },
    }),
    faceLines: [],
  });
};

/** The back edge, where it meets its corner (treble side), and where the straight of the end stops. */
const backEdge = (half: number, p: SmallUkuleleParameters, bulge: number) => {
  const c = p.corner;
  if (bulge === 0) {
    const tangent = { x: half - c, y: p.end };
    return { tangent, endY: p.end - c, edge: { kind: 'line', to: { x: -tangent.x, y: p.end } } as const };
  }
  const radius = (half ** 2 + bulge ** 2) / (2 * bulge);
  const centre = { x: 0, y: p.full - radius };
  // Centre of the corner's arc: c from the end, and radius − c from the centre of the back edge.
  const endY = c === 0 ? p.end : centre.y + Math.sqrt((radius - c) ** 2 - (half - c) ** 2);
  const reach = radius / (radius - c);
  const tangent = c === 0 ? { x: half, y: p.end } : { x: (half - c) * reach, y: centre.y + (endY - centre.y) * reach };
  return {
    tangent,
    endY,
    edge: { kind: 'arc', to: { x: -tangent.x, y: tangent.y }, centre, clockwise: true } as const,
  };
};
