/** Lengths read on a print, mm. sigma: doubt of one reading, one sigma. part: the span that must be right. */
export interface PrintReading {
  readonly nominalX: number;
  readonly nominalY: number;
  readonly readX: number;
  readonly readY: number;
  /** Both diagonals of the square, or of the frame whose sides are the nominal lengths; + skew when `a` is the longer. */
  readonly diagonals?: { readonly nominal: number; readonly a: number; readonly b: number };
  readonly sigma?: number;
  readonly part?: { readonly x: number; readonly y: number };
}

export type PrintVerdict = 'true' | 'correct' | 'reprint' | 'refuse';

/** What the readings say of the print. */
export interface PrintFactor {
  /** Multiply the drawing by these to print true. */
  readonly factorX: number;
  readonly factorY: number;
  readonly sigmaX: number;
  readonly sigmaY: number;
  /** Departure from square, degrees; 0 when no diagonals were read. */
  readonly skewDeg: number;
  /** Of this print, mm: + too long. */
  readonly errorAtPart: { readonly x: number; readonly y: number };
  /** true: within 0.25 mm at the part. correct: print again with the factors. reprint: a setting is wrong. refuse: outside 90 to 110 %. */
  readonly verdict: PrintVerdict;
  /** false when the readings are too coarse to tell. */
  readonly sure: boolean;
  readonly hint: string | null;
}

/** What a page was multiplied by to print true on one printer, along the axes of the page. */
export interface PrintCorrection {
  readonly factorX: number;
  readonly factorY: number;
  /** Of the printer, as the maker calls it. */
  readonly name: string;
  /** ISO date of the reading that it rests on. */
  readonly date: string;
  /** Only where it mends a setting that the maker could not change and a reprint was advised. */
  readonly againstAdvice?: true;
}
