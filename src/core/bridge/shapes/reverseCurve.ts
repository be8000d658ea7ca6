import type { Point, Segment } from '../../geom/types';

/** An edge that swells out over the centreline. */
export interface ReverseCurve {
  /** Where the hollow runs into the swell, treble side. */
  readonly join: Point;
  /** From (run, edge) over (0, edge + depth) to (−run, edge). */
  readonly segments: readonly Segment[];
}

/**
 * Radius of the hollow and radius of the swell of a reverse curve, together, for a run and depth of half the curve, mm:
 * (run² + depth²) / (2·depth). Source: reverse curve between parallel tangents, any surveying handbook.
 */
export const reverseCurveRadii = (run: number, depth: number): number => (run ** 2 + depth ** 2) / (2 * depth);

/**
 * A reverse curve of true arcs on the back edge of a clockwise outline, tangent to the edge and to each other; each arc
 * turns by 2·atan(depth / run). `shoulder`: radius of the hollow, below reverseCurveRadii.
 */
export const reverseCurve = (run: number, edge: number, depth: number, shoulder: number): ReverseCurve => {
  const round = reverseCurveRadii(run, depth) - shoulder;
  const turn = 2 * Math.atan(depth / run);
  const join: Point = { x: round * Math.sin(turn), y: edge + depth - round * (1 - Math.cos(turn)) };
  const hollow = (side: 1 | -1, to: Point): Segment => ({
    kind: 'arc',
    to,
    centre: { x: side * run, y: edge + shoulder },
    clockwise: false,
  });
  return {
    join,
    segments: [
      hollow(1, join),
      { kind: 'arc', to: { x: -join.x, y: join.y }, centre: { x: 0, y: edge + depth - round }, clockwise: true },
      hollow(-1, { x: -run, y: edge }),
    ],
  };
};
