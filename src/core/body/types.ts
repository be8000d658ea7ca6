import type { Hole } from '../bridge/types';
import type { Brace, Cutaway } from '../document/bodyTypes';
import type { Path, Point } from '../geom/types';

/** A brace in its place: its middle from end to end, and how wide it is. */
export interface BracePlace extends Pick<Brace, 'id' | 'kind' | 'from' | 'to' | 'width' | 'read'> {
  /** As the maker calls it, or by its number. */
  readonly name: string;
  /** By which it is picked in the drawing. */
  readonly part: string;
}

/** What lies beneath and around the bridge, in one frame: the body's or the instrument's. */
export interface BodyPlace {
  /** Those whose two points lie apart. */
  readonly braces: readonly BracePlace[];
  readonly plate: Path | null;
  readonly soundhole: Path | null;
  readonly wireHole: Hole | null;
  readonly cutaway: Cutaway | null;
}

/** From the edge of the soundhole to a place that a clamp must reach. */
export interface Reach {
  readonly id: string;
  readonly label: string;
  readonly at: Point;
  /** Straight, mm. */
  readonly distance: number;
}
