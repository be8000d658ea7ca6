import { describe, expect, it } from 'vitest';
import { type RebateCase, rebateAdvice, rebateDepth } from '../../../src/core/budget/rebateAdvice';
import { createDerive } from '../../../src/core/derive/createDerive';
import { deriveAreas } from '../../../src/core/derive/deriveAreas';
import { steelWith } from '../document/steelProject';
import { valueOf as answerOf } from '../document/valueOf';

const INCH = 25.4;
const codes = (of: Partial<RebateCase>, own = {}) =>
  rebateAdvice({ film: null, rim: 0, rebate: null, repair: false, ...of }, own).map(({ code }) => code);

describe('rebateAdvice', () => {
  it('has nothing against glue to the very edge', () => {
    expect(codes({})).toEqual(['none']);
    expect(codes({ repair: true })).toEqual(['none']);
  });

  it('wants none of it in a repair, up to 1/32 in for new work, and looks from 1/16 in on', () => {
    expect(codes({ rim: 0.4, repair: true })).toEqual(['repair-edge']);
    expect(codes({ rim: INCH / 32 })).toEqual(['fits']);
    expect(codes({ rim: INCH / 32 + 0.01 })).toEqual(['rim-over-new']);
    expect(codes({ rim: INCH / 16 })).toEqual(['rim-wide']);
    expect(codes({ rim: 1 }, { rimNew: 1.2 })).toEqual(['fits']);
  });

  it('wants the rebate as deep as the film and a little, no deeper than 1/64 in, as wide as the rim', () => {
    // Lacquer is often about 0.006 in, 0.152 mm.
    const film = 0.006 * INCH;
    const rim = INCH / 32;
    expect(codes({ rim, rebate: { width: rim, depth: 0.25 } })).toEqual(['read-film']);
    expect(codes({ rim, film, rebate: { width: rim, depth: 0.25 } })).toEqual(['fits']);
    expect(codes({ rim, film, rebate: { width: rim, depth: 0.1 } })).toEqual(['too-shallow']);
    expect(codes({ rim, film, rebate: { width: rim, depth: 0.5 } })).toEqual(['too-deep']);
    expect(codes({ rim, film, rebate: { width: rim - 0.1, depth: 0.25 } })).toEqual(['too-narrow']);
    // Rebated, a wide rim is only wider than is usual for new work.
    expect(codes({ rim: INCH / 16, film, rebate: { width: 2, depth: 0.25 } })).toEqual(['rim-over-new', 'fits']);
  });
});

describe('rebateDepth', () => {
  it('is the film and a little', () => {
    // 0.15 + 0.05; the maker’s own little 0.1.
    expect(rebateDepth(0.15, {})).toBeCloseTo(0.2, 12);
    expect(rebateDepth(0.15, { rebateOver: 0.1 })).toBeCloseTo(0.25, 12);
  });

  it('is out of place where the glue goes to the edge', () => {
    expect(codes({ rebate: { width: 1.6, depth: 0.2 } })).toEqual(['rebate-bare']);
  });
});

describe('what the rim takes of the glue area', () => {
  // trade arithmetic: 6 × 1 in less 1/8 in all round is 5 3/4 × 3/4: 28 %; of 6 × 1 1/2 in 20 %; and so on.
  it.each([
    [1, 1 / 8, 0.281],
    [1.5, 1 / 8, 0.201],
    [1, 1 / 16, 0.143],
    [1.5, 1 / 16, 0.102],
    [1, 1 / 32, 0.072],
    [1.5, 1 / 32, 0.052],
  ])('of 6 × %f in with %f in left', async (full, rim, share) => {
    const project = steelWith({
      bridge: {
        outline: { shape: 'rectangular', parameters: { length: 6 * INCH, full: full * INCH, corner: 0 } },
        rim: rim * INCH,
        pins: null,
        // A hole that takes next to nothing, so that the whole sole counts.
        locating: { site: 'slot-ends', drill: 0.5, points: null, clearance: 0.5 },
      },
    });
    const areas = answerOf(await deriveAreas(project.bridge, {}, createDerive()(project).bridge));
    expect(areas.shareLost).toBeCloseTo(share, 2);
  });
});
