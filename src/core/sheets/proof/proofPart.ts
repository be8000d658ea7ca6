import type { Derived } from '../../derive/types';
import { pathBounds } from '../../geom/pathBounds';

/** What of a print must be right for this bridge, mm. */
export interface ProofPart {
  /** Width of the bridge, across the strings. */
  readonly across: number;
  /** From the square line back to the rearmost point of the bridge. */
  readonly along: number;
  /** From the square line back to the break point at the centre. */
  readonly toBreak: number;
  /** At the 12th fret, for 1 mm along the strings. */
  readonly centsPerMm: number;
}

/**
 * The span that a maker takes from the paper: the bridge across the strings, and along them all that is set off from the
 * square line, which stands where a steel rule put it. Null where there is no bridge.
 */
export const proofPart = ({ bridge, placement, saddle }: Derived, unit: 'mm' | 'in'): ProofPart | null => {
  if (!bridge.ok || !placement.ok || !saddle.ok) return null;
  const { minX, maxX, maxY } = pathBounds(bridge.value.footprint.outline);
  const line = placement.value.squareLine[unit].fromNut;
  return {
    across: maxX - minX,
    along: maxY - line,
    toBreak: saddle.value.centre - line,
    centsPerMm: placement.value.centsPerMm,
  };
};
