import { describe, expect, it } from 'vitest';
import { sagitta } from '../../../src/core/height/sagitta';
import { stringHeights } from '../../../src/core/height/stringHeights';
import { SAGITTAS, STEEL_645 } from '../../reference/height';
import { valueOf as answerOf, codesOf } from '../document/valueOf';
import { STEEL_CASE } from './heightCase';

const heights = (change: Partial<typeof STEEL_CASE>): readonly number[] =>
  answerOf(stringHeights({ ...STEEL_CASE, ...change })).map(({ height }) => height);
const lifts = (change: Partial<typeof STEEL_CASE>): readonly number[] =>
  answerOf(stringHeights({ ...STEEL_CASE, ...change })).map(({ lift }) => lift);
/** Strings side by side, so that each keeps one x from nut to saddle. */
const straight = (places: readonly number[]) => places.map((x) => ({ nutX: x, saddleX: x, setback: 0 }));

describe('stringHeights', () => {
  it('carries nut and action on to the saddle (by hand)', () => {
    for (const height of heights({})) expect(height).toBeCloseTo(STEEL_645.height, 3);
    // No relief: 0.5 + 2 · 1.7.
    for (const height of heights({ relief: 0 })) expect(height).toBeCloseTo(3.9, 9);
  });

  it('follows the slope of the string behind the octave line: 3.4 over 645, 6.45 farther', () => {
    const strings = straight([27, -27]).map((string) => ({ ...string, setback: 6.45 }));
    expect(heights({ relief: 0, strings })[0]).toBeCloseTo(3.934, 9);
  });

  it('shares treble and bass figures out evenly between the outer strings (by hand)', () => {
    // Treble 0.4 and 1.9: 3.4. Bass 0.6 and 2.5: 4.4. Half way 3.9; a quarter in from the treble 3.65.
    const change = {
      relief: 0,
      nutHeight: { treble: 0.4, bass: 0.6 },
      action: { treble: 1.9, bass: 2.5 },
      strings: straight([20, 10, 0, -20]),
    };
    const expected = [3.4, 3.65, 3.9, 4.4];
    for (const [index, height] of heights(change).entries()) expect(height).toBeCloseTo(expected[index] ?? 0, 9);
    for (const lift of lifts(change)) expect(lift).toBeCloseTo(0, 9);
  });

  it('raises the middle strings over a radiused board by the sagitta', () => {
    const change = { relief: 0, boardRadius: 254, strings: straight([26, 0, -26]) };
    const [treble, middle, bass] = heights(change);
    expect(middle).toBeCloseTo(3.9, 9);
    expect(treble).toBeCloseTo(3.9 - SAGITTAS[0].fall, 6);
    expect(bass).toBeCloseTo(3.9 - SAGITTAS[0].fall, 6);
    expect(lifts(change)[1]).toBeCloseTo(SAGITTAS[0].fall, 6);
    expect(lifts(change)[0]).toBeCloseTo(0, 9);
  });

  it('says what was expected', () => {
    const codes = (change: Partial<typeof STEEL_CASE>) => codesOf(stringHeights({ ...STEEL_CASE, ...change }));
    expect(codes({ scaleLength: 0 })).toContain('height.scale');
    expect(codes({ nutHeight: { treble: 0.5, bass: -1 } })).toEqual(['height.nutHeight']);
    expect(codes({ action: { treble: Number.NaN, bass: 2 } })).toEqual(['height.action']);
    expect(codes({ relief: Number.NaN })).toEqual(['height.relief']);
    expect(codes({ reliefFrets: [14, 1] })).toEqual(['height.reliefFrets']);
    expect(codes({ strings: straight([-27, 27]) })).toEqual(['height.strings']);
    expect(codes({ strings: straight([27]) })).toEqual(['height.strings']);
    expect(codes({ boardRadius: 27 })).toEqual(['height.radius']);
  });
});

describe('sagitta', () => {
  it('matches the table', () => {
    for (const { radius, x, fall } of SAGITTAS) expect(sagitta(radius, -x)).toBeCloseTo(fall, 6);
    expect(sagitta(null, 30)).toBe(0);
    expect(sagitta(5, 3)).toBe(1); // 3-4-5
  });
  it('refuses a radius that does not reach', () => {
    expect(() => sagitta(26, 26)).toThrow(RangeError);
    expect(() => sagitta(Number.NaN, 1)).toThrow(RangeError);
    expect(() => sagitta(254, Number.POSITIVE_INFINITY)).toThrow(RangeError);
  });
});
