import type { Point } from '../../geom/types';

/** Where a place of the footprint lies, in words: "12.4 mm to the treble side, 3.0 mm behind the front edge". */
export const placeWords =
  (show: (mm: number) => string) =>
  ({ x, y }: Point): string => {
    const across = x === 0 ? 'on the centreline' : `${show(Math.abs(x))} to the ${x > 0 ? 'treble' : 'bass'} side`;
    const along =
      y === 0 ? 'level with the front edge' : `${show(Math.abs(y))} ${y > 0 ? 'behind' : 'ahead of'} the front edge`;
    return `${across}, ${along}`;
  };
