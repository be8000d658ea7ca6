import { DEFAULT_DENSITY, DEFAULT_RIM, DEFAULT_TAPER, DEFAULT_UNDER_HEAD } from '../document/defaultGroups';
import { usualParameters } from '../document/shapeParameters';
import type { Bridge, ShapeName } from '../document/types';

const INCH = 25.4;

type UsualBridge = Omit<Bridge, 'outline' | 'rim' | 'density'>;

/** Pins to begin with when a bridge that had none is to have them. */
export const usualPins = (spread: number): NonNullable<Bridge['pins']> => ({
  from: (3 / 8) * INCH,
  spread,
  row: 'parallel',
  hole: (3 / 16) * INCH,
  stagger: 0,
  taper: DEFAULT_TAPER,
  underHead: DEFAULT_UNDER_HEAD,
});

/** What a bridge with pins is usually built with, its slot that far behind the front edge. */
const pinned = (fromFront: number): UsualBridge => ({
  slot: { fromFront, length: 3 * INCH, width: INCH / 8, ends: 'round', crown: 0.5, depth: 6.5, slant: null },
  pins: usualPins((2 + 3 / 16) * INCH),
  locating: { site: 'slot-ends', drill: INCH / 16 },
  thickness: (3 / 8) * INCH,
});

/**
 * What each shape is usually built with; sources stand beside the fields. Front edge to slot: common practice, no source,
 * so that both walls of a slanted slot and of its pins keep their wood.
 */
const USUAL: Readonly<Record<ShapeName, UsualBridge>> = {
  rectangular: pinned(5),
  belly: pinned(7.4),
  'belly-nut': pinned(13),
  'pyramid-tip': pinned(5),
  'double-sided': pinned(11),
  'tie-block': {
    slot: { fromFront: 6, length: 80, width: 2.5, ends: 'square', crown: 0.5, depth: 6, slant: null },
    pins: null,
    locating: { site: 'slot-ends', drill: INCH / 16 },
    thickness: 9,
  },
  'small-ukulele': {
    slot: {
      fromFront: INCH / 8,
      length: 56,
      width: (3 / 32) * INCH,
      ends: 'round',
      crown: 0.5,
      depth: 3.5,
      slant: null,
    },
    pins: null,
    locating: { site: 'slot-ends', drill: INCH / 16 },
    thickness: INCH / 4,
  },
};

/** A bridge of this shape with its usual dimensions; every one can be changed. */
export const usualBridge = (shape: ShapeName): Bridge => ({
  outline: { shape, parameters: usualParameters(shape) },
  ...USUAL[shape],
  rim: DEFAULT_RIM,
  density: DEFAULT_DENSITY,
});
