import type { Path, Point } from '../../geom/types';
import { fail, ok, type Result } from '../../result';
import type { Footprint } from '../types';
import { bothSides } from './bothSides';
import { roundedRectangle } from './roundedRectangle';

export interface PyramidTipParameters {
  readonly length: number;
  readonly full: number;
  readonly pyramid: number;
}

const line = (start: Point, to: Point): Path => ({ start, segments: [{ kind: 'line', to }], closed: false });

/**
 * Bridge with a pyramid on each wing tip, in the footprint frame: a rectangle from above, and on its face the foot of each
 * pyramid across the bridge and the two diagonals of its base, which cross under its point. Code: pyramid-tip.long.
 */
export const pyramidTip = ({ length, full, pyramid }: PyramidTipParameters): Result<Footprint> => {
  if (2 * pyramid >= length)
    return fail(
      'bridge.outline.parameters.pyramid',
      'pyramid-tip.long',
      'The two pyramids together are shorter than the bridge.',
    );
  const outer = length / 2;
  const inner = outer - pyramid;
  const rectangle = roundedRectangle(length, full, 0);
  return ok({
    ...rectangle,
    points: [
      ...rectangle.points,
      ...bothSides('pyramid-front', 'front of the pyramid', { x: inner, y: 0 }),
      ...bothSides('pyramid-back', 'back of the pyramid', { x: inner, y: full }),
      ...bothSides('pyramid-point', 'point of the pyramid', { x: outer - pyramid / 2, y: full / 2 }),
    ],
    faceLines: [1, -1].flatMap((side) => [
      line({ x: side * inner, y: 0 }, { x: side * inner, y: full }),
      line({ x: side * inner, y: 0 }, { x: side * outer, y: full }),
      line({ x: side * inner, y: full }, { x: side * outer, y: 0 }),
    ]),
  });
};
