/**
 * The two places where published evaluations of the model differ from it; the app always uses `exactLaw`.
 */
export interface ModelLaw {
  /** Bending of the fretted string from the open string's: lengthRatio = L0/L_n, tensionRatio = T_n/T0, pitchRatio = 2^(n/12). */
  readonly bending: (b0: number, lengthRatio: number, tensionRatio: number, pitchRatio: number) => number;
  /** What stays put while the saddle moves: the clearance over fret 12, or the saddle's height. */
  readonly held: 'action' | 'height';
}

/** B_n = √(E·I/(T_n·L_n²)) = B0·(L0/L_n)/√(T_n/T0); action stays as wanted. */
export const exactLaw: ModelLaw = {
  bending: (b0, lengthRatio, tensionRatio) => (b0 * lengthRatio) / Math.sqrt(tensionRatio),
  held: 'action',
};
