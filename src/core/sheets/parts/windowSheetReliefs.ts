import { arcGeometry } from '../../geom/arcGeometry';
import { closedSegments, type StartedSegment } from '../../geom/closedSegments';
import { add, cross, distance, dot, subtract } from '../../geom/points';
import { signedArea } from '../../geom/signedArea';
import type { Path, Point } from '../../geom/types';

/** Diameter of the punch or drill that takes the paper out of a corner, mm: common practice, no source. */
export const RELIEF = 3;

/** A node that turns by more is a corner, radians. */
const CORNER = (20 * Math.PI) / 180;
/** A rounding of at most this radius, and at least this turn, leaves paper standing that a knife does not reach, mm and radians. */
const TIGHT = { radius: 3, turn: (45 * Math.PI) / 180 };

/** Directions in which a segment leaves its start and arrives at its end; not of length 1. */
const waysOf = ({ start, segment }: StartedSegment): readonly [Point, Point] => {
  const { to } = segment;
  if (segment.kind === 'arc') {
    const sign = segment.clockwise ? 1 : -1;
    const tangent = (point: Point): Point => {
      const out = subtract(point, segment.centre);
      return { x: -sign * out.y, y: sign * out.x };
    };
    return [tangent(start), tangent(to)];
  }
  const straight = subtract(to, start);
  if (segment.kind === 'line') return [straight, straight];
  const or = (way: Point): Point => (Math.hypot(way.x, way.y) > 1e-9 ? way : straight);
  return [or(subtract(segment.c1, start)), or(subtract(to, segment.c2))];
};

/** The middle of an arc. */
const middleOf = ({ start, segment }: StartedSegment): Point | null => {
  if (segment.kind !== 'arc') return null;
  const { radius, startAngle, sweep } = arcGeometry(start, segment);
  const angle = startAngle + sweep / 2;
  return add(segment.centre, { x: radius * Math.cos(angle), y: radius * Math.sin(angle) });
};

/**
 * Where the corners of a window cut to an outline are relieved, so that no paper keeps the bridge out of them: at sharp
 * corners that stand out, and in the middle of tight roundings. Each place once.
 */
export const windowReliefs = (outline: Path): readonly Point[] => {
  const way = Math.sign(signedArea(outline));
  const sides = closedSegments(outline);
  const found = sides.flatMap((side, index): readonly Point[] => {
    const before = sides.at(index - 1) ?? side;
    const [arrives, leaves] = [waysOf(before)[1], waysOf(side)[0]];
    const turn = Math.atan2(cross(arrives, leaves), dot(arrives, leaves)) * way;
    const corner = turn > CORNER ? [side.start] : [];
    if (side.segment.kind !== 'arc') return corner;
    const { radius, sweep } = arcGeometry(side.start, side.segment);
    const middle = radius <= TIGHT.radius && sweep * way >= TIGHT.turn ? middleOf(side) : null;
    return middle === null ? corner : [...corner, middle];
  });
  return found.filter((place, index) => found.slice(0, index).every((other) => distance(place, other) >= RELIEF / 2));
};
