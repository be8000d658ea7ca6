import type { Hole } from '../bridge/types';
import { circlePath } from '../geom/circlePath';
import { polyline } from './polyline';
import type { Item, Layer } from './types';

/** How far the cross of a hole's centre lines runs beyond its rim, mm. */
const BEYOND_RIM = 1.4;

/** Holes as true circles, each with the cross that a centre punch is set on. */
export const drawHoles = (holes: readonly Hole[], layer: Layer): readonly Item[] =>
  holes.flatMap(({ id, label, centre, diameter }): readonly Item[] => {
    const arm = diameter / 2 + BEYOND_RIM;
    const { x, y } = centre;
    const cross = [
      { end: 'across', path: polyline({ x: x - arm, y }, { x: x + arm, y }) },
      { end: 'along', path: polyline({ x, y: y - arm }, { x, y: y + arm }) },
    ];
    return [
      { kind: 'path', id, part: label, role: 'hole', layer, path: circlePath(centre, diameter / 2) },
      ...cross.map(
        ({ end, path }): Item => ({ kind: 'path', id: `${id}-${end}`, part: label, role: 'cross', layer, path }),
      ),
    ];
  });
