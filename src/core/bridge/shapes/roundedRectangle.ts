import type { Point, Segment } from '../../geom/types';
import type { Footprint } from '../types';
import { corner } from './corner';
import { edgePoints } from './edgePoints';
import { turnedPoint, turnedSegments } from './halfTurn';
import { straight } from './straight';

/**
 * A rectangle behind the front edge with quarter-round corners, in the footprint frame, nothing drawn on its face. The
 * radius is at most half of either side; 0 leaves sharp corners.
 */
export const roundedRectangle = (length: number, full: number, radius: number): Footprint => {
  const half = length / 2;
  const inner = half - radius;
  const front: Point = { x: inner, y: 0 };
  const tipFront: Point = { x: half, y: radius };
  const tipBack: Point = { x: half, y: full - radius };
  const back: Point = { x: inner, y: full };
  const trebleAndBack: readonly Segment[] = [
    ...corner(tipFront, { x: inner, y: radius }, radius),
    ...straight(tipFront, tipBack),
    ...corner(back, { x: inner, y: full - radius }, radius),
    ...straight(back, turnedPoint(front, full)),
  ];
  return {
    outline: { start: front, segments: [...trebleAndBack, ...turnedSegments(trebleAndBack, full)], closed: true },
    points: edgePoints(radius, { front, back, tipFront, tipBack }),
    faceLines: [],
  };
};
