import { describe, expect, it } from 'vitest';
import { bridgePlace } from '../../../src/core/bridge/bridgePlace';
import { fenceSettings } from '../../../src/core/bridge/fenceSettings';
import { slotCuts } from '../../../src/core/bridge/slotCuts';
import { slotPlace } from '../../../src/core/bridge/slotPlace';
import type { Outline } from '../../../src/core/document/outlineTypes';
import { steelProject } from '../document/steelProject';
import { valueOf as answerOf, codesOf } from '../document/valueOf';

/**
 * The bench's first case: scale 645, slant of 2.38125 over 54 (2.525°), slot 3.175 wide, its front wall 7.4 behind the front
 * edge of a plain rectangle 152.4 × 25.4. Per mm across the slot runs 2.38125 / 54 = 0.0440972; 1 / cos 2.525° = 1.0009718.
 */
const outline: Outline = { shape: 'rectangular', parameters: { length: 152.4, full: 25.4, corner: 0 } };
const bridge = { ...steelProject.bridge, outline };
const saddle = { centre: 647.778125, slope: -2.38125 / 54, strings: [] };
const placed = (change: Partial<typeof bridge.slot> = {}) => {
  const design = { ...bridge, slot: { ...bridge.slot, ...change } };
  const slot = answerOf(slotPlace(design.slot, saddle, outline));
  return { slot, bridge: answerOf(bridgePlace(design, 6, saddle, slot)) };
};

describe('slotCuts', () => {
  // Ends of the slot's middle 38.1 · cos 2.525° = 38.0630 across: 38.0630 · 0.0440972 = 1.67848 nearer or farther than the
  // 7.4 of the centreline; the back wall 3.175 · 1.0009718 = 3.17809 behind the front one.
  it('measures both walls from the front edge at both ends of the slot and on the centreline', () => {
    const { slot, bridge: place } = placed();
    const cuts = slotCuts(slot, place);
    expect(cuts.map(({ id }) => id)).toEqual(['treble', 'centre', 'bass']);
    for (const [index, [x, front, back]] of [
      [38.063, 5.72152, 8.89961],
      [0, 7.4, 10.57809],
      [-38.063, 9.07848, 12.25657],
    ].entries()) {
      expect(cuts[index]?.x).toBeCloseTo(x ?? 0, 3);
      expect(cuts[index]?.toFrontWall).toBeCloseTo(front ?? 0, 4);
      expect(cuts[index]?.toBackWall).toBeCloseTo(back ?? 0, 4);
      expect(cuts[index]?.edgeBehind).toBeCloseTo(0, 9);
    }
  });

  // At the bridge's own ends, 76.2 across (0.01 within them): 76.19 · 0.0440972 = 3.35977.
  it('measures an open slot at the ends of the bridge', () => {
    const { slot, bridge: place } = placed({ run: 'open' });
    const [treble, , bass] = slotCuts(slot, place);
    expect(treble?.toFrontWall).toBeCloseTo(7.4 - 3.35977, 4);
    expect(bass?.toFrontWall).toBeCloseTo(7.4 + 3.35977, 4);
  });
});

describe('fenceSettings', () => {
  // Cutter 1/8 in, as wide as the slot, its middle 76.2 from the edge of the base. On the centreline the fence lies
  // 76.2 · 1.0009718 = 76.27405 ahead of the slot's middle, which is 7.4 + 1.58904 behind the front edge: 67.28501 ahead of
  // it. At the ends 76.2 · 0.0440972 = 3.36021 more at the treble and less at the bass.
  it('is one pass with a cutter as wide as the slot', () => {
    const { slot, bridge: place } = placed();
    const settings = answerOf(fenceSettings({ cutter: 3.175, base: 76.2 }, 3.175, slot, place));
    expect(settings.half).toBeCloseTo(76.2, 9);
    expect(settings.passes).toHaveLength(1);
    expect(settings.passes[0]?.treble).toBeCloseTo(70.64522, 3);
    expect(settings.passes[0]?.bass).toBeCloseTo(63.9248, 3);
  });

  // Cutter 3/32 in, 2.38125: its middle half of it inside each wall, 1.19063 · 1.0009718 = 1.19178. Front pass: 76.27405 − 7.4
  // − 1.19178 = 67.68227 ahead on the centreline; back pass 0.79375 · 1.0009718 = 0.79452 less.
  it('is two passes with a narrower cutter, by the front wall and by the back wall', () => {
    const { slot, bridge: place } = placed();
    const { passes } = answerOf(fenceSettings({ cutter: 2.38125, base: 76.2 }, 3.175, slot, place));
    expect(passes.map(({ wall }) => wall)).toEqual(['front', 'back']);
    const [front, back] = passes;
    expect(((front?.treble ?? 0) + (front?.bass ?? 0)) / 2).toBeCloseTo(67.68227, 4);
    expect((front?.treble ?? 0) - (back?.treble ?? 0)).toBeCloseTo(0.79452, 4);
    expect((front?.bass ?? 0) - (back?.bass ?? 0)).toBeCloseTo(0.79452, 4);
  });

  it('refuses a cutter wider than the slot', () => {
    const { slot, bridge: place } = placed();
    expect(codesOf(fenceSettings({ cutter: 3.2, base: 76.2 }, 3.175, slot, place))).toEqual(['cutting.wide']);
  });
});
