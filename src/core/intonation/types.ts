/** How a string resists stretching and bending. */
export type Elastic =
  /** From the core: open tension = mass·(2·L0·f)², stretch and bending from the core's section alone. */
  | {
      readonly kind: 'core';
      /** Whole string, wrap included, g/m. */
      readonly massPerLength: number;
      /** Diameter of a round core, width across the flats of a hexagonal one, mm. */
      readonly coreDiameter: number;
      readonly coreShape: 'round' | 'hex';
      /** Young's modulus of the core, GPa. */
      readonly modulus: number;
    }
  /** From a measurement: κ = E·A/T0 and bending B0, taken `at` a scale and pitch (absent: where they are used). */
  | {
      readonly kind: 'measured';
      readonly kappa: number;
      readonly b0: number;
      readonly at?: { readonly scaleLength: number; readonly frequency: number };
    };

/** One string, as far as its pitch is concerned. */
export interface StringSpec {
  readonly name: string;
  /** Open, Hz. */
  readonly frequency: number;
  readonly elastic: Elastic;
}

/** How the instrument is set up under one string, mm. */
export interface Setup {
  readonly scaleLength: number;
  /** String above the fret-top plane at the nut. */
  readonly nutHeight: number;
  /** Clearance over fret 12, open string. */
  readonly action: number;
  /** Deepest dip of the fret tops below a straightedge on `reliefFrets`. */
  readonly relief: number;
  readonly reliefFrets: readonly [number, number];
  /** Finger behind the fret; 0 = at the fret. Held to four fifths of the way to the fret before. */
  readonly fingerDistance: number;
  /** Finger depth below the fret top; absent: 0. */
  readonly pushDown?: number;
}

/** mm. saddle: + away from the nut. nut: + lengthens the string, − moves the nut toward the saddle. */
export interface Setback {
  readonly saddle: number;
  readonly nut: number;
}

/** A fitted setback and what is left at the fitted frets, cents. */
export interface SetbackFit extends Setback {
  readonly rms: number;
  /** One per fitted fret, in the order asked. */
  readonly cents: readonly number[];
}

/** What a fit is asked to do: `frets` = [12] is the octave match; `freeNut` moves the nut too. */
export interface FitOptions {
  readonly frets: readonly number[];
  readonly freeNut: boolean;
}
