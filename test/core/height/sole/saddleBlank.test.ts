import { describe, expect, it } from 'vitest';
import { heightChain } from '../../../../src/core/height/heightChain';
import { type SaddleBlankNeeds, saddleBlank } from '../../../../src/core/height/sole/saddleBlank';
import type { HeightChainArguments } from '../../../../src/core/height/types';
import { STEEL_645 } from '../../../reference/height';
import { valueOf as answerOf, codesOf } from '../../document/valueOf';
import { STEEL_CASE } from '../heightCase';

const SLOT = { length: 76.2, width: 3.175, depth: 6.5, slope: 0 };

/** What a chain of heights asks of the saddle. */
const needs = (change: Partial<HeightChainArguments>, rest: Partial<SaddleBlankNeeds> = {}): SaddleBlankNeeds => {
  const args = { ...STEEL_CASE, ...change };
  const chain = answerOf(heightChain(args));
  return {
    strings: chain.strings.map(({ proud }, index) => ({
      id: `s${index + 1}`,
      name: `${index + 1}`,
      x: args.strings[index]?.saddleX ?? 0,
      proud,
    })),
    slot: SLOT,
    pickup: 0,
    face: null,
    play: 0.2,
    clearance: 0.05,
    ...rest,
  };
};
const straight = (places: readonly number[]) => places.map((x) => ({ nutX: x, saddleX: x, setback: 0 }));

describe('saddleBlank', () => {
  // 3.783 over the frets and 0.4 of airspace: 4.183 proud, and 6.5 in the slot.
  it('stands from the slot’s floor to every string', () => {
    const blank = answerOf(saddleBlank(needs({})));
    expect(blank.length).toBeCloseTo(76, 12);
    expect(blank.thickness).toBeCloseTo(3.125, 12);
    for (const string of blank.strings) {
      expect(string.aboveBridge).toBeCloseTo(STEEL_645.proudAt04, 3);
      expect(string.aboveFloor).toBeCloseTo(STEEL_645.proudAt04 + 6.5, 3);
      expect(string.height).toBe(string.aboveFloor);
    }
    expect(blank.top.radius).toBeNull();
    expect(blank.highest).toBeCloseTo(STEEL_645.proudAt04 + 6.5, 3);
    expect(blank.bassEnd).toBeCloseTo(blank.trebleEnd, 9);
    expect(blank.face).toBe(6.5);
  });

  // 3.9 at the middle with no relief; parallel strings over a board of 254 keep its radius: 1.334213 lower at 26.
  it('takes the radius of the board where the strings run side by side', () => {
    const blank = answerOf(
      saddleBlank(needs({ relief: 0, boardRadius: 254, strings: straight([26, 13, 0, -13, -26]) })),
    );
    expect(blank.top.radius).toBeCloseTo(254, 3);
    expect(blank.top.deviation).toBeLessThan(1e-6);
    expect(blank.highest).toBeCloseTo(3.9 + 0.4 + 6.5, 6);
    expect(blank.strings[0]?.aboveBridge).toBeCloseTo(3.9 + 0.4 - 1.334213, 6);
    // The ends lie on the same arc: at 38 it has fallen by 254 − √(254² − 38²) = 2.858606.
    expect(blank.trebleEnd).toBeCloseTo(10.8 - 2.858606, 5);
  });

  // Strings that fan out keep the board's fall at the nut and at the 12th, so the saddle is a little flatter.
  it('flattens where the strings fan out', () => {
    const strings = [26, 13, 0, -13, -26].map((x) => ({ nutX: (x * 2) / 3, saddleX: x, setback: 0 }));
    const blank = answerOf(saddleBlank(needs({ relief: 0, boardRadius: 254, strings })));
    // Fall at the nut, x 17.3333: 0.592116; at the 12th, x 21.6667: 0.925790. Twice the one less the other: 1.259465,
    // so that R = (26² + 1.259465²)/(2·1.259465) = 268.998.
    expect(blank.top.radius).toBeCloseTo(268.998, 1);
    expect(blank.top.deviation).toBeLessThan(0.01);
  });

  it('lays a pickup under its foot, and measures along a slanted slot', () => {
    const blank = answerOf(saddleBlank(needs({}, { pickup: 1.5, slot: { ...SLOT, slope: 0.75 } })));
    expect(blank.strings[0]?.height).toBeCloseTo(STEEL_645.proudAt04 + 5, 3);
    expect(blank.strings[0]?.aboveFloor).toBeCloseTo(STEEL_645.proudAt04 + 6.5, 3);
    // √(1 + 0.75²) = 1.25
    expect(blank.strings[0]?.at).toBeCloseTo(27 * 1.25, 9);
  });

  it('stands farther over a bridge whose face falls away: 27²/(2·300) is 1.215, 1.2175 on the circle', () => {
    const blank = answerOf(saddleBlank(needs({}, { face: 300 })));
    expect(blank.strings[0]?.aboveBridge).toBeCloseTo(STEEL_645.proudAt04 + 1.2175, 3);
    expect(blank.strings[1]?.aboveBridge).toBeCloseTo(STEEL_645.proudAt04, 3);
  });

  it('says what was expected', () => {
    const codes = (change: Partial<SaddleBlankNeeds>) => codesOf(saddleBlank(needs({}, change)));
    expect(codes({ play: 76.2 })).toEqual(['blank.play']);
    expect(codes({ clearance: 3.2 })).toEqual(['blank.play']);
    expect(codes({ slot: { ...SLOT, length: 54 } })).toEqual(['blank.strings']);
    expect(codes({ strings: [] })).toEqual(['blank.strings']);
    const low = needs({}).strings.map((string) => ({ ...string, proud: -6.5 }));
    expect(codes({ strings: low })).toEqual(['blank.low']);
  });
});
