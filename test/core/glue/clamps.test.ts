import { describe, expect, it } from 'vitest';
import type { BridgePlace } from '../../../src/core/bridge/types';
import { circlePath } from '../../../src/core/geom/circlePath';
import { rectanglePath } from '../../../src/core/geom/rectanglePath';
import { clampPlaces } from '../../../src/core/glue/clampPlaces';
import { proposedClamps } from '../../../src/core/glue/proposedClamps';

/** A rectangle of 150 × 30 whose front edge lies 600 from the nut, a locating pin at either end of its slot. */
const bridge: BridgePlace = {
  footprint: { outline: rectanglePath(-75, 600, 150, 30), points: [], faceLines: [] },
  front: 600,
  area: 4500,
  pins: [],
  pinRow: null,
  locating: [
    { id: 'treble', label: 'treble', centre: { x: 36, y: 608 }, diameter: 1.6 },
    { id: 'bass', label: 'bass', centre: { x: -36, y: 608 }, diameter: 1.6 },
  ],
  points: [],
};

describe('proposed clamps', () => {
  // Common practice: the centre first, then a wing and the other.
  it('are three, centre first, half way from front to back', () => {
    const [centre, ...wings] = proposedClamps(rectanglePath(-75, 0, 150, 30));
    expect(centre).toEqual({ x: 0, y: 15 });
    expect(wings.map(({ x }) => Math.sign(x))).toEqual([-1, 1]);
    for (const { x, y } of wings) {
      expect(Math.abs(x)).toBeGreaterThan(37.5);
      expect(Math.abs(x)).toBeLessThan(75);
      expect(y).toBe(15);
    }
  });

  it('are two on a bridge too short for three', () => {
    expect(proposedClamps(rectanglePath(-38, 0, 76, 20))).toEqual([
      { x: -19, y: 10 },
      { x: 19, y: 10 },
    ]);
  });
});

describe('clamps in their places', () => {
  // Soundhole of 100 around (0, 480): its edge is 50 from there. To (0, 615): 135 − 50 = 85. To (40, 615): √(40² + 135²) − 50 = 140.8013 − 50.
  const soundhole = circlePath({ x: 0, y: 480 }, 50);

  it('tell the reach from the edge of the soundhole', () => {
    const places = clampPlaces(
      [
        { x: 0, y: 15 },
        { x: 40, y: 15 },
      ],
      bridge,
      { soundhole, cutaway: null },
    );
    expect(places.map(({ reach }) => Number((reach ?? 0).toFixed(4)))).toEqual([85, 90.8013]);
    expect(places.map(({ at }) => at)).toEqual([
      { x: 0, y: 615 },
      { x: 40, y: 615 },
    ]);
  });

  it('do not guess a reach where no soundhole is entered', () => {
    expect(clampPlaces([{ x: 0, y: 15 }], bridge, null)).toMatchObject([{ reach: null, inCutaway: false }]);
  });

  it('tell what is off the bridge, over a cutaway, or in the way of a locating pin', () => {
    const cutaway = { side: 'treble', aside: 60, end: 620 } as const;
    const [free, off, over, near] = clampPlaces(
      [
        { x: 0, y: 15 },
        { x: 80, y: 25 },
        { x: 65, y: 15 },
        { x: -36, y: 15 },
      ],
      bridge,
      { soundhole: null, cutaway },
    );
    expect(free).toMatchObject({ onBridge: true, inCutaway: false, pin: null });
    expect(off).toMatchObject({ onBridge: false, inCutaway: false });
    expect(over).toMatchObject({ onBridge: true, inCutaway: true });
    expect(near).toMatchObject({ onBridge: true, inCutaway: false, pin: 7 });
  });
});
