import type { TieHole } from '../../bridge/tieHoles';
import { circlePath } from '../../geom/circlePath';
import { polyline } from '../polyline';
import type { Item } from '../types';

/**
 * String holes that run along the instrument inside the bridge: their sides hidden, their middle as a centreline, and, where
 * they open in the upper face, their mouths. open: for strings that are held at the back edge.
 */
export const drawTies = (holes: readonly TieHole[], open: boolean): readonly Item[] =>
  holes.flatMap(({ id, label: part, mouth, back, diameter }): readonly Item[] => {
    const half = diameter / 2;
    const along = (x: number) => polyline({ x: mouth.x + x, y: mouth.y }, { x: mouth.x + x, y: back.y });
    const line = (end: string, role: 'beneath' | 'centreline', x: number): Item => ({
      kind: 'path',
      id: `${id}-${end}`,
      part,
      role,
      layer: 'pins',
      path: along(x),
    });
    if (back.y <= mouth.y) return [];
    return [
      line('bass', 'beneath', -half),
      line('treble', 'beneath', half),
      ...(open
        ? [{ kind: 'path', id, part, role: 'hole', layer: 'pins', path: circlePath(mouth, half) } satisfies Item]
        : [line('middle', 'centreline', 0)]),
    ];
  });
