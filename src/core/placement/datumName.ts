import type { NutDatum } from '../document/types';

interface DatumName {
  /** Beside a figure. */
  readonly short: string;
  /** In a title. */
  readonly full: string;
  /** Where the datum meets an edge of the board: a rule starts there. */
  readonly end: string;
}

/** How each datum is named. */
export const DATUM_NAME: Readonly<Record<NutDatum, DatumName>> = {
  front: { short: 'nut', full: 'front face of the nut', end: 'nut corner' },
  'zero-fret': { short: 'zero fret', full: 'crown of the zero fret', end: 'zero fret end' },
  'board-end': { short: 'board end', full: 'bare end of the board', end: 'board end corner' },
};
