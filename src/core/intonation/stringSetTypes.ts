import type { StringSpec } from './types';

/** How far a figure can be trusted, and where it comes from, in words for the maker. */
export interface FigureSource {
  readonly standing: 'published' | 'computed' | 'from memory' | 'estimated';
  readonly says: string;
}

/** One string of a set, with a source beside every figure. */
export interface SetString extends StringSpec {
  /** 1 is the treble course. */
  readonly course: number;
  /** Outside diameter, mm. */
  readonly diameter: number;
  readonly wound: boolean;
  /** Whole string, g/m. */
  readonly massPerLength: number;
  readonly sources: {
    readonly frequency: FigureSource;
    readonly diameter: FigureSource;
    readonly massPerLength: FigureSource;
    /** Core diameter, shape and modulus, or κ and B0. */
    readonly elastic: FigureSource;
  };
}

/** A set of strings by gauge, no maker's name. Strings run from the treble to the bass side. */
export interface StringSet {
  readonly id: string;
  readonly name: string;
  /** Scale on which the set is at home, mm. */
  readonly scaleLength: number;
  readonly strings: readonly SetString[];
}
