import { clampingCauls } from './parts/clampingCauls';
import { finishMask } from './parts/finishMask';
import { insideCaul } from './parts/insideCaul';
import type { SheetKind } from './parts/types';
import { windowSheet } from './parts/windowSheet';

/** The sheet that comes before all others and has pages of its own. */
export const TAPE_DOWN = {
  id: 'tape-down',
  name: 'Tape-down template',
  about: 'The bridge at true size, to set by rule and small square and to tape to the top.',
} as const;

/** Every other sheet, in the order of the work. */
export const SHEET_KINDS: readonly SheetKind[] = [windowSheet, finishMask, insideCaul, clampingCauls];
