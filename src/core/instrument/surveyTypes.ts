/** A rule reading from the nut datum to the crown of a fret, mm. */
export interface SurveyReading {
  readonly fret: number;
  readonly value: number;
}

/** A figure and its ± at 95 %, mm. */
export interface Doubted {
  readonly value: number;
  readonly plusMinus: number;
}

/** The doubt of one reading, as it went into every ±: ± = factor · sigma · (what the spread of the frets makes of it). */
export interface ReadingDoubt {
  /** rule: as stated for the rule; scatter: from how far the readings stray from the fit. */
  readonly from: 'rule' | 'scatter';
  /** One sigma, mm. */
  readonly sigma: number;
  /** Student's t at 95 %; 1.96 with the rule's doubt. */
  readonly factor: number;
  /** Readings beyond what the fit needs. */
  readonly degreesOfFreedom: number;
  /** How the choice was made, in words. */
  readonly rule: string;
}

/** Scale and nut offset through readings, with their doubt. */
export interface SurveyFit {
  readonly scaleLength: Doubted;
  /** − when the nut datum lies nearer the bridge than the frets were laid out for. plusMinus null: one fret alone cannot tell it, 0 is taken. */
  readonly nutOffset: { readonly value: number; readonly plusMinus: number | null };
  readonly doubt: ReadingDoubt;
}

/** The readings to one fret, mm. */
export interface FretMean {
  readonly fret: number;
  readonly count: number;
  readonly mean: number;
  /** Largest less smallest. */
  readonly spread: number;
  /** Mean less what the fit says: + when it reads too far from the nut. */
  readonly residual: number;
}

/**
 * What does not fit, mm. Every `off` is + away from the nut.
 * reading: this one stands off the others to the same fret.
 * pair: the only two readings to this fret differ by more than their doubt allows; a third is needed. off = how much.
 * fret: its readings agree, but sit off what the other frets say: the fret is badly placed, or, with a single reading,
 * the rule slipped. `instead` lists frets that explain the readings as well; more frets must be read to tell.
 */
export type SurveyFinding =
  | { readonly kind: 'reading'; readonly index: number; readonly fret: number; readonly off: number }
  | { readonly kind: 'pair'; readonly indices: readonly [number, number]; readonly fret: number; readonly off: number }
  | {
      readonly kind: 'fret';
      readonly fret: number;
      readonly off: number;
      readonly readings: number;
      readonly instead: readonly number[];
    };

/** The board by its readings. */
export interface FretSurvey extends SurveyFit {
  /** Read less fitted, mm, in the order of the readings. */
  readonly residuals: readonly number[];
  /** Lowest fret first. */
  readonly frets: readonly FretMean[];
  readonly findings: readonly SurveyFinding[];
  /** The fit without what the findings name for certain; null when nothing is left out, or nothing would be left. */
  readonly cleared: SurveyFit | null;
}
