import type { Point } from '../../geom/types';
import type { Reading } from '../poseTypes';
import type { ReadToolId } from './readTools';

/** What a line tells most about, and where it stands in the list. */
export type ReadGroup = 'along' | 'stick' | 'margins' | 'edges' | 'corners' | 'pins' | 'compare' | 'pair';

/** A place of the instrument or the bridge that a rule can find; the bridge's where it is meant to lie. Instrument frame. */
export interface ReadPoint {
  readonly id: string;
  readonly label: string;
  readonly at: Point;
}

/** One thing that can be read of a bridge in its place. Lengths in mm. */
export interface ReadLine {
  /** Stable: "twelfth-slot-treble". */
  readonly id: string;
  readonly group: ReadGroup;
  /** "12th fret to slot front, string 1". */
  readonly label: string;
  /** How it is read, in a sentence or two. */
  readonly how: string;
  /** What the tool shows where the bridge sits as it should. */
  readonly expected: number;
  /** Whether what the tool shows may be less than nothing. */
  readonly signed: boolean;
  readonly tool: ReadToolId;
  /** What is added to what was read, and why; null for nothing. */
  readonly correction: { readonly by: number; readonly words: string } | null;
  /** As the pose is solved from it, bridge frame for the points of the bridge. */
  readonly reading: (value: number, sigma: number) => Reading;
  /** Where the tool lies, instrument frame. */
  readonly drawn: readonly (readonly [Point, Point])[];
}
