import type { Hand } from '../document/types';
import { mirrorPath } from '../geom/mirrorPath';
import type { Point } from '../geom/types';
import type { Item } from './types';

/**
 * A point or a movement as it lies on the other hand's instrument: x changes side for a left hand, nothing changes for a
 * right one. Its own inverse, so it also brings what the screen says back to the instrument frame.
 */
export const handed = (hand: Hand, point: Point): Point => (hand === 'right' ? point : { x: 0 - point.x, y: point.y });

const OTHER_END = { start: 'end', middle: 'middle', end: 'start' } as const;

/** An item on the hand's side: geometry mirrors; a text moves its place and grows the other way, its words stay upright. */
export const handedItem = (hand: Hand, item: Item): Item => {
  if (hand === 'right') return item;
  if (item.kind === 'path') return { ...item, path: mirrorPath(item.path) };
  // A text that runs along the neck keeps its ends; one that runs across swaps them.
  const across = Math.abs(Math.cos(item.angle)) > 0.5;
  return { ...item, at: handed(hand, item.at), anchor: across ? OTHER_END[item.anchor] : item.anchor };
};
