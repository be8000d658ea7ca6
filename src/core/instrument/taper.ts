import { fail, ok, type Result } from '../result';
import { fretDistance } from './fretDistance';

export interface TaperArguments {
  /** mm, above 0. */
  readonly scaleLength: number;
  /** mm, as in Scale. */
  readonly nutOffset: number;
  /** Board widths at the nut datum, the 12th fret and the last fret, mm. */
  readonly widths: { readonly nut: number; readonly twelfth: number; readonly last: number };
  /** Whole, above 12. */
  readonly lastFret: number;
  /** How far the width at the 12th fret may stand off a straight taper, mm. */
  readonly limit: number;
}

/** How straight the board's edges are, mm. */
export interface Taper {
  /** Growth of the width per mm toward the tail, nut to last fret. */
  readonly growth: number;
  /** The width that a straight taper has at the 12th fret. */
  readonly straightAtTwelfth: number;
  /** Width read at the 12th fret less that: + when the board bulges there, − when it is waisted. Both edges together. */
  readonly deviation: number;
  readonly straight: boolean;
}

/** How far off straight counts, mm, with where the figure comes from. */
export const TAPER_LIMIT: { readonly value: number; readonly source: string } = {
  value: 0.3,
  source: 'common practice, no source',
};

/**
 * Whether the board narrows in a straight line from its last fret to the nut.
 * Codes: taper.scale, taper.lastFret, taper.width, taper.limit.
 */
export const taper = (args: TaperArguments): Result<Taper> => {
  const { scaleLength, nutOffset, widths, lastFret, limit } = args;
  if (!(scaleLength > 0) || !Number.isFinite(scaleLength) || !(Math.abs(nutOffset) < scaleLength / 20))
    return fail('scaleLength', 'taper.scale', 'Expected a scale length above 0, and a nut offset far below it.');
  if (!Number.isInteger(lastFret) || lastFret <= 12)
    return fail('lastFret', 'taper.lastFret', `Expected a last fret above the 12th, got ${lastFret}.`);
  if (!Object.values(widths).every((width) => width > 0 && Number.isFinite(width)))
    return fail('widths', 'taper.width', 'Expected three widths above 0.');
  if (!(limit >= 0)) return fail('limit', 'taper.limit', `Expected a limit of 0 or more, got ${limit}.`);
  const growth = (widths.last - widths.nut) / (fretDistance(scaleLength, lastFret) + nutOffset);
  const straightAtTwelfth = widths.nut + growth * (fretDistance(scaleLength, 12) + nutOffset);
  const deviation = widths.twelfth - straightAtTwelfth;
  return ok({ growth, straightAtTwelfth, deviation, straight: Math.abs(deviation) <= limit + 1e-9 });
};
