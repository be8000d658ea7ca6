import type { BridgePlace, SlotPlace } from '../../bridge/types';
import type { PinnedDimension } from '../../document/dimensionTypes';
import type { Point } from '../../geom/types';
import type { PartName } from '../types';
import { anchorPlace, anchorWords } from './anchorPlace';
import { leastGap } from './leastGap';
import { angleBetween, type Between, measureBetween } from './measureBetween';
import { partEdge } from './partEdge';

/** A dimension without the name under which it is kept. */
export type Wanted = PinnedDimension extends infer Each ? (Each extends unknown ? Omit<Each, 'id'> : never) : never;

/** What was measured, and where, instrument frame. */
export type Measured =
  | { readonly kind: 'distance'; readonly from: Point; readonly to: Point; readonly between: Between }
  | { readonly kind: 'angle'; readonly from: Point; readonly corner: Point; readonly to: Point; readonly angle: number }
  | { readonly kind: 'gap'; readonly from: Point; readonly to: Point; readonly gap: number };

/** What a dimension measures now; null when a part of it is gone, or nothing lies between. */
export const measuredOf = (wanted: Wanted, bridge: BridgePlace, slot: SlotPlace): Measured | null => {
  if (wanted.kind === 'gap') {
    const [one, other] = [partEdge(wanted.from, bridge, slot), partEdge(wanted.to, bridge, slot)];
    return one === null || other === null || wanted.from === wanted.to
      ? null
      : { kind: 'gap', ...leastGap(one, other) };
  }
  const from = anchorPlace(wanted.from, bridge, slot);
  const to = anchorPlace(wanted.to, bridge, slot);
  if (from === null || to === null) return null;
  if (wanted.kind === 'distance') return { kind: 'distance', from, to, between: measureBetween(from, to) };
  const corner = anchorPlace(wanted.corner, bridge, slot);
  const angle = corner && angleBetween(from, corner, to);
  return corner === null || angle === null ? null : { kind: 'angle', from, corner, to, angle };
};

/** What a dimension goes between: "centre of pin 1 to centre of pin 6". */
export const wantedWords = (wanted: Wanted): string => {
  if (wanted.kind === 'gap') return `edge of ${partWords(wanted.from)} to edge of ${partWords(wanted.to)}`;
  const [from, to] = [anchorWords(wanted.from), anchorWords(wanted.to)];
  return wanted.kind === 'distance' ? `${from} to ${to}` : `at ${anchorWords(wanted.corner)}, from ${from} to ${to}`;
};

const partWords = (part: PartName): string => (part === 'slot' || part === 'footprint' ? `the ${part}` : part);
