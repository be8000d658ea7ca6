import type { Point, Segment } from '../../geom/types';

/** A point of a bridge `full` wide, once the bridge is turned end for end: front becomes back. Its own inverse. */
export const turnedPoint = (at: Point, full: number): Point => ({ x: 0 - at.x, y: full - at.y });

/** The same for a run of segments: shape, order and direction stay. */
export const turnedSegments = (segments: readonly Segment[], full: number): readonly Segment[] =>
  segments.map((segment) => turnedSegment(segment, (at) => turnedPoint(at, full)));

const turnedSegment = (segment: Segment, turn: (at: Point) => Point): Segment => {
  const to = turn(segment.to);
  switch (segment.kind) {
    case 'line':
      return { ...segment, to };
    case 'arc':
      return { ...segment, to, centre: turn(segment.centre) };
    case 'cubic':
      return { ...segment, to, c1: turn(segment.c1), c2: turn(segment.c2) };
  }
};
