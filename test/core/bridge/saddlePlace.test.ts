import { describe, expect, it } from 'vitest';
import { saddlePlace } from '../../../src/core/bridge/saddlePlace';
import { slotPlace } from '../../../src/core/bridge/slotPlace';
import type { Compensation, Slot } from '../../../src/core/document/types';
import { LEFT_645 } from '../../reference/bench';
import { WORKED } from '../../reference/intonation-worked';
import { steelProject } from '../document/steelProject';
import { valueOf as answerOf, codesOf } from '../document/valueOf';

const scale = { scaleLength: 645, nutOffset: 0, from: 'entered', readings: 0, readingSpread: 0 } as const;
const board = { nutWidth: 46, taper: 11 / 322.5, twelfth: 322.5, bodyJoin: 357.6, octave: 645 };
/** Six strings evenly over 54: 27, 16.2, 5.4, −5.4, −16.2, −27. */
const places = [27, 16.2, 5.4, -5.4, -16.2, -27].map((saddleX, index) => ({
  id: `s${index + 1}`,
  name: `${index + 1}`,
  nutX: 0,
  saddleX,
}));
const { slot } = steelProject.bridge;
const { compensation } = steelProject;

const lay = (change: Partial<Compensation>, other: Partial<Slot> = {}) =>
  answerOf(saddlePlace({ ...compensation, ...change }, { ...slot, ...other }, scale, board, places));
const cut = (change: Partial<Compensation>, other: Partial<Slot> = {}) =>
  answerOf(slotPlace({ ...slot, ...other }, lay(change, other)));

describe('saddlePlace by a rule of thumb', () => {
  it('breaks where 1/16 and 5/32 in say', () => {
    const saddle = lay({});
    expect(saddle.centre).toBeCloseTo(LEFT_645.breakPoints.centre, 9);
    expect(saddle.centre + saddle.slope * 27).toBeCloseTo(LEFT_645.breakPoints.treble, 9);
    expect(saddle.centre - saddle.slope * 27).toBeCloseTo(LEFT_645.breakPoints.bass, 9);
    expect((Math.atan(-saddle.slope) * 180) / Math.PI).toBeCloseTo(LEFT_645.slantDegrees, 3);
    for (const string of saddle.strings) expect(string.miss).toBeCloseTo(0, 10);
    expect(saddle.strings.map(({ id }) => id)).toEqual(['s1', 's2', 's3', 's4', 's5', 's6']);
  });

  // The slant makes the slot 3.175 · √(1 + 0.0440972²) = 3.1780855 wide along the centreline; half of it:
  const half = 1.58904275;
  const told = 645 + 2.778125;

  it.each([0, 0.5, 1])('to the slot front: the slot front stands at the figure, crown %s', (crown) => {
    const rule = { ...compensation.rule, reach: 'slot-front' as const };
    expect(cut({ rule }, { crown }).front).toBeCloseTo(told, 6);
    expect(lay({ rule }, { crown }).centre).toBeCloseTo(told + 2 * half * crown, 6);
  });

  it.each([0, 0.5, 1])('to the slot centre: the slot centre stands at the figure, crown %s', (crown) => {
    const rule = { ...compensation.rule, reach: 'slot-centre' as const };
    expect(cut({ rule }, { crown }).middle).toBeCloseTo(told, 6);
    expect(lay({ rule }, { crown }).centre).toBeCloseTo(told + 2 * half * (crown - 0.5), 6);
  });

  it.each([0, 0.5, 1])('to the break point: the slot moves under it, crown %s', (crown) => {
    expect(lay({}, { crown }).centre).toBeCloseTo(told, 9);
    expect(cut({}, { crown }).front).toBeCloseTo(told - 2 * half * crown, 6);
    expect(cut({}, { crown }).back).toBeCloseTo(told + 2 * half * (1 - crown), 6);
  });
});

describe('saddlePlace by own figures', () => {
  // Setbacks of the worked example; line, misses and slant from an independent evaluation (see there).
  it('lays the line of least squares through them', () => {
    const own = Object.fromEntries(WORKED.fit.map((setback, index) => [`s${index + 1}`, setback]));
    const saddle = lay({ by: 'own', own });
    expect(saddle.centre - 645).toBeCloseTo(WORKED.fitLine.centre, 3);
    expect((Math.atan(-saddle.slope) * 180) / Math.PI).toBeCloseTo(WORKED.fitLine.angleDeg, 2);
    for (const [index, miss] of WORKED.fitLine.misses.entries())
      expect(saddle.strings[index]?.miss).toBeCloseTo(miss, 3);
    // 0.114 mm too far back at 1731.234 / 645 cents per mm is 0.31 cents flat; string 2 lies 1.088 too far ahead: 2.92 sharp.
    expect(saddle.strings[0]?.cents).toBeCloseTo(-0.31, 2);
    expect(saddle.strings[1]?.cents).toBeCloseTo(2.92, 2);
  });

  it('takes the rule for a string without a figure, and a figure of 0 as a figure', () => {
    const { strings } = lay({ by: 'own', own: { s1: 0, s3: 2.5 } });
    // The rule at x = −27 is 5/32 in, at 16.2 it is 2.778125 − 16.2 · 2.38125 / 54 = 2.06375.
    expect(strings.map(({ wanted }) => wanted)[0]).toBe(0);
    expect(strings[2]?.wanted).toBe(2.5);
    expect(strings[1]?.wanted).toBeCloseTo(2.06375, 10);
    expect(strings[5]?.wanted).toBeCloseTo(3.96875, 10);
  });

  it('leaves own figures aside while the rule counts', () => {
    expect(lay({ own: { s1: 9, s6: 9 } }).centre).toBeCloseTo(647.778125, 9);
  });
});

describe('saddlePlace refuses', () => {
  it('strings at one place', () => {
    const heap = places.map((place) => ({ ...place, saddleX: 3 }));
    expect(codesOf(saddlePlace(compensation, slot, scale, board, heap))).toEqual(['saddleLine.onePlace']);
  });
});
