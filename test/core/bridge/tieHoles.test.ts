import { describe, expect, it } from 'vitest';
import { bridgePlace } from '../../../src/core/bridge/bridgePlace';
import { slotPlace } from '../../../src/core/bridge/slotPlace';
import { tieHoles } from '../../../src/core/bridge/tieHoles';
import { steelProject } from '../document/steelProject';
import { valueOf as answerOf } from '../document/valueOf';

/** A tie-block 190 × 28 with a straight slot 2.5 wide, 6 behind the front edge at 625.75; so its back edge lies at 653.75. */
const bridge = {
  ...steelProject.bridge,
  outline: { shape: 'tie-block' as const, parameters: { length: 190, full: 28, block: 80, corner: 0 } },
  slot: { ...steelProject.bridge.slot, width: 2.5, fromFront: 6 },
  pins: null,
};
const saddle = { centre: 633, slope: 0, strings: [] };
const slot = answerOf(slotPlace(bridge.slot, saddle));
const place = answerOf(bridgePlace(bridge, 6, saddle, slot));
const ties = { kind: 'tie-block' as const, from: 8, spread: 58, hole: 1.8, rise: 4.5 };

describe('tieHoles', () => {
  // 58 / 5 = 11.6 apart; mouths 633 + 1.25 + 8; ends at the back edge.
  it('run from their mouths to the back edge, evenly spaced', () => {
    const holes = tieHoles(ties, 6, slot, place);
    expect(holes.map(({ label }) => label)).toEqual([1, 2, 3, 4, 5, 6].map((n) => `string hole ${n}`));
    for (const [index, x] of [29, 17.4, 5.8, -5.8, -17.4, -29].entries()) {
      expect(holes[index]?.mouth.x).toBeCloseTo(x, 9);
      expect(holes[index]?.mouth.y).toBeCloseTo(642.25, 9);
      expect(holes[index]?.back.y).toBeCloseTo(653.75, 9);
    }
  });

  it('have no length where they would begin behind the bridge', () => {
    const [hole] = tieHoles({ ...ties, from: 30 }, 6, slot, place);
    expect(hole?.back).toEqual(hole?.mouth);
  });

  it('put a lone string on the centreline', () => {
    expect(tieHoles(ties, 1, slot, place)[0]?.mouth.x).toBe(0);
  });
});
