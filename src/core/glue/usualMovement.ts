import type { Build, GrainMovement } from '../document/buildTypes';
import { GRAIN_COEFFICIENTS } from './grainCoefficients';

/** A top of the commonest spruce, and a bridge of a wood that the table does not have. */
export const USUAL_MOVEMENT: NonNullable<Build['movement']> = {
  top: { wood: 'sitka-spruce', radial: null, tangential: null },
  bridge: { wood: '', radial: null, tangential: null },
};

/** What counts: the maker's own, else the table's; null for a wood of which neither is known. */
export const coefficientOf = (piece: GrainMovement, cut: 'radial' | 'tangential'): number | null =>
  piece[cut] ?? GRAIN_COEFFICIENTS.find(({ id }) => id === piece.wood)?.[cut] ?? null;
