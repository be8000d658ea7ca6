/** The scale in use, mm. */
export interface Scale {
  readonly scaleLength: number;
  /** Nut datum against where the frets were laid out from: − when moved toward the bridge. */
  readonly nutOffset: number;
  readonly from: 'entered' | 'readings';
  /** How many readings it rests on. */
  readonly readings: number;
  /** Largest less smallest reading of nut to 12th fret; 0 for fewer than two. */
  readonly readingSpread: number;
}

/** A string's centre: x at the nut datum and at the break-point line; y along the centreline. */
export interface StringPlace {
  readonly id: string;
  readonly name: string;
  readonly nutX: number;
  readonly saddleX: number;
}

/** The fingerboard as straight edges, instrument frame, mm. */
export interface Board {
  readonly nutWidth: number;
  /** Growth of the width per mm toward the tail. */
  readonly taper: number;
  /** y of the 12th fret, of the fret at the body join, and of the octave line (scale with no compensation). */
  readonly twelfth: number;
  readonly bodyJoin: number;
  readonly octave: number;
}
