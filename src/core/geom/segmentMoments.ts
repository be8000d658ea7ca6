import { arcGeometry } from './arcGeometry';
import { cross, distance, subtract } from './points';
import type { Arc, Cubic, Point, Segment } from './types';

/** What one segment adds, by Green's theorem, to the area inside a closed path and to the first moments of that area. */
export interface Moments {
  /** ½∮(x dy − y dx), mm²; + clockwise as seen on the page */
  readonly area: number;
  /** ½∮x² dy, mm³ */
  readonly x: number;
  /** −½∮y² dx, mm³ */
  readonly y: number;
}

/** The moments of a segment, coordinates counted from `origin`. Exact but for rounding. */
export function segmentMoments(start: Point, segment: Segment, origin: Point): Moments {
  const from = subtract(start, origin);
  const to = subtract(segment.to, origin);
  switch (segment.kind) {
    case 'line':
      return lineMoments(from, to);
    case 'arc':
      return arcMoments(from, { ...segment, to, centre: subtract(segment.centre, origin) });
    case 'cubic':
      return cubicMoments(from, { ...segment, to, c1: subtract(segment.c1, origin), c2: subtract(segment.c2, origin) });
  }
}

function lineMoments(a: Point, b: Point): Moments {
  return {
    area: cross(a, b) / 2,
    x: ((b.y - a.y) * (a.x * a.x + a.x * b.x + b.x * b.x)) / 6,
    y: (-(b.x - a.x) * (a.y * a.y + a.y * b.y + b.y * b.y)) / 6,
  };
}

/**
 * The chord's moments and those of the circular segment between chord and arc: its area is ½r²(θ − sin θ), and its
 * first moment about the centre is chord³/12 toward the middle of the arc (so the centroid lies at 4r·sin³(θ/2) /
 * 3(θ − sin θ), as in handbooks of mechanics).
 */
function arcMoments(from: Point, arc: Arc): Moments {
  const chord = lineMoments(from, arc.to);
  const { radius, startAngle, sweep } = arcGeometry(from, arc);
  const area = (radius * radius * (sweep - Math.sin(sweep))) / 2;
  const moment = (Math.sign(sweep) * distance(from, arc.to) ** 3) / 12;
  const middle = startAngle + sweep / 2;
  return {
    area: chord.area + area,
    x: chord.x + area * arc.centre.x + moment * Math.cos(middle),
    y: chord.y + area * arc.centre.y + moment * Math.sin(middle),
  };
}

const INNER_NODE = Math.sqrt(5 - 2 * Math.sqrt(10 / 7)) / 3;
const OUTER_NODE = Math.sqrt(5 + 2 * Math.sqrt(10 / 7)) / 3;
const INNER_WEIGHT = (322 + 13 * Math.sqrt(70)) / 900;
const OUTER_WEIGHT = (322 - 13 * Math.sqrt(70)) / 900;

/** Gauss-Legendre quadrature on [−1, 1] with five points: exact to degree 9, and a cubic's moments have degree 8. */
const QUADRATURE = [
  { node: 0, weight: 128 / 225 },
  { node: -INNER_NODE, weight: INNER_WEIGHT },
  { node: INNER_NODE, weight: INNER_WEIGHT },
  { node: -OUTER_NODE, weight: OUTER_WEIGHT },
  { node: OUTER_NODE, weight: OUTER_WEIGHT },
] as const;

function cubicMoments(from: Point, { c1, c2, to }: Cubic): Moments {
  let area = 0;
  let x = 0;
  let y = 0;
  for (const { node, weight } of QUADRATURE) {
    const t = (1 + node) / 2;
    const s = 1 - t;
    const value = (a: number, b: number, c: number, d: number) =>
      s * s * s * a + 3 * s * s * t * b + 3 * s * t * t * c + t * t * t * d;
    const slope = (a: number, b: number, c: number, d: number) =>
      3 * (s * s * (b - a) + 2 * s * t * (c - b) + t * t * (d - c));
    const at = { x: value(from.x, c1.x, c2.x, to.x), y: value(from.y, c1.y, c2.y, to.y) };
    const by = { x: slope(from.x, c1.x, c2.x, to.x), y: slope(from.y, c1.y, c2.y, to.y) };
    area += (weight * cross(at, by)) / 4;
    x += (weight * at.x * at.x * by.y) / 4;
    y -= (weight * at.y * at.y * by.x) / 4;
  }
  return { area, x, y };
}
