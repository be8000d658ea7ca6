import { describe, expect, it } from 'vitest';
import type { Hole, SaddlePlace } from '../../../src/core/bridge/types';
import { holeMatch } from '../../../src/core/repair/holeMatch';
import type { HoleMatch } from '../../../src/core/repair/types';
import { SIX_HOLES, TWELVE_ACROSS } from '../../reference/registration';

const hole = (label: string, x: number, y: number): Hole => ({ id: label, label, centre: { x, y }, diameter: 5 });
const row = (name: string, inches: number, y: number): readonly Hole[] =>
  [0, 1, 2, 3, 4, 5].map((index) => hole(`${name} ${index + 1}`, inches * 25.4 * (0.5 - index / 5), y));

const string = (name: string, x: number) => ({ id: name, name, x }) as SaddlePlace['strings'][number];
/** Strings over 54, the bass 2.7 farther back. */
const saddle: SaddlePlace = {
  centre: 647,
  slope: -0.05,
  strings: [string('E', 27), string('A', 0), string('E2', -27)],
};
/** At a scale of 645, by hand: 1731.234 / 645. */
const CENTS = 2.684;

const matched = (pins: readonly Hole[], old: readonly Hole[]): HoleMatch => {
  const match = holeMatch(pins, old, saddle, CENTS);
  if (!match.ok) throw new Error(match.issues[0]?.message);
  return match.value;
};

const near = (value: number) => expect.closeTo(value, 9);

describe('holeMatch', () => {
  it.each(SIX_HOLES)('six over $drilled in against six over $old in', ({ old, drilled, off, rms, worst }) => {
    const match = matched(row('pin', drilled, 660), row('old hole', old, 660));
    expect(match.pairs.map(({ placed }) => Math.abs(placed.x))).toEqual(off.map(near));
    expect(match.pairs.map(({ fitted }) => Math.hypot(fitted.x, fitted.y))).toEqual(off.map(near));
    expect(match.fit.rms).toBeCloseTo(rms, 3);
    expect(match.worstPlaced).toBeCloseTo(worst, 3);
    expect(match.spread).toEqual({ pins: near(drilled * 25.4), old: near(old * 25.4) });
    expect(match.shift).toEqual({ x: near(0), y: near(0) });
  });

  it('tells what a plain move of the bridge to its old holes costs', () => {
    const match = matched(
      row('pin', 2.125, 660),
      row('old hole', 2.125, 660.8).map((each) => each),
    );
    expect(match.worstPlaced).toBeCloseTo(0.8, 9);
    expect(match.fit.worst).toBeCloseTo(0, 9);
    expect(match.shift).toEqual({ x: near(0), y: near(0.8) });
    // 0.8 mm farther back is 0.8 × 2.684 = 2.1472 cents flat for every string.
    expect(match.costs).toEqual([
      { name: 'E', along: near(0.8), cents: near(-2.1472) },
      { name: 'E2', along: near(0.8), cents: near(-2.1472) },
    ]);
  });

  it('tells what a turn costs each outer string', () => {
    // Turned by 0.01 about (0, 647): + carries the treble end back.
    const pins = row('pin', 2.125, 647);
    const old = pins.map(({ centre }, index) =>
      hole(`old hole ${index + 1}`, centre.x * Math.cos(0.01), 647 + centre.x * Math.sin(0.01)),
    );
    const { fit, shift, costs } = matched(pins, old);
    expect(fit.pose.angle).toBeCloseTo(0.01, 12);
    expect(shift).toEqual({ x: near(0), y: near(0) });
    // A line of slope −0.05 turned by 0.01: (tan 0.01 − 0.05) / (1 + 0.05 tan 0.01), at x = ±27.
    const slope = (Math.tan(0.01) - 0.05) / (1 + 0.05 * Math.tan(0.01));
    expect(costs[0]?.along).toBeCloseTo(27 * (slope + 0.05), 9);
    expect(costs[1]?.along).toBeCloseTo(-27 * (slope + 0.05), 9);
    expect(costs[0]?.cents).toBeLessThan(0);
  });

  it('pairs from the treble side, in whatever order the old holes were read', () => {
    // Twelve in two rows 8 apart, read anyhow: each new hole 0.2 to the treble side and 0.3 ahead of its old one.
    const old = TWELVE_ACROSS.map((x, index) => hole(`old hole ${index + 1}`, x, 660 + (index % 2) * 8));
    const pins = old.map(({ centre }, index) => hole(`pin ${index + 1}`, centre.x + 0.2, centre.y - 0.3));
    const scrambled = [7, 0, 11, 3, 5, 1, 9, 2, 10, 4, 8, 6].flatMap((index) => old[index] ?? []);
    const { pairs, fit } = matched(pins, scrambled);
    expect(pairs.map(({ old: { label } }) => label)).toEqual(old.map(({ label }) => label));
    for (const { placed } of pairs) expect(placed).toEqual({ x: near(-0.2), y: near(0.3) });
    expect(fit.worst).toBeCloseTo(0, 9);
  });

  it('refuses twelve old holes for six pins', () => {
    const old = TWELVE_ACROSS.map((x, index) => hole(`old hole ${index + 1}`, x, 660));
    expect(holeMatch(row('pin', 2.125, 660), old, saddle, CENTS)).toMatchObject({
      ok: false,
      issues: [{ code: 'repair.holeCount', message: '12 old holes cannot serve 6 pins one for one.' }],
    });
  });
});
