import type { Point } from '../../geom/types';
import type { NamedPoint } from '../types';

/** A named point of the treble side, and its like on the bass side. */
export const bothSides = (id: string, label: string, at: Point): readonly NamedPoint[] => [
  { id: `${id}-treble`, label: `${label}, treble`, at },
  { id: `${id}-bass`, label: `${label}, bass`, at: { x: -at.x, y: at.y } },
];
