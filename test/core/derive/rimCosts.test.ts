import { describe, expect, it } from 'vitest';
import { createDerive } from '../../../src/core/derive/createDerive';
import { rimCosts } from '../../../src/core/derive/rimCosts';
import { fail } from '../../../src/core/result';
import { steelWith } from '../document/steelProject';
import { valueOf as answerOf, codesOf } from '../document/valueOf';

const INCH = 25.4;

describe('rimCosts', () => {
  // Finish left all round, hand arithmetic from a repairer's 1/8 in (jakewildwood.blogspot.com): 6 × 1 in loses 28, 14 and
  // 7 % under 1/8, 1/16 and 1/32 in; 6 × 1 1/2 in loses 20, 10 and 5 %.
  it.each([
    [1, [28, 14, 7]],
    [1.5, [20, 10, 5]],
  ])('of 6 × %s in', async (width, percent) => {
    const project = steelWith({
      bridge: {
        outline: { shape: 'rectangular', parameters: { length: 6 * INCH, full: width * INCH, corner: 0 } },
        rim: 0,
        pins: null,
        locating: { site: 'slot-ends', drill: 0.5, points: null, clearance: 0.5 },
      },
    });
    const asked = [8, 16, 32].map((part) => ({ name: `1/${part}`, width: INCH / part }));
    const costs = answerOf(await rimCosts(project.bridge, createDerive()(project).bridge, asked));
    expect(costs.map(({ share }) => Math.round(share * 100))).toEqual(percent);
    expect(costs.map(({ name }) => name)).toEqual(['1/8', '1/16', '1/32']);
    // 6 × w less 5 3/4 × (w − 1/4), square inches.
    expect(costs[0]?.lost).toBeCloseTo((6 * width - 5.75 * (width - 0.25)) * INCH * INCH, 1);
  });

  it('say why there is no bridge', async () => {
    const costs = await rimCosts({ density: 800, thickness: 9 }, fail('bridge', 'bridge.none', 'None.'), [
      { width: 1 },
    ]);
    expect(codesOf(costs)).toEqual(['bridge.none']);
  });
});
