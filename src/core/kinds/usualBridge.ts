import {
  DEFAULT_CLEARANCE,
  DEFAULT_DENSITY,
  DEFAULT_RIM,
  DEFAULT_TAPER,
  DEFAULT_UNDER_HEAD,
} from '../document/defaultGroups';
import { usualParameters } from '../document/shapeParameters';
import type { Bridge, ShapeName, Ties } from '../document/types';

const INCH = 25.4;

type UsualBridge = Omit<Bridge, 'outline' | 'rim' | 'density' | 'cutting' | 'sole'>;

const IN_SLOT_ENDS: Bridge['locating'] = {
  site: 'slot-ends',
  drill: INCH / 16,
  points: null,
  clearance: DEFAULT_CLEARANCE,
};

/** Pins to begin with when a bridge that had none is to have them. */
export const usualPins = (spread: number): NonNullable<Bridge['pins']> => ({
  from: (3 / 8) * INCH,
  spread,
  row: 'parallel',
  hole: (3 / 16) * INCH,
  stagger: 0,
  rise: 0,
  ramp: null,
  taper: DEFAULT_TAPER,
  underHead: DEFAULT_UNDER_HEAD,
});

/** String holes to begin with; sources stand beside the fields. */
export const usualTies = (kind: Ties['kind'], spread: number): Ties =>
  kind === 'tie-block'
    ? { kind, from: 6, spread, hole: 1.8, rise: 4.5 }
    : { kind, from: 5, spread, hole: 1.6, rise: 3 };

/** What a bridge with pins is usually built with, its slot that far behind the front edge. */
const pinned = (fromFront: number): UsualBridge => ({
  slot: {
    fromFront,
    length: 3 * INCH,
    width: INCH / 8,
    ends: 'round',
    run: 'stopped',
    crown: 0.5,
    depth: 6.5,
    slant: null,
  },
  pins: usualPins((2 + 3 / 16) * INCH),
  ties: null,
  locating: IN_SLOT_ENDS,
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
    slot: { fromFront: 6, length: 80, width: 2.5, ends: 'square', run: 'stopped', crown: 0.5, depth: 6, slant: null },
    pins: null,
    ties: usualTies('tie-block', 58),
    locating: IN_SLOT_ENDS,
    thickness: 9,
  },
  'small-ukulele': {
    slot: {
      fromFront: INCH / 8,
      length: 56,
      width: (3 / 32) * INCH,
      ends: 'round',
      run: 'stopped',
      crown: 0.5,
      depth: 3.5,
      slant: null,
    },
    pins: null,
    ties: usualTies('back-edge', 42),
    locating: IN_SLOT_ENDS,
    thickness: INCH / 4,
  },
};

/** A bridge of this shape with its usual dimensions; every one can be changed. */
export const usualBridge = (shape: ShapeName): Bridge => ({
  outline: { shape, parameters: usualParameters(shape) },
  ...USUAL[shape],
  cutting: null,
  sole: null,
  rim: DEFAULT_RIM,
  density: DEFAULT_DENSITY,
});
