import type { Pose, ReadingKind } from '../../../src/core/placement/poseTypes';

type Point = { readonly x: number; readonly y: number };

/** A bridge point at a pose: turned by the rotation matrix, then moved. */
const placed = ({ x, y, angle }: Pose, point: Point): Point => ({
  x: x + point.x * Math.cos(angle) - point.y * Math.sin(angle),
  y: y + point.x * Math.sin(angle) + point.y * Math.cos(angle),
});

/**
 * What an ideal rule reads off a bridge at a pose, worked by other means than the program's: intersections by two linear
 * equations and Cramer's rule, distances from lines by their normal form.
 */
export const readAt = (reading: ReadingKind, pose: Pose): number => {
  switch (reading.kind) {
    case 'distance': {
      const at = placed(pose, reading.to);
      return Math.sqrt((at.x - reading.from.x) ** 2 + (at.y - reading.from.y) ** 2 + (reading.rise ?? 0) ** 2);
    }
    case 'offset': {
      // Normal form: on the treble side of a line toward the tail the normal is (dy, −dx).
      const at = placed(pose, reading.to);
      const { x: dx, y: dy } = reading.direction;
      return ((at.x - reading.through.x) * dy - (at.y - reading.through.y) * dx) / Math.sqrt(dx * dx + dy * dy);
    }
    case 'margin': {
      const saddle = placed(pose, reading.saddle);
      const slope = (saddle.x - reading.nut.x) / (saddle.y - reading.nut.y);
      const string = saddle.x - slope * (saddle.y - reading.at.y);
      return reading.at.x > 0 ? reading.at.x - string : string - reading.at.x;
    }
    case 'toLine': {
      const [p, q] = reading.line.map((point) => placed(pose, point)) as [Point, Point];
      // a·x + b·y = c through p and q, met at from + t·d.
      const [a, b] = [q.y - p.y, p.x - q.x];
      const c = a * p.x + b * p.y;
      const { from, direction } = reading;
      const t = (c - a * from.x - b * from.y) / (a * direction.x + b * direction.y);
      return Math.hypot(t * direction.x, t * direction.y, reading.rise ?? 0);
    }
    case 'difference': {
      const [one, other] = [reading.a, reading.b].map(({ from, to }) => {
        const at = placed(pose, to);
        return Math.hypot(at.x - from.x, at.y - from.y);
      }) as [number, number];
      return one - other;
    }
  }
};
