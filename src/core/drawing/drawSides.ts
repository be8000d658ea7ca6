import type { BridgePlace } from '../bridge/types';
import { pathBounds } from '../geom/pathBounds';
import { polyline } from './polyline';
import { TEXT_HEIGHT } from './textHeights';
import type { Item } from './types';

/** BASS and TREBLE over the ends of the bridge. */
export const drawSides = (bridge: BridgePlace): readonly Item[] => {
  const { minX, maxX } = pathBounds(bridge.footprint.outline);
  return ([1, -1] as const).map(
    (side): Item => ({
      kind: 'text',
      id: side === 1 ? 'treble-label' : 'bass-label',
      part: 'footprint',
      role: 'heading',
      layer: 'text',
      at: { x: side === 1 ? maxX : minX, y: bridge.front - 8 },
      text: side === 1 ? 'TREBLE' : 'BASS',
      height: TEXT_HEIGHT.label,
      anchor: 'middle',
      angle: 0,
    }),
  );
};

/** An arrow toward the nut with its name below, at x, from y down; the same for either hand. */
export const drawNutArrow = (x: number, top: number): readonly Item[] => [
  {
    kind: 'path',
    id: 'nut-arrow',
    part: 'nut side',
    role: 'frame',
    layer: 'lines',
    path: polyline({ x, y: top + 9 }, { x, y: top }),
  },
  {
    kind: 'path',
    id: 'nut-arrow-head',
    part: 'nut side',
    role: 'frame',
    layer: 'lines',
    path: polyline({ x: x - 2.2, y: top + 3.2 }, { x, y: top }, { x: x + 2.2, y: top + 3.2 }),
  },
  {
    kind: 'text',
    id: 'nut-label',
    part: 'nut side',
    role: 'heading',
    layer: 'text',
    at: { x, y: top + 11.6 },
    text: 'NUT SIDE',
    height: TEXT_HEIGHT.label,
    anchor: 'middle',
    angle: 0,
  },
];
