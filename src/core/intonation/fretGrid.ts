/** What does not change while a saddle is fitted: where the frets lie and how relief bends them. */
export interface FretGrid {
  /** Nut datum to fret, mm. */
  readonly distance: Float64Array;
  /** To the fret before, or to the nut datum, mm. */
  readonly gap: Float64Array;
  /** Share of the relief by which the fret top lies below the straightedge, 0 to 1. */
  readonly dip: Float64Array;
  /** The same share at the fret before. */
  readonly dipBefore: Float64Array;
  /** The same share at fret 12. */
  readonly twelfthDip: number;
  /** 2^(n/12). */
  readonly pitchRatio: Float64Array;
}

/**
 * Frets of equal temperament, X0·(1 − 2^(−n/12)), with the relief a parabola between the frets under the straightedge,
 * flat outside: y = −relief·4·t·(1 − t), t = (x − x_first)/(x_last − x_first).
 */
export function fretGrid(
  scaleLength: number,
  reliefFrets: readonly [number, number],
  frets: readonly number[],
): FretGrid {
  const at = (fret: number): number => scaleLength * (1 - 2 ** (-fret / 12));
  const first = at(reliefFrets[0]);
  const last = at(reliefFrets[1]);
  const dipAt = (x: number): number =>
    x <= first || x >= last ? 0 : (4 * (x - first) * (last - x)) / (last - first) ** 2;
  return {
    distance: Float64Array.from(frets, at),
    gap: Float64Array.from(frets, (fret) => at(fret) - at(fret - 1)),
    dip: Float64Array.from(frets, (fret) => dipAt(at(fret))),
    dipBefore: Float64Array.from(frets, (fret) => dipAt(at(fret - 1))),
    twelfthDip: dipAt(at(12)),
    pitchRatio: Float64Array.from(frets, (fret) => 2 ** (fret / 12)),
  };
}
