import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { heightChain } from '../../../src/core/height/heightChain';
import { HEIGHT_LIMITS } from '../../../src/core/height/heightLimits';
import type { HeightChain, HeightChainArguments } from '../../../src/core/height/types';
import { BREAK_ANGLES, STEEL_645 } from '../../reference/height';
import { valueOf as answerOf, codesOf } from '../document/valueOf';
import { STEEL_CASE } from './heightCase';

const chain = (change: Partial<HeightChainArguments>): HeightChain =>
  answerOf(heightChain({ ...STEEL_CASE, ...change }));
const reasons = (found: HeightChain): readonly string[] => found.reasons.map(({ code, weight }) => `${code} ${weight}`);
/** Relief off and action 2: 0.5 + 2 · 1.5 = 3.5 above the frets, so that the sums below stay round. */
const ROUND = { relief: 0, action: { treble: 2, bass: 2 } };

describe('heightChain: figures', () => {
  it('stands 4.2 and 5.4 proud under airspaces of 0.4 and 1.6, both a go (by hand)', () => {
    const low = chain({ airspace: 0.4 });
    expect(low.proud.most).toBeCloseTo(STEEL_645.proudAt04, 3);
    expect(low.verdict).toBe('go');
    const high = chain({ airspace: 1.6 });
    expect(high.proud.least).toBeCloseTo(STEEL_645.proudAt16, 3);
    expect(high.verdict).toBe('go');
  });

  it('gives share, wood, blank and what a pickup takes (by hand)', () => {
    // 3.5 + 0.5 = 4 proud; 6 in the slot of 10; 3.5 of wood under it.
    const found = chain({ ...ROUND, airspace: 0.5, slotDepth: 6 });
    expect(found.strings[1]?.share).toBeCloseTo(0.6, 9);
    expect(found.woodUnder).toBeCloseTo(3.5, 9);
    expect(found.blankNeeded).toBeCloseTo(10, 9);
    expect(found.pickup).toEqual({ lift: 0, actionRise: 0 });
    // A pickup of 1: 5 of 9 in the slot; left uncut it lifts by 1, and by 0.5 over the 12th.
    const lifted = chain({ ...ROUND, airspace: 0.5, slotDepth: 6, pickupThickness: 1 });
    expect(lifted.strings[1]?.share).toBeCloseTo(5 / 9, 9);
    expect(lifted.strings[1]?.proud).toBeCloseTo(4, 9);
    expect(lifted.blankNeeded).toBeCloseTo(9, 9);
    expect(lifted.pickup).toEqual({ lift: 1, actionRise: 0.5 });
  });

  it('gives the break angle of the trade’s two examples', () => {
    for (const { proud, run, degrees } of BREAK_ANGLES) {
      const [first] = chain({ ...ROUND, airspace: proud - 3.5, run }).strings;
      expect(first?.breakDeg).toBeCloseTo(degrees, 3);
    }
    expect(chain({ run: null }).strings[0]?.breakDeg).toBeNull();
  });
});

describe('heightChain: verdict', () => {
  it('asks for a thicker bridge when the straightedge stands high', () => {
    // Airspace 2.5, 6 proud. Thickness at least 9.5 + 0.9 = 10.4 (airspace 1.6); at most 11 (its own limit).
    const found = chain({ ...ROUND, airspace: 2.5 });
    expect(found.verdict).toBe('change-bridge');
    expect(found.thickness?.least).toBeCloseTo(10.4, 9);
    expect(found.thickness?.most).toBeCloseTo(11, 9);
    expect(reasons(found)).toContain('airspace-high wrong');
    expect(reasons(found)).toContain('proud-high wrong');
    const [high] = found.reasons;
    expect(high).toMatchObject({ code: 'airspace-high', value: 2.5, limit: 1.6 });
    expect(high?.source).toContain('buildyourguitar.com');
  });

  it('asks for a thinner one when it touches', () => {
    // Airspace −0.5, 3 proud. At most 9.5 − 0.5 − 0.396875 = 8.603125. At least 8: the share gives (2.4 + 12.5)/2 = 7.45.
    const found = chain({ ...ROUND, airspace: -0.5 });
    expect(found.verdict).toBe('change-bridge');
    expect(found.thickness?.least).toBeCloseTo(8, 9);
    expect(found.thickness?.most).toBeCloseTo(8.603125, 9);
    expect(reasons(found)).toEqual(['airspace-low wrong']);
  });

  it('asks for the neck first when no bridge within the limits would do', () => {
    const under = chain({ ...ROUND, airspace: -3 });
    expect(under).toMatchObject({ verdict: 'set-neck-first', thickness: null });
    expect(reasons(under)).toEqual(expect.arrayContaining(['airspace-low wrong', 'proud-low wrong']));
    // Thickness 9.5 + 5 − 1.6 = 12.9 would be needed.
    expect(chain({ ...ROUND, airspace: 5 })).toMatchObject({ verdict: 'set-neck-first', thickness: null });
  });

  it('holds a classical’s straightedge below the bridge top for sound, and a steel-string’s for wrong', () => {
    // 0.8 + 2 · 2.2 = 5.2 to 0.8 + 2 · 3.2 = 7.2; 2 below: 3.2 to 5.2 proud; 6 of 11.2 in the slot.
    const classical = {
      scaleLength: 650,
      relief: 0,
      nutHeight: { treble: 0.8, bass: 0.8 },
      action: { treble: 3, bass: 4 },
      airspace: -2,
      bridgeThickness: 9,
      slotDepth: 6,
      run: null,
    };
    const found = chain({ ...classical, limits: HEIGHT_LIMITS.classical });
    expect(found.proud.least).toBeCloseTo(3.2, 9);
    expect(found.proud.most).toBeCloseTo(5.2, 9);
    expect(found).toMatchObject({ verdict: 'go', reasons: [] });
    expect(reasons(chain(classical))).toContain('airspace-low wrong');
  });

  it('holds a ukulele of usual figures for sound', () => {
    // 0.5 + 2 · 1.9 = 4.3 less 1: 3.3 proud, 4 of 7.3 in the slot, 2.35 of wood.
    const found = chain({
      scaleLength: 432,
      relief: 0,
      action: { treble: 2.4, bass: 2.4 },
      strings: [21, -21].map((x) => ({ nutX: x, saddleX: x, setback: 0 })),
      airspace: -1,
      bridgeThickness: 6.35,
      slotDepth: 4,
      limits: HEIGHT_LIMITS.ukulele,
    });
    expect(found).toMatchObject({ verdict: 'go', reasons: [] });
  });

  it('says how deep to cut the slot, and stays a go', () => {
    // 4 proud with 5 in the slot, 5/9; half is enough, two thirds (8) would leave 1.5 of wood: not possible.
    const aim = chain({ ...ROUND, airspace: 0.5, slotDepth: 5 });
    expect(aim.verdict).toBe('go');
    expect(reasons(aim)).toEqual(['share-low look']);
    // 3 of 7: less than half, and 4 leaves 5.5 of wood.
    const shallow = chain({ ...ROUND, airspace: 0.5, slotDepth: 3 });
    expect(shallow.verdict).toBe('go');
    expect(shallow.reasons).toMatchObject([
      { code: 'slot-deeper', weight: 'look', value: 3, limit: expect.closeTo(4, 9) },
    ]);
  });

  it('refuses a slot with too little wood beneath', () => {
    const found = chain({ ...ROUND, airspace: 0.5, slotDepth: 8 });
    expect(reasons(found)).toEqual(['wood-thin wrong']);
    expect(found.verdict).toBe('change-bridge');
    expect(found.reasons[0]).toMatchObject({ value: 1.5, limit: 2.4 });
  });

  it('notes a flat break and a short blank without changing the verdict', () => {
    // 4 over 40: 5.7 degrees. 6.5 in the slot and 4 above it: 10.5.
    const found = chain({ ...ROUND, airspace: 0.5, slotDepth: 6.5, run: 40, saddleBlank: 10 });
    expect(found.verdict).toBe('go');
    expect(reasons(found)).toEqual(['share-low look', 'break-low look', 'blank-short look']);
    expect(found.reasons[2]).toMatchObject({ value: 10, limit: expect.closeTo(10.5, 9), source: null });
  });

  it('is a go exactly where the bridge lies in the range that would do (seeded)', () => {
    const figures = fc.record({
      airspace: fc.double({ min: -4, max: 5, noNaN: true }),
      bridgeThickness: fc.double({ min: 6, max: 13, noNaN: true }),
      treble: fc.double({ min: 1, max: 4, noNaN: true }),
      bass: fc.double({ min: 1, max: 4, noNaN: true }),
      kind: fc.constantFrom('steel' as const, 'classical' as const, 'ukulele' as const),
    });
    const seen = new Set<string>();
    fc.assert(
      fc.property(figures, ({ airspace, bridgeThickness, treble, bass, kind }) => {
        const limits = HEIGHT_LIMITS[kind];
        const found = chain({
          airspace,
          bridgeThickness,
          action: { treble, bass },
          slotDepth: bridgeThickness - limits.woodUnder.least,
          limits,
        });
        seen.add(found.verdict);
        const within =
          found.thickness !== null &&
          bridgeThickness >= found.thickness.least - 1e-6 &&
          bridgeThickness <= found.thickness.most + 1e-6;
        expect(found.verdict === 'go').toBe(within);
        if (found.verdict !== 'change-bridge' || !found.thickness) return;
        // The middle of the range, tried as a bridge, is a go: the strings' height over the top stays.
        const middle = (found.thickness.least + found.thickness.most) / 2;
        const tried = chain({
          airspace: airspace - (middle - bridgeThickness),
          bridgeThickness: middle,
          action: { treble, bass },
          slotDepth: middle - limits.woodUnder.least,
          limits,
        });
        expect(tried.verdict).toBe('go');
      }),
      { seed: 8, numRuns: 500 },
    );
    expect([...seen].sort()).toEqual(['change-bridge', 'go', 'set-neck-first']);
  });
});

describe('heightChain: wrong input', () => {
  it('says what was expected', () => {
    const codes = (change: Partial<HeightChainArguments>) => codesOf(heightChain({ ...STEEL_CASE, ...change }));
    expect(codes({ airspace: Number.NaN })).toEqual(['height.airspace']);
    expect(codes({ bridgeThickness: 0 })).toEqual(['height.thickness', 'height.slotDepth']);
    expect(codes({ slotDepth: 9.5 })).toEqual(['height.slotDepth']);
    expect(codes({ pickupThickness: 6.5 })).toEqual(['height.pickup']);
    expect(codes({ saddleBlank: 0 })).toEqual(['height.blank']);
    expect(codes({ run: -1 })).toEqual(['height.run']);
    expect(codes({ scaleLength: Number.NaN, run: 0 })).toEqual(expect.arrayContaining(['height.scale', 'height.run']));
    const { steel } = HEIGHT_LIMITS;
    expect(codes({ limits: { ...steel, share: { least: 1, source: '' } } })).toEqual(['height.limits']);
    expect(codes({ limits: { ...steel, proud: { least: 3, most: 2, source: '' } } })).toEqual(['height.limits']);
    expect(codes({ limits: { ...steel, woodUnder: { least: -1, source: '' } } })).toEqual(['height.limits']);
  });
});
