import type { BridgePlace } from '../bridge/types';
import { pathBounds } from '../geom/pathBounds';
import { rectanglePath } from '../geom/rectanglePath';
import type { Item } from './types';

const WIDTH = 12;
const HALF_HEIGHT = 5;
/** Paper left between the windows of one end of a narrow bridge, mm. */
const BETWEEN = 3;

/** How far the windows stand out beyond the ends of the bridge, mm. */
export const WINDOW_OVERHANG = WIDTH / 2;

/** Four windows over the corners, cut on the bench, through which the bridge's corners are carried to tape beneath. */
export const drawWindows = (bridge: BridgePlace): readonly Item[] => {
  const { minX, maxX, minY, maxY } = pathBounds(bridge.footprint.outline);
  // An outline drawn freely may have no corners of these names: there the windows stand over its foremost and hindmost.
  const edge = (id: string, other: number): number => bridge.points.find((point) => point.id === id)?.at.y ?? other;
  return (['treble', 'bass'] as const).flatMap((side) => {
    const [front, back] = [edge(`front-${side}`, minY), edge(`back-${side}`, maxY)];
    const half = Math.min(HALF_HEIGHT, (back - front - BETWEEN) / 2);
    if (half <= 0) return [];
    return [
      { id: 'front', y: front },
      { id: 'back', y: back },
    ].map(
      ({ id, y }): Item => ({
        kind: 'path',
        id: `window-${id}-${side}`,
        part: 'corner windows',
        role: 'window',
        layer: 'windows',
        path: rectanglePath((side === 'treble' ? maxX : minX) - WIDTH / 2, y - half, WIDTH, 2 * half),
      }),
    );
  });
};
