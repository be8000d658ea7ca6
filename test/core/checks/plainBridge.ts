import type { Bridge, Pins, Project, Slot } from '../../../src/core/document/types';
import { plainStrings, steelWith } from '../document/steelProject';

/**
 * A square-ended tie-block 190 × 28 with a straight slot 2.5 × 80, 6 behind the front edge, and four pins square over 42,
 * drilled 5 and reamed no wider; scale 645, strings over 54, compensation 2.
 */
export const plainBridge = (
  slot: Partial<Slot> = {},
  pins: Partial<Pins> | null = {},
  more: Partial<Bridge> = {},
  count = 4,
): Project => ({
  ...steelWith({
    compensation: { rule: { treble: 2, bass: 2, reach: 'break-point', source: '' } },
    bridge: {
      outline: { shape: 'tie-block', parameters: { length: 190, full: 28, block: 80, corner: 0 } },
      slot: {
        fromFront: 6,
        length: 80,
        width: 2.5,
        ends: 'square',
        run: 'stopped',
        crown: 0.5,
        depth: 6,
        slant: null,
        ...slot,
      },
      pins: pins && {
        from: 8,
        spread: 42,
        row: 'square',
        hole: 5,
        stagger: 0,
        taper: 3,
        underHead: 5,
        rise: 0,
        ramp: null,
        ...pins,
      },
      ...more,
    },
  }),
  strings: plainStrings(Array.from({ length: count }, () => 0.6)),
});
