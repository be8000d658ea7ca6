/** A place or a difference, mm. Instrument frame unless said otherwise: x + treble side, y + toward the tail. */
export interface Point {
  readonly x: number;
  readonly y: number;
}

export interface Line {
  readonly kind: 'line';
  readonly to: Point;
}

/** A true circular arc. Turn within (0, 2π), end ≠ start; clockwise as seen on the page (y down), where atan2(y, x) grows. */
export interface Arc {
  readonly kind: 'arc';
  readonly to: Point;
  readonly centre: Point;
  readonly clockwise: boolean;
}

/** A cubic Bézier curve with its two control points. */
export interface Cubic {
  readonly kind: 'cubic';
  readonly to: Point;
  readonly c1: Point;
  readonly c2: Point;
}

export type Segment = Line | Arc | Cubic;

/** closed: a straight closing segment is implied when the last `to` is not the start; a repeated start is legal. */
export interface Path {
  readonly start: Point;
  readonly segments: readonly Segment[];
  readonly closed: boolean;
}

/** The smallest upright rectangle around something, mm. */
export interface Bounds {
  readonly minX: number;
  readonly minY: number;
  readonly maxX: number;
  readonly maxY: number;
}
