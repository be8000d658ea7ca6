import type { NamedPoint } from '../types';

/**
 * The places on the front and back edges that a rule can find: real corners when the corner radius is 0, else the points
 * where the straight of the edge ends. x and y are those on the treble side.
 */
export const edgePoints = (
  cornerRadius: number,
  front: { readonly x: number; readonly y: number },
  back: { readonly x: number; readonly y: number },
): readonly NamedPoint[] => {
  const name = cornerRadius === 0 ? 'corner' : 'edge end';
  const pair = (edge: 'front' | 'back', at: { readonly x: number; readonly y: number }): readonly NamedPoint[] => [
    { id: `${edge}-treble`, label: `${edge} ${name}, treble`, at },
    { id: `${edge}-bass`, label: `${edge} ${name}, bass`, at: { x: -at.x, y: at.y } },
  ];
  return [...pair('front', front), ...pair('back', back)];
};
