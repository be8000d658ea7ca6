import type { Pins } from '../document/types';
import { add, distance, rotate, scale, subtract } from '../geom/points';
import type { Point } from '../geom/types';
import type { Hole, SaddlePlace } from './types';

/** The mark of one string ramp: two corners at the pin hole, and the tip toward the saddle. Instrument frame. */
export interface RampMark {
  /** The pin that it belongs to. */
  readonly pin: Hole;
  readonly corners: readonly [Point, Point];
  readonly tip: Point;
}

/**
 * A ramp from every pin hole toward where its string breaks over the saddle, as wide as asked for at the rim of the hole,
 * or as the hole where that is less, and tapering to the string. None while no ramps are wanted.
 */
export const rampMarks = (
  { ramp }: Pins,
  pins: readonly Hole[],
  { centre, slope, strings }: SaddlePlace,
): readonly RampMark[] => {
  if (ramp === null) return [];
  return pins.map((pin, index): RampMark => {
    const x = strings[index]?.x ?? pin.centre.x;
    const way = subtract({ x, y: centre + slope * x }, pin.centre);
    const ahead = scale(way, 1 / distance(way, { x: 0, y: 0 }));
    const radius = pin.diameter / 2;
    const half = Math.min(ramp.width / 2, radius);
    const rim = scale(ahead, Math.sqrt(radius ** 2 - half ** 2));
    const aside = scale(rotate(ahead, Math.PI / 2), half);
    const at = (way: Point): Point => add(pin.centre, way);
    return {
      pin,
      corners: [at(add(rim, aside)), at(subtract(rim, aside))],
      tip: at(scale(ahead, radius + ramp.length)),
    };
  });
};
