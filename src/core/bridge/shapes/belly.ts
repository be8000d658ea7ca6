import type { Point, Segment } from '../../geom/types';
import { failed, type Issue, issue, ok, type Result } from '../../result';
import type { Footprint } from '../types';
import { bothSides } from './bothSides';
import { corner } from './corner';
import { edgePoints } from './edgePoints';
import { reverseCurve, reverseCurveRadii } from './reverseCurve';
import { straight } from './straight';

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
const bellyIssues = (p: BellyParameters, radii: number): readonly Issue[] => {
  const issues: Issue[] = [];
  if (p.full <= p.wing)
    issues.push(issue(path('full'), 'belly.flat', 'The width at the belly is more than the width at the wings.'));
  if (p.belly / 2 > p.length / 2 - p.corner)
    issues.push(issue(path('belly'), 'belly.wide', 'The belly and the corners together are longer than the bridge.'));
  if (p.corner > p.wing / 2)
    issues.push(issue(path('corner'), 'belly.corner', 'The corner radius is at most half the width at the wings.'));
  if (p.full - p.wing > p.belly / 2)
    issues.push(issue(path('full'), 'belly.deep', 'The belly is at most half as deep as it is across.'));
  if (p.full > p.wing && p.shoulder >= radii)
    issues.push(
      issue(path('shoulder'), 'belly.shoulder', `The shoulder radius is below ${radii.toFixed(1)} mm for this belly.`),
    );
  return issues;
};

/**
 * Bridge with a belly toward the tail, in the footprint frame: straight front edge, and a reverse curve on the back edge.
 * Codes: belly.flat, .wide, .corner, .deep, .shoulder.
 */
export const belly = (p: BellyParameters): Result<Footprint> => {
  const run = p.belly / 2;
  const depth = p.full - p.wing;
  const issues = bellyIssues(p, reverseCurveRadii(run, depth));
  if (issues.length > 0) return failed(issues);
  const half = p.length / 2;
  const c = p.corner;
  const inner = half - c;
  const front: Point = { x: inner, y: 0 };
  const tipFront: Point = { x: half, y: c };
  const tipBack: Point = { x: half, y: p.wing - c };
  const back: Point = { x: inner, y: p.wing };
  const bellyEnd: Point = { x: run, y: p.wing };
  const curve = reverseCurve(run, p.wing, depth, p.shoulder);
  const bass = ({ x, y }: Point): Point => ({ x: -x, y });
  const segments: readonly Segment[] = [
    { kind: 'line', to: front },
    ...corner(tipFront, { x: inner, y: c }, c),
    ...straight(tipFront, tipBack),
    ...corner(back, { x: inner, y: p.wing - c }, c),
    ...straight(back, bellyEnd),
    ...curve.segments,
    ...straight(bass(bellyEnd), bass(back)),
    ...corner(bass(tipBack), { x: -inner, y: p.wing - c }, c),
    ...straight(bass(tipBack), bass(tipFront)),
    ...corner(bass(front), { x: -inner, y: c }, c),
  ];
  return ok({
    outline: { start: bass(front), segments, closed: true },
    points: [
      ...edgePoints(c, { front, back, tipFront, tipBack }),
      ...bothSides('belly', 'end of the belly', bellyEnd),
      ...bothSides('shoulder', 'inner end of the shoulder', curve.join),
    ],
    faceLines: [],
  });
};
