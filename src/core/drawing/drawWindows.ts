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
  const { maxX } = pathBounds(bridge.footprint.outline);
  const edge = (id: string): number => bridge.points.find((point) => point.id === id)?.at.y ?? bridge.front;
  const front = edge('front-treble');
  const back = edge('back-treble');
  const half = Math.min(HALF_HEIGHT, (back - front - BETWEEN) / 2);
  return (['treble', 'bass'] as const).flatMap((side) =>
    [
      { id: 'front', y: front },
      { id: 'back', y: back },
    ].map(
      ({ id, y }): Item => ({
        kind: 'path',
        id: `window-${id}-${side}`,
        part: 'corner windows',
        role: 'window',
        layer: 'windows',
        path: rectanglePath((side === 'treble' ? maxX : -maxX) - WIDTH / 2, y - half, WIDTH, 2 * half),
      }),
    ),
  );
};
