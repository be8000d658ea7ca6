import type { BridgePlace, SlotPlace } from '../../bridge/types';
import type { PinnedDimension } from '../../document/dimensionTypes';
import type { Hand } from '../../document/types';
import { pathBounds } from '../../geom/pathBounds';
import { distance } from '../../geom/points';
import { COINCIDENT_MM } from '../../geom/tolerances';
import type { Bounds, Point } from '../../geom/types';
import { angleDimension } from '../dimensions/angleDimension';
import { linearDimension } from '../dimensions/linearDimension';
import { handed } from '../handed';
import type { Item } from '../types';
import { type Measured, measuredOf } from './measuredOf';
import { measuredFigure } from './measuredWords';

/** From the bridge to the first dimension beside it, and from one to the next, mm. */
const FIRST = 9;
const NEXT = 7.5;
const ANGLE_RADIUS = 14;

interface Row {
  readonly measured: Measured;
  readonly way: 'straight' | 'across' | 'along';
  readonly text: string;
  readonly name: { readonly id: string; readonly part: string; readonly layer: 'dimensions' };
  /** How many of the same way were drawn before it. */
  readonly before: number;
}

/** How far beyond the farther of two points a dimension stands that is drawn outside of the bridge. */
const outside = (edge: number, one: number, other: number, before: number): number =>
  Math.max(edge, one, other) + FIRST + before * NEXT - Math.max(one, other);

const itemsOf = ({ measured, way, text, name, before }: Row, bounds: Bounds, hand: Hand): readonly Item[] => {
  const side = (point: Point): Point => handed(hand, point);
  const words = { ...name, text };
  const [from, to] = [side(measured.from), side(measured.to)];
  if (measured.kind === 'angle') {
    const corner = side(measured.corner);
    return angleDimension(corner, from, to, { ...words, radius: ANGLE_RADIUS + before * NEXT });
  }
  // Nothing lies between, so that there is no way to draw it along.
  if (distance(from, to) <= COINCIDENT_MM) return [];
  if (measured.kind === 'distance' && way === 'across')
    return linearDimension(from, to, {
      ...words,
      direction: 'across',
      offset: outside(bounds.maxY, from.y, to.y, before),
    });
  if (measured.kind === 'distance' && way === 'along')
    return linearDimension(from, to, {
      ...words,
      direction: 'along',
      offset: outside(Math.max(bounds.maxX, -bounds.minX), from.x, to.x, before),
    });
  return linearDimension(from, to, { ...words, direction: 'aligned', offset: 0 });
};

/** The pinned dimensions as they are now, on the hand's side, across ones behind the bridge, along ones beside it. */
export const drawPinned = (
  dimensions: readonly PinnedDimension[],
  bridge: BridgePlace,
  slot: SlotPlace,
  hand: Hand,
  show: (mm: number) => string,
): readonly Item[] => {
  const bounds = pathBounds(bridge.footprint.outline);
  const counts = { straight: 0, across: 0, along: 0, angle: 0 };
  return dimensions.flatMap((dimension, index) => {
    const measured = measuredOf(dimension, bridge, slot);
    if (measured === null) return [];
    const way = dimension.kind === 'distance' ? dimension.way : 'straight';
    const counted = dimension.kind === 'angle' ? 'angle' : way;
    const before = counts[counted];
    counts[counted] += 1;
    const name = { id: `dimension-${dimension.id}`, part: `dimension ${index + 1}`, layer: 'dimensions' } as const;
    return itemsOf({ measured, way, text: measuredFigure(measured, way, show), name, before }, bounds, hand);
  });
};
