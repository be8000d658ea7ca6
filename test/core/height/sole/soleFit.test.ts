import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Sole, SoleGaps } from '../../../../src/core/document/soleTypes';
import { sagitta } from '../../../../src/core/height/sagitta';
import { type SoledBridge, soleFit } from '../../../../src/core/height/sole/soleFit';
import type { SoleFit } from '../../../../src/core/height/sole/soleTypes';
import { soleWords } from '../../../../src/core/height/sole/soleWords';
import { DOME_FALLS, DOME_TABLE } from '../../../reference/sole';
import { valueOf as answerOf, codesOf } from '../../document/valueOf';
import { FOOT, SIX_INCH, soleWith } from './soleCase';

const lay = (sole: Sole, bridge: Partial<SoledBridge> = {}): SoleFit =>
  answerOf(soleFit(sole, { ...SIX_INCH, ...bridge }));
const gaps = (found: SoleFit): readonly number[] => found.points.map(({ gap }) => gap);
const near = (found: readonly number[], expected: readonly number[], within = 1e-9): void => {
  expect(found).toHaveLength(expected.length);
  for (const [index, value] of expected.entries()) expect(Math.abs((found[index] ?? 0) - value)).toBeLessThan(within);
};
const read = (values: readonly [number, number, number, number, number]): SoleGaps => {
  const [bassTip, bassWing, centre, trebleWing, trebleTip] = values;
  return { bassTip, bassWing, centre, trebleWing, trebleTip };
};
const gauged = (values: readonly [number, number, number, number, number], under: number | null = null): Sole =>
  soleWith({ top: { from: 'gaps', gaps: read(values), under } });

describe('soleFit: a flat sole on a dome', () => {
  it.each(
    DOME_TABLE.flatMap(({ feet, over }) =>
      Object.entries(over).map(([chord, fall]) => [feet, Number(chord), fall] as const),
    ),
  )('%s ft under %s mm', (feet, chord, fall) => {
    const sole = soleWith({
      wing: { tip: 4, inner: 9, begin: chord / 4 },
      top: { across: feet === null ? null : feet * FOOT },
    });
    const found = lay(sole, { bassTip: -chord / 2, trebleTip: chord / 2 });
    const [bass, , centre, , treble] = gaps(found);
    // The table is rounded to a micron.
    expect(Math.abs((bass ?? 0) - fall)).toBeLessThan(0.00051);
    expect(treble).toBeCloseTo(bass ?? 0, 12);
    expect(centre).toBeCloseTo(0, 9);
    expect(found.rests).toBe(feet === null ? 'all-over' : 'rocks');
  });

  it.each(DOME_FALLS)('falls $fall at $x on $radius', ({ radius, x, fall }) => {
    const found = lay(soleWith({ top: { across: radius } }), { bassTip: -x, trebleTip: x });
    expect(found.worst.gap).toBeCloseTo(fall, 6);
    expect(Math.abs(found.worst.x)).toBe(x);
    // The drop of a dome that touches at one point is its sagitta; both stand in tables from outside.
    expect(sagitta(radius, x)).toBeCloseTo(fall, 6);
  });

  // Between a tangent and its arc: 2·a·s less the segment R²(θ − sin θ)/2 with sin(θ/2) = a/R, elementary geometry.
  it('leaves the area that the circle does, by the trapezium rule', () => {
    const radius = 25 * FOOT;
    const { curve } = lay(soleWith({ top: { across: radius } }));
    const area = curve.slice(1).reduce((sum, { x, y }, index) => {
      const before = curve[index] ?? { x, y };
      return sum + ((x - before.x) * (y + before.y)) / 2;
    }, 0);
    const turn = 2 * Math.asin(76.2 / radius);
    const fall = radius - Math.sqrt(radius * radius - 76.2 * 76.2);
    const expected = 2 * 76.2 * fall - (radius * radius * (turn - Math.sin(turn))) / 2;
    expect(Math.abs(area / expected - 1)).toBeLessThan(1e-3);
  });
});

describe('soleFit: how it rests', () => {
  it('lies all over a top of its own radius', () => {
    const found = lay(soleWith({ across: 28 * FOOT, top: { across: 28 * FOOT } }));
    near(gaps(found), [0, 0, 0, 0, 0]);
    expect(found.rests).toBe('all-over');
    expect(soleWords(found)).toEqual(['The sole lies on the top all over.']);
  });

  // Hollow of 25 ft on a flat top: 0.381 at the centre, 0.381 − 0.095 at 38.1 from it, nothing at the tips.
  it('stands on its tips when the sole is rounder than the top', () => {
    const found = lay(soleWith({ across: 25 * FOOT }));
    near(gaps(found), [0, 0.286, 0.381, 0.286, 0], 0.001);
    expect(found).toMatchObject({ rests: 'two-places', from: -76.2, to: 76.2 });
    expect(found.worst).toMatchObject({ x: 0 });
    near(
      found.points.map((point) => point.fit),
      [0.381, 0.095, 0, 0.095, 0.381],
      0.001,
    );
    expect(soleWords(found).join(' ')).toContain('stands on its wings');
    expect(soleWords(found).join(' ')).toContain('sand 0.38 mm (0.015 in) at the tips');
  });

  it('rocks on its centre when the top is rounder: 0.381 − 0.340 at the tips', () => {
    const found = lay(soleWith({ across: 28 * FOOT, top: { across: 25 * FOOT } }));
    expect(Math.abs((gaps(found)[0] ?? 0) - 0.041)).toBeLessThan(0.001);
    expect(found).toMatchObject({ rests: 'rocks', from: 0, to: 0 });
    expect(soleWords(found).join(' ')).toContain('rests on its centre and rocks');
  });

  // 17.5²/(2·8534.4) = 0.017942; the hollow the other way lifts the middle by as much.
  it('adds what dome and hollow do along the strings', () => {
    const domed = lay(soleWith({ top: { along: 28 * FOOT } }));
    near(gaps(domed), [0, 0, 0, 0, 0]);
    expect(domed.edges).toBeCloseTo(0.017942, 6);
    expect(domed.centreGap).toBeCloseTo(0.017942, 6);
    const hollow = lay(soleWith({ along: 28 * FOOT, top: { across: 25 * FOOT } }));
    near(gaps(hollow), [0.399, 0.113, 0.018, 0.113, 0.399], 0.001);
    expect(hollow.edges).toBeCloseTo(0, 9);
  });
});

describe('soleFit: a top that was gauged', () => {
  it('gives the gaps back under a sole like the one that was gauged', () => {
    near(gaps(lay(gauged([0.34, 0.1, 0, 0.1, 0.34]))), [0.34, 0.1, 0, 0.1, 0.34]);
    near(gaps(lay(gauged([0, 0.2, 0.4, 0.2, 0]))), [0, 0.2, 0.4, 0.2, 0]);
  });

  // A hollow of 25 ft that lay on it all over: the top is that dome, and a flat sole gaps by 0.381.
  it('counts from the sole that was gauged', () => {
    near(gaps(lay(gauged([0, 0, 0, 0, 0], 25 * FOOT))), [0.381, 0.095, 0, 0.095, 0.381], 0.001);
    near(gaps(lay({ ...gauged([0, 0, 0, 0, 0], 25 * FOOT), across: 25 * FOOT })), [0, 0, 0, 0, 0]);
  });

  // Falls away by 0.5 under the bass tip alone: held level between the tips it rocks, 0.25 under each.
  it('shares the gaps of a sole that rocks between its tips', () => {
    const found = lay(gauged([0.5, 0.2, 0, 0, 0]));
    expect(found.points[0]?.gap).toBeCloseTo(0.25, 9);
    expect(found.points[4]?.gap).toBeCloseTo(0.25, 9);
    expect(found.rests).toBe('rocks');
  });

  // Top −1, −0.6, −0.3, 0, −0.3 below a level sole: pressed at the centre it lies on the line from −0.6 to 0, which runs on
  // to −0.9 at the bass tip and 0.3 at the treble tip: gaps 0.1 and 0.6.
  it('lies on two places beside a hump', () => {
    const found = lay(gauged([1, 0.6, 0.3, 0, 0.3]));
    near(gaps(found), [0.1, 0, 0, 0, 0.6]);
    expect(found).toMatchObject({ rests: 'two-places', from: -38.1, to: 38.1 });
    expect(found.worst.x).toBe(76.2);
    expect(soleWords(found).join(' ')).toContain('toward the treble tip');
  });

  it('weighs the wings apart from the rest', () => {
    const wings = lay(gauged([0.3, 0.1, 0, 0.1, 0.3]));
    expect([wings.wingGap, wings.centreGap]).toEqual([expect.closeTo(0.3, 9), expect.closeTo(0.1, 9)]);
    const middle = lay(gauged([0, 0.2, 0.4, 0.2, 0]));
    expect([middle.wingGap, middle.centreGap]).toEqual([expect.closeTo(0.2, 9), expect.closeTo(0.4, 9)]);
  });
});

describe('soleFit: what sanding leaves', () => {
  // Flat on 25 ft: 0.381 off the centre. 9.5 − 0.5 − 0.381 = 8.619; less the slot of 6.5: 2.119.
  it('takes the fit and the rest off the thickness', () => {
    const found = lay(soleWith({ sanding: 0.5, draft: Math.PI / 4, top: { across: 25 * FOOT } }));
    expect(Math.abs(found.after.thickness - 8.619)).toBeLessThan(0.001);
    expect(Math.abs(found.after.woodUnder - 2.119)).toBeLessThan(0.001);
    // At 45° twice what is taken: 2·0.5 of the length, whose tips need no fit; 2·0.881 of the width.
    expect(found.after.lengthLoss).toBeCloseTo(1, 6);
    expect(Math.abs(found.after.widthLoss - 1.762)).toBeLessThan(0.002);
  });

  it('is worth nothing where nothing is sanded', () => {
    expect(lay(soleWith({ draft: 0.2 })).after).toEqual({ thickness: 9.5, woodUnder: 3, lengthLoss: 0, widthLoss: 0 });
  });
});

describe('soleFit: always', () => {
  const gap = fc.double({ min: 0, max: 1, noNaN: true });
  const five = fc.tuple(gap, gap, gap, gap, gap);
  it('has no gap below 0, touches at its places, and fits where it is sanded', () => {
    fc.assert(
      fc.property(five, (values) => {
        const found = lay(gauged(values));
        for (const { y } of found.curve) expect(y).toBeGreaterThanOrEqual(0);
        const touching = found.curve.filter(({ y }) => y < 1e-9).map(({ x }) => x);
        expect(touching).toContain(found.from);
        expect(touching).toContain(found.to);
        expect(found.from).toBeLessThanOrEqual(0);
        expect(found.to).toBeGreaterThanOrEqual(0);
        // What is sanded off and the gap make one height: the sole then lies on the top all over.
        for (const point of found.points) {
          expect(point.fit).toBeGreaterThanOrEqual(-1e-12);
          expect(point.fit + point.gap).toBeCloseTo(found.worst.gap, 9);
        }
      }),
      { seed: 5, numRuns: 300 },
    );
  });

  it('does not care how the gauged sole was tilted', () => {
    const tilt = fc.double({ min: -0.01, max: 0.01, noNaN: true });
    fc.assert(
      fc.property(five, tilt, (values, slope) => {
        const tilted = [-76.2, -38.1, 0, 38.1, 76.2].map((x, index) => (values[index] ?? 0) + 1 + slope * x);
        near(gaps(lay(gauged(tilted as [number, number, number, number, number]))), gaps(lay(gauged(values))), 1e-9);
      }),
      { seed: 6, numRuns: 200 },
    );
  });
});

describe('soleFit: wrong input', () => {
  it('says what was expected', () => {
    const codes = (sole: Sole, bridge: Partial<SoledBridge> = {}) => codesOf(soleFit(sole, { ...SIX_INCH, ...bridge }));
    expect(codes(soleWith({ wing: { tip: 4, inner: 9, begin: 76.2 } }))).toEqual(['sole.wing']);
    expect(codes(soleWith({}), { trebleTip: 30 })).toEqual(['sole.wing']);
    expect(codes(soleWith({ across: 70 }))).toEqual(['sole.radius']);
    expect(codes(soleWith({ top: { across: 70 } }))).toEqual(['sole.radius']);
    expect(codes(soleWith({ top: { from: 'gaps', under: 70 } }))).toEqual(['sole.radius']);
    // A radius that is not used takes nothing down.
    expect(soleFit(soleWith({ top: { under: 70 } }), SIX_INCH).ok).toBe(true);
  });
});
