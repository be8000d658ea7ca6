import type { Path, Point, Segment } from '../../core/geom/types';

/** A vertex with the bulge of the segment that leaves it: tan of a quarter of its turn, + counter-clockwise with y up. */
export interface Vertex {
  readonly at: Point;
  readonly bulge: number;
}

/** Less than this a bulge is rounding: its sagitta is a millionth of a chord of 1 mm. */
const FLAT_BULGE = 1e-9;

/** Beyond this the arc is a full turn but for rounding; no drawing has such. */
const MOST_BULGE = 1e6;

/**
 * The segment of a bulge. With t = bulge the sagitta is t·chord/2, and the centre stands (1 − t²)/(4t) of the chord to the
 * left of its middle (Autodesk's DXF reference: bulge is tan(angle/4)). Here y is up, and clockwise is named for y down.
 */
const bulged = (from: Point, to: Point, bulge: number): Segment => {
  const same = from.x === to.x && from.y === to.y;
  if (same || Math.abs(bulge) < FLAT_BULGE || Math.abs(bulge) > MOST_BULGE) return { kind: 'line', to };
  const off = (1 - bulge * bulge) / (4 * bulge);
  const centre: Point = {
    x: (from.x + to.x) / 2 - (to.y - from.y) * off,
    y: (from.y + to.y) / 2 + (to.x - from.x) * off,
  };
  return { kind: 'arc', to, centre, clockwise: bulge > 0 };
};

/** A polyline of straight lines and true arcs, in the file's own frame. */
export const polylinePath = (vertices: readonly Vertex[], closed: boolean): Path | null => {
  const [first, ...rest] = vertices;
  if (first === undefined || rest.length === 0) return null;
  let before = first;
  const segments = [...rest, ...(closed ? [first] : [])].map((vertex): Segment => {
    const segment = bulged(before.at, vertex.at, before.bulge);
    before = vertex;
    return segment;
  });
  return { start: first.at, segments, closed };
};
