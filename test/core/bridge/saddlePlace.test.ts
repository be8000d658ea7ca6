import { describe, expect, it } from 'vitest';
import { saddlePlace } from '../../../src/core/bridge/saddlePlace';
import { slotPlace } from '../../../src/core/bridge/slotPlace';
import type { Compensation, Slot } from '../../../src/core/document/types';
import { type StringModel, stringModels } from '../../../src/core/intonation/stringModels';
import { fail, ok } from '../../../src/core/result';
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

/** What the stiff-string model says of the worked example's strings under its set-up. */
const models = stringModels(steelProject.strings, places, 645, steelProject.setup, compensation.fit, {});
const LAND = 0.3;

const lay = (change: Partial<Compensation>, other: Partial<Slot> = {}) =>
  answerOf(saddlePlace({ ...compensation, ...change }, { ...slot, ...other }, scale, board, places, models, LAND));
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

// Six strings of the worked example through the model; every figure from an independent evaluation (see there), printed to
// 0.001 mm and 0.001 degrees.
describe('saddlePlace by the strings', () => {
  const degrees = (slope: number): number => (Math.atan(-slope) * 180) / Math.PI;

  it('takes what each string wants, and lays the line of least squares', () => {
    const saddle = lay({ by: 'strings' });
    expect(saddle.strings).toHaveLength(6);
    for (const [index, string] of saddle.strings.entries()) {
      expect(Math.abs(string.wanted - (WORKED.fit[index] ?? 0))).toBeLessThan(0.00051);
      expect(string.model?.setback).toBe(string.wanted);
      expect(Math.abs(string.miss - (WORKED.fitLine.misses[index] ?? 0))).toBeLessThan(0.00051);
      expect(string.line - string.wanted).toBeCloseTo(string.miss, 10);
    }
    expect(Math.abs(saddle.centre - 645 - WORKED.fitLine.centre)).toBeLessThan(0.00051);
    expect(Math.abs(degrees(saddle.slope) - WORKED.fitLine.angleDeg)).toBeLessThan(0.00051);
    // Ends of the line as the example prints them.
    expect(saddle.strings[0]?.line).toBeCloseTo(1.932, 3);
    expect(saddle.strings[5]?.line).toBeCloseTo(4.12, 3);
  });

  const octave = { ...compensation.fit, match: 'octave' } as const;

  it('takes the octave match when that is asked', () => {
    const own = stringModels(steelProject.strings, places, 645, steelProject.setup, octave, {});
    const saddle = answerOf(
      saddlePlace({ ...compensation, by: 'strings', fit: octave }, slot, scale, board, places, own, LAND),
    );
    for (const [index, { wanted }] of saddle.strings.entries())
      expect(Math.abs(wanted - (WORKED.octave[index] ?? 0))).toBeLessThan(0.00051);
    expect(Math.abs(saddle.centre - 645 - WORKED.octaveLine.centre)).toBeLessThan(0.00051);
    expect(Math.abs(degrees(saddle.slope) - WORKED.octaveLine.angleDeg)).toBeLessThan(0.00051);
  });

  it('lays the line of the least worst miss', () => {
    const saddle = lay({ by: 'strings', fit: { ...compensation.fit, line: 'minimax' } });
    const { centre, angleDeg, worst } = WORKED.minimax.fit;
    expect(Math.abs(saddle.centre - 645 - centre)).toBeLessThan(0.00051);
    expect(Math.abs(degrees(saddle.slope) - angleDeg)).toBeLessThan(0.00051);
    expect(Math.max(...saddle.strings.map(({ miss }) => Math.abs(miss)))).toBeCloseTo(worst, 3);
  });

  // Through 1.818 at 27 and 4.772 at −27: (1.818 − 4.772) / 54 = −0.0547037, centre 3.295; string 2 (16.2) 2.40880 less 3.458.
  it('lays the line through the outer strings', () => {
    const saddle = lay({ by: 'strings', fit: { ...compensation.fit, line: 'outer' } });
    expect(saddle.slope).toBeCloseTo(-0.0547, 4);
    expect(saddle.centre - 645).toBeCloseTo(3.295, 3);
    expect(saddle.strings[0]?.miss).toBeCloseTo(0, 10);
    expect(saddle.strings[5]?.miss).toBeCloseTo(0, 10);
    expect(saddle.strings[1]?.miss).toBeCloseTo(-1.0492, 3);
  });

  // 3°: slope −0.05241; see the worked example for centre and misses.
  it('keeps to the slant of a bridge bought slotted', () => {
    const saddle = lay({ by: 'strings' }, { slant: (3 * Math.PI) / 180 });
    const { slope, centre, misses } = WORKED.threeDegrees;
    expect(saddle.slope).toBeCloseTo(slope, 5);
    expect(saddle.centre - 645).toBeCloseTo(centre, 3);
    // Worked from setbacks printed to 0.001, so each miss may be off by half of that once more.
    for (const [index, miss] of misses.entries())
      expect(Math.abs((saddle.strings[index]?.miss ?? 0) - miss)).toBeLessThan(0.00101);
  });

  it('leans the other way for a slant of minus', () => {
    expect(lay({ by: 'strings' }, { slant: -0.02 }).slope).toBeCloseTo(Math.tan(0.02), 12);
    expect(lay({}, { slant: -0.02 }).slope).toBeCloseTo(Math.tan(0.02), 12);
    expect(lay({}, { slant: 0 }).slope).toBeCloseTo(0, 12);
  });
});

// Crown in the middle of 3.175 mm, the saddle's face half of it ahead of the line: a string whose line lies `miss` too far
// back must break (1.5875·√(1 + slope²) − miss) / √(1 + slope²) from the face, across the saddle. Land 0.3: shaped between
// 0.3 and 2.875. √(1 + 0.04052²) = 1.0008206.
describe('saddlePlace, the crown', () => {
  const LEAN = 1.0008206;
  const wide = lay({ by: 'strings' });

  it('lies where the mark is, and leaves nothing, within 1/8 in', () => {
    for (const [index, { crown, centsLeft }] of wide.strings.entries()) {
      const fromFace = 1.5875 - (WORKED.fitLine.misses[index] ?? 0) / LEAN;
      expect(crown.fromFace).toBeCloseTo(fromFace, 2);
      expect(crown.share).toBeCloseTo(fromFace / 3.175, 2);
      expect(crown.reached).toBe(true);
      expect(crown.left).toBeCloseTo(0, 10);
      expect(centsLeft).toBeCloseTo(0, 10);
    }
  });

  // 3/32 in is 2.38125: middle 1.190625, shaped from 0.3 to 2.08125, so 0.890625 each way: string 2 wants 1.088 / 1.00082 =
  // 1.0871 and stays 0.1965 · 1.00082 = 0.1966 too far ahead, sharp by 0.1966 · 2.68408 = 0.528 cents; string 3 wants 0.8363.
  it('stops at the land kept in 3/32 in, and tells what that leaves', () => {
    const thin = lay({ by: 'strings' }, { width: 2.38125 });
    expect(thin.strings.map(({ crown }) => crown.reached)).toEqual([true, false, true, true, true, true]);
    expect(thin.strings[1]?.crown.shaped).toBeCloseTo(2.08125, 10);
    // The miss itself is printed to 0.001.
    expect(Math.abs((thin.strings[1]?.crown.left ?? 0) + 0.1966)).toBeLessThan(0.001);
    expect(thin.strings[1]?.centsLeft).toBeCloseTo(0.528, 2);
    expect(thin.strings[2]?.centsLeft).toBeCloseTo(0, 10);
  });

  it('stands the model’s mark beside the rule’s own', () => {
    const { strings } = lay({});
    for (const [index, { crown, model }] of strings.entries()) {
      // The rule's marks lie on its own line, in the middle of the crown.
      expect(crown.share).toBeCloseTo(0.5, 10);
      const line = 1.5875 + 0.47625 * index;
      expect(model?.setback).toBeCloseTo(WORKED.fit[index] ?? 0, 2);
      const lean = Math.hypot(1, 2.38125 / 54);
      expect(model?.crown.fromFace).toBeCloseTo(1.5875 + ((WORKED.fit[index] ?? 0) - line) / lean, 2);
    }
    // String 2 wants 3.458 against 2.06375: 1.394 more, beyond the 1.2875 that half the slot less the land leaves.
    expect(strings.map(({ model }) => model?.crown.reached)).toEqual([true, false, true, true, true, true]);
  });
});

describe('saddlePlace refuses', () => {
  it('strings at one place', () => {
    const heap = places.map((place) => ({ ...place, saddleX: 3 }));
    expect(codesOf(saddlePlace(compensation, slot, scale, board, heap, models, LAND))).toEqual(['saddleLine.onePlace']);
  });

  const none = fail<readonly StringModel[]>('strings.0.string.frequency', 'fit.no-answer', 'no');

  it('strings that the model cannot take, with its reason, but only when they are to say where', () => {
    const by = (how: Compensation['by']) =>
      saddlePlace({ ...compensation, by: how }, slot, scale, board, places, none, LAND);
    expect(codesOf(by('strings'))).toEqual(['fit.no-answer']);
    expect(answerOf(by('rule')).strings.map(({ model }) => model)).toEqual([null, null, null, null, null, null]);
    expect(by('own').ok).toBe(true);
  });

  it('a model of fewer strings than there are places', () => {
    const few = answerOf(models).slice(1);
    const laid = saddlePlace({ ...compensation, by: 'strings' }, slot, scale, board, places, ok(few), LAND);
    expect(codesOf(laid)).toEqual(['saddle.strings']);
  });
});

describe('saddlePlace with what earlier instruments taught', () => {
  const learned = { byString: { s1: 0.25, s6: -0.5, gone: 9 }, builds: 12, accepted: '2026-11-25T10:00:00.000Z' };

  it('adds it to what the strings want, string by string, and leaves the model as it is', () => {
    const { strings } = lay({ by: 'strings', learned });
    for (const [index, fit] of WORKED.fit.entries()) {
      const added = index === 0 ? 0.25 : index === 5 ? -0.5 : 0;
      expect(Math.abs((strings[index]?.wanted ?? 0) - fit - added)).toBeLessThan(0.002);
      expect(Math.abs((strings[index]?.model?.setback ?? 0) - fit)).toBeLessThan(0.002);
    }
  });

  it.each(['rule', 'own'] as const)('sets it aside where compensation is by %s', (by) => {
    expect(lay({ by, learned })).toEqual(lay({ by }));
  });
});
