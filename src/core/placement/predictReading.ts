import type { Point } from '../geom/types';
import type { Pose, ReadingKind } from './poseTypes';

/** What a reading should be at a pose, mm, and how it changes with x, y (mm per mm) and angle (mm per radian). */
export interface Prediction {
  readonly value: number;
  readonly slopes: readonly [x: number, y: number, angle: number];
}

/** How a figure changes with the place of one bridge point. */
interface PointSlope {
  readonly at: Point;
  readonly byX: number;
  readonly byY: number;
}

const cross = (a: Point, b: Point): number => a.x * b.y - a.y * b.x;
const minus = (a: Point, b: Point): Point => ({ x: a.x - b.x, y: a.y - b.y });

/** A point of the bridge where it lies in the instrument frame at a pose. */
const bridgePointAt = (pose: Pose, point: Point): Point => {
  const cosine = Math.cos(pose.angle);
  const sine = Math.sin(pose.angle);
  return { x: pose.x + cosine * point.x - sine * point.y, y: pose.y + sine * point.x + cosine * point.y };
};

/** The slopes by the pose from the slopes by the points: a turn moves a point square to its arm. */
const byPose = (value: number, pose: Pose, points: readonly PointSlope[]): Prediction => {
  const slopes: [number, number, number] = [0, 0, 0];
  for (const { at, byX, byY } of points) {
    slopes[0] += byX;
    slopes[1] += byY;
    slopes[2] += byY * (at.x - pose.x) - byX * (at.y - pose.y);
  }
  return { value, slopes };
};

const slopeOfLength = (from: Point, at: Point, length: number): PointSlope => ({
  at,
  byX: length === 0 ? 0 : (at.x - from.x) / length,
  byY: length === 0 ? 0 : (at.y - from.y) / length,
});

const planLength = (from: Point, at: Point): number => Math.hypot(at.x - from.x, at.y - from.y);

/**
 * What the rule would show at a pose. Elementary plane geometry; a rise makes value² = plan² + rise². A rule that runs
 * along the line that it should meet gives a value that is not finite.
 */
export const predictReading = (reading: ReadingKind, pose: Pose): Prediction => {
  switch (reading.kind) {
    case 'distance': {
      const at = bridgePointAt(pose, reading.to);
      const value = Math.hypot(planLength(reading.from, at), reading.rise ?? 0);
      return byPose(value, pose, [slopeOfLength(reading.from, at, value)]);
    }
    case 'offset': {
      const at = bridgePointAt(pose, reading.to);
      const length = Math.hypot(reading.direction.x, reading.direction.y);
      const along = { x: reading.direction.x / length, y: reading.direction.y / length };
      const value = cross(minus(at, reading.through), along);
      return byPose(value, pose, [{ at, byX: along.y, byY: -along.x }]);
    }
    case 'margin': {
      const at = bridgePointAt(pose, reading.saddle);
      const { nut, at: edge } = reading;
      const side = edge.x < 0 ? -1 : 1;
      const share = (edge.y - nut.y) / (at.y - nut.y);
      const string = nut.x + (at.x - nut.x) * share;
      const byX = -side * share;
      const byY = (side * (at.x - nut.x) * share) / (at.y - nut.y);
      return byPose(side * (edge.x - string), pose, [{ at, byX, byY }]);
    }
    case 'toLine':
      return predictToLine(reading, pose);
    case 'difference': {
      const [a, b] = [bridgePointAt(pose, reading.a.to), bridgePointAt(pose, reading.b.to)];
      const [longer, shorter] = [planLength(reading.a.from, a), planLength(reading.b.from, b)];
      const second = slopeOfLength(reading.b.from, b, shorter);
      return byPose(longer - shorter, pose, [
        slopeOfLength(reading.a.from, a, longer),
        { at: b, byX: -second.byX, byY: -second.byY },
      ]);
    }
  }
};

/** Along the rule to where it meets the line: t = (p − f) × l / (d × l), with the slopes of that quotient. */
const predictToLine = (reading: Extract<ReadingKind, { kind: 'toLine' }>, pose: Pose): Prediction => {
  const [p, q] = [bridgePointAt(pose, reading.line[0]), bridgePointAt(pose, reading.line[1])];
  const length = Math.hypot(reading.direction.x, reading.direction.y);
  const d = { x: reading.direction.x / length, y: reading.direction.y / length };
  const l = minus(q, p);
  const across = cross(d, l);
  const plan = cross(minus(p, reading.from), l) / across;
  const met = { x: reading.from.x + d.x * plan, y: reading.from.y + d.y * plan };
  const value = Math.hypot(plan, reading.rise ?? 0);
  // Moving the line square to itself at the meeting point moves that point along the rule.
  const gain = value === 0 ? 1 : plan / value;
  return byPose(value, pose, [{ at: met, byX: (gain * l.y) / across, byY: (-gain * l.x) / across }]);
};
