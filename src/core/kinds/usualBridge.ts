import { usualParameters } from '../document/shapeParameters';
import type { Bridge, ShapeName } from '../document/types';

const INCH = 25.4;

/** What each shape is usually built with; sources stand beside the fields. */
const USUAL: Readonly<Record<ShapeName, Omit<Bridge, 'outline'>>> = {
  belly: {
    slot: { fromFront: 7.4, length: 3 * INCH, width: INCH / 8, ends: 'round', crown: 0.5 },
    pins: { from: (3 / 8) * INCH, spread: (2 + 3 / 16) * INCH, row: 'parallel', hole: (3 / 16) * INCH },
    locating: { site: 'slot-ends', drill: INCH / 16 },
  },
  'tie-block': {
    slot: { fromFront: 6, length: 80, width: 2.5, ends: 'square', crown: 0.5 },
    pins: null,
    locating: { site: 'slot-ends', drill: INCH / 16 },
  },
  'small-ukulele': {
    slot: { fromFront: INCH / 8, length: 56, width: (3 / 32) * INCH, ends: 'round', crown: 0.5 },
    pins: null,
    locating: { site: 'slot-ends', drill: INCH / 16 },
  },
};

/** A bridge of this shape with its usual dimensions; every one can be changed. */
export const usualBridge = (shape: ShapeName): Bridge => ({
  outline: { shape, parameters: usualParameters(shape) },
  ...USUAL[shape],
});

/** Pins to begin with when a bridge that had none is to have them. */
export const usualPins = (stringSpread: number): NonNullable<Bridge['pins']> => ({
  from: (3 / 8) * INCH,
  spread: stringSpread,
  row: 'parallel',
  hole: (3 / 16) * INCH,
});
