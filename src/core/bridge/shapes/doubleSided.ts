import type { Point, Segment } from '../../geom/types';
import { failed, type Issue, issue, ok, type Result } from '../../result';
import type { Footprint } from '../types';
import { bothSides } from './bothSides';
import { corner } from './corner';
import { edgePoints } from './edgePoints';
import { turnedPoint, turnedSegments } from './halfTurn';
import { reverseCurve, reverseCurveRadii } from './reverseCurve';
import { straight } from './straight';

export interface DoubleSidedParameters {
  readonly length: number;
  readonly full: number;
  readonly wing: number;
  readonly waist: number;
  readonly shoulder: number;
  readonly corner: number;
}

const path = (name: keyof DoubleSidedParameters): string => `bridge.outline.parameters.${name}`;

/** What is wrong with these dimensions taken together. */
const doubleSidedIssues = (p: DoubleSidedParameters): readonly Issue[] => {
  const issues: Issue[] = [];
  const add = (name: keyof DoubleSidedParameters, code: string, message: string) =>
    issues.push(issue(path(name), `double-sided.${code}`, message));
  const radii = reverseCurveRadii(p.waist / 2, (p.full - p.wing) / 2);
  if (p.full <= p.wing) add('full', 'flat', 'The width at the centre is more than the width at the wings.');
  if (p.waist / 2 > p.length / 2 - p.corner)
    add('waist', 'wide', 'The span of the waist and the tip radii together are at most the bridge length.');
  if (p.corner > p.wing / 2) add('corner', 'corner', 'The tip radius is at most half the width at the wings.');
  if (p.full - p.wing > p.waist) add('full', 'deep', 'Each edge swells by at most half the span of the waist.');
  if (p.full > p.wing && p.shoulder >= radii)
    add('shoulder', 'shoulder', `The shoulder radius is below ${radii.toFixed(1)} mm for this swell and waist.`);
  return issues;
};

/**
 * Ornate bridge with the same reverse curve on its front and its back edge, in the footprint frame: widest on the
 * centreline, hollow at the shoulders, narrow wings with rounded tips. Codes: double-sided.flat, .wide, .corner, .deep,
 * .shoulder. A plain ornamental form of true arcs, after no particular instrument.
 */
export const doubleSided = (p: DoubleSidedParameters): Result<Footprint> => {
  const issues = doubleSidedIssues(p);
  if (issues.length > 0) return failed(issues);
  const half = p.length / 2;
  const inner = half - p.corner;
  const run = p.waist / 2;
  const swell = (p.full - p.wing) / 2;
  const wingBack = p.full - swell;
  const front: Point = { x: inner, y: swell };
  const tipFront: Point = { x: half, y: swell + p.corner };
  const tipBack: Point = { x: half, y: wingBack - p.corner };
  const back: Point = { x: inner, y: wingBack };
  const waist: Point = { x: run, y: wingBack };
  const curve = reverseCurve(run, wingBack, swell, p.shoulder);
  const trebleAndBack: readonly Segment[] = [
    ...corner(tipFront, { x: inner, y: tipFront.y }, p.corner),
    ...straight(tipFront, tipBack),
    ...corner(back, { x: inner, y: tipBack.y }, p.corner),
    ...straight(back, waist),
    ...curve.segments,
    ...straight({ x: -run, y: wingBack }, turnedPoint(front, p.full)),
  ];
  const facing = ({ x, y }: Point): Point => ({ x, y: p.full - y });
  return ok({
    outline: { start: front, segments: [...trebleAndBack, ...turnedSegments(trebleAndBack, p.full)], closed: true },
    points: [
      ...edgePoints(p.corner, { front, back, tipFront, tipBack }),
      ...bothSides('front-waist', 'outer end of the front shoulder', facing(waist)),
      ...bothSides('back-waist', 'outer end of the back shoulder', waist),
      ...bothSides('front-shoulder', 'inner end of the front shoulder', facing(curve.join)),
      ...bothSides('back-shoulder', 'inner end of the back shoulder', curve.join),
    ],
    faceLines: [],
  });
};
