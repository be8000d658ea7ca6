import type { Point } from '../geom/types';

/** Where the bridge sits: its origin in the instrument frame, mm, and its turn, radians (+ carries +x toward +y). */
export interface Pose {
  readonly x: number;
  readonly y: number;
  readonly angle: number;
}

export type Freedom = keyof Pose;

/** A rule between a point of the instrument and a point of the bridge; rise: their difference in height, mm. */
export interface DistanceReading {
  readonly kind: 'distance';
  readonly from: Point;
  readonly to: Point;
  readonly rise?: number;
}

/** Square distance from a line of the instrument to a bridge point: + on the treble side of a line that runs toward the tail. */
export interface OffsetReading {
  readonly kind: 'offset';
  readonly through: Point;
  readonly direction: Point;
  readonly to: Point;
}

/** A string from the nut to the saddle against the edge of the board at a point of it: + when it lies inside the edge. */
export interface MarginReading {
  readonly kind: 'margin';
  readonly nut: Point;
  readonly saddle: Point;
  readonly at: Point;
}

/** A rule from an instrument point along a direction until it meets a line of the bridge. */
export interface ToLineReading {
  readonly kind: 'toLine';
  readonly from: Point;
  readonly direction: Point;
  readonly line: readonly [Point, Point];
  readonly rise?: number;
}

/** Two like distances compared without a rule: a − b. */
export interface DifferenceReading {
  readonly kind: 'difference';
  readonly a: { readonly from: Point; readonly to: Point };
  readonly b: { readonly from: Point; readonly to: Point };
}

export type ReadingKind = DistanceReading | OffsetReading | MarginReading | ToLineReading | DifferenceReading;

/** What was read, mm, and the doubt of it (one sigma, mm). Points named `to`, `saddle` and `line` are the bridge's own. */
export type Reading = { readonly value: number; readonly sigma: number } & ReadingKind;

/**
 * Where the bridge sits by its readings. sigma from the readings' own sigmas, linearised at the answer. residuals: read −
 * predicted, mm. unseen: a freedom that the readings do not fix; its sigma is Infinity and its pose stays nominal.
 */
export interface PoseFit {
  readonly pose: Pose;
  readonly sigma: Pose;
  readonly residuals: readonly number[];
  readonly unseen: readonly Freedom[];
}
