import type { Point } from '../../geom/types';
import type { NamedPoint } from '../types';
import { bothSides } from './bothSides';

/** Where the edges of a bridge end, on its treble side. */
interface EdgeEnds {
  readonly front: Point;
  readonly back: Point;
  /** Ends of the tip's own straight; the same as front and back when the corners are sharp. */
  readonly tipFront: Point;
  readonly tipBack: Point;
}

/**
 * The places at the tips that a rule can find: real corners when the corner radius is 0, else the tangent points where the
 * straight of an edge ends, and where that of the tip does.
 */
export const edgePoints = (
  cornerRadius: number,
  { front, back, tipFront, tipBack }: EdgeEnds,
): readonly NamedPoint[] => {
  const name = cornerRadius === 0 ? 'corner' : 'edge end';
  return [
    ...bothSides('front', `front ${name}`, front),
    ...bothSides('back', `back ${name}`, back),
    ...(cornerRadius === 0
      ? []
      : [
          ...bothSides('front-tip', 'front end of the tip', tipFront),
          ...bothSides('back-tip', 'back end of the tip', tipBack),
        ]),
  ];
};
