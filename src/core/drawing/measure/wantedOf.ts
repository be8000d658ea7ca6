import type { Anchor, MeasuredWay } from '../../document/dimensionTypes';
import type { Wanted } from './measuredOf';

/** What picked places ask to be measured; null while there are too few of them, or an edge was picked that is no part's. */
export const wantedOf = (
  kind: 'distance' | 'angle' | 'gap',
  picks: readonly Anchor[],
  way: MeasuredWay,
): Wanted | null => {
  const [first, second, third] = picks;
  if (first === undefined || second === undefined) return null;
  if (kind === 'distance') return { kind, way, from: first, to: second };
  if (kind === 'angle') return third === undefined ? null : { kind, from: first, corner: second, to: third };
  return first.kind === 'part' && second.kind === 'part' ? { kind, from: first.part, to: second.part } : null;
};
