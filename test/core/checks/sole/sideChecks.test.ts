import { describe, expect, it } from 'vitest';
import type { SaddlePlace } from '../../../../src/core/bridge/types';
import { sideChecks } from '../../../../src/core/checks/sole/sideChecks';
import { soleChecks } from '../../../../src/core/checks/sole/soleChecks';
import type { DesignCheck } from '../../../../src/core/checks/types';
import type { Sole } from '../../../../src/core/document/soleTypes';
import type { Project } from '../../../../src/core/document/types';
import { heightChain } from '../../../../src/core/height/heightChain';
import { soleFit } from '../../../../src/core/height/sole/soleFit';
import { soleLimitsInUse } from '../../../../src/core/height/sole/soleLimits';
import type { HeightChainArguments } from '../../../../src/core/height/types';
import { steelProject } from '../../document/steelProject';
import { valueOf as answerOf } from '../../document/valueOf';
import { STEEL_CASE } from '../../height/heightCase';
import { FOOT, SIX_INCH, soleWith } from '../../height/sole/soleCase';

/** Three strings that break on a line slanted by 0.1 through 648; only names and places count here. */
const SADDLE: SaddlePlace = {
  centre: 648,
  slope: -0.1,
  strings: ['E4', 'G3', 'E2'].map((name, index) => ({
    id: name,
    name,
    x: [27, 0, -27][index] ?? 0,
    wanted: 0,
    line: 0,
    miss: 0,
    cents: 0,
    crown: { inside: 0, left: 0 } as never,
    centsLeft: 0,
    model: null,
  })),
};
/** Relief off and action 2: 0.5 + 2 · 1.5 = 3.5 above the frets. */
const ROUND = { relief: 0, action: { treble: 2, bass: 2 } };

const side = (
  change: Partial<HeightChainArguments>,
  limits: Project['limits'] = {},
  read = true,
): readonly DesignCheck[] => {
  const args = { ...STEEL_CASE, ...ROUND, ...change };
  const { bridge, height } = steelProject;
  const project = {
    bridge: { ...bridge, thickness: args.bridgeThickness, slot: { ...bridge.slot, depth: args.slotDepth } },
    height: { ...height, pickup: args.pickupThickness },
    limits,
  };
  return sideChecks({ chain: answerOf(heightChain(args)), airspace: args.airspace, read }, SADDLE, project);
};
const named = (checks: readonly DesignCheck[], id: string) => checks.find((check) => check.id === id);

describe('sideChecks', () => {
  // 1/8 in over 7/16 in is 15.9°; 1/16 in over 7/16 in 8.1°: airspaces of 3.175 − 3.5 and 1.5875 − 3.5.
  it('tells the break angle of both outer strings', () => {
    const checks = side({ airspace: -0.325, run: 11.1125 });
    expect(named(checks, 'break-treble')).toMatchObject({
      verdict: 'good',
      message: 'Break angle of the treble E4 string 15.9°.',
    });
    expect(named(checks, 'break-bass')?.message).toBe('Break angle of the bass E2 string 15.9°.');
    expect(named(side({ airspace: -1.9125, run: 11.1125 }), 'break-treble')).toMatchObject({ verdict: 'good' });
    // 4 over 40: 5.7°.
    expect(named(side({ airspace: 0.5, run: 40 }), 'break-bass')).toMatchObject({
      verdict: 'look',
      message: expect.stringContaining('5.7°; 8.0° is the least'),
      source: expect.stringContaining('no sound minimum'),
    });
    expect(named(side({ airspace: 0.5, run: 40 }, { breakDeg: 5 }), 'break-bass')).toMatchObject({
      verdict: 'good',
      source: 'set by the maker',
    });
    expect(named(side({ run: null }), 'break-treble')).toBeUndefined();
  });

  it('tells each side by itself', () => {
    // Treble 0.5 + 2·1 = 2.5, bass 0.5 + 2·2 = 4.5; 0.5 more, over 24: atan(3/24) = 7.1°, atan(5/24) = 11.8°.
    const checks = side({ action: { treble: 1.5, bass: 2.5 }, airspace: 0.5, run: 24 });
    expect(named(checks, 'break-treble')).toMatchObject({ verdict: 'look', message: expect.stringContaining('7.1°') });
    expect(named(checks, 'break-bass')).toMatchObject({ verdict: 'good', message: expect.stringContaining('11.8°') });
  });

  it('tells the wood under the slot', () => {
    // 9.5 less 6.5, and less 8.
    expect(named(side({}), 'wood-under')).toMatchObject({ verdict: 'good', lengths: [3, 2.4] });
    expect(named(side({ slotDepth: 8 }), 'wood-under')).toMatchObject({ verdict: 'wrong', lengths: [1.5, 2.4] });
    expect(named(side({ slotDepth: 8 }, { woodUnder: 1.5 }), 'wood-under')).toMatchObject({ verdict: 'good' });
  });

  it('tells the share of the saddle in the slot', () => {
    // 4 proud: 6 of 10, 3 of 7.
    expect(named(side({ airspace: 0.5, slotDepth: 6 }), 'saddle-share')).toMatchObject({
      verdict: 'good',
      message: '60 % of the saddle stands in the slot.',
    });
    expect(named(side({ airspace: 0.5, slotDepth: 3 }), 'saddle-share')).toMatchObject({
      verdict: 'look',
      message: '43 % of the saddle stands in the slot; below 50 % it leans.',
    });
  });

  it('marks where it speaks of, on the saddle', () => {
    const checks = side({});
    expect(named(checks, 'break-treble')?.at).toEqual([{ x: 27, y: expect.closeTo(645.3, 9) }]);
    expect(named(checks, 'break-bass')?.at).toEqual([{ x: -27, y: expect.closeTo(650.7, 9) }]);
    expect(named(checks, 'wood-under')?.at).toEqual([{ x: 0, y: 648 }]);
    expect(checks.map(({ limit }) => limit)).toEqual([
      'limits.breakDeg',
      'limits.breakDeg',
      'limits.woodUnder',
      'limits.share',
    ]);
  });

  it('mends a slot that is too deep or too shallow, where some depth does', () => {
    // 9.5 less 2.4; half of 8: 4 proud and as much in the slot.
    const deep = named(side({ airspace: 0.5, slotDepth: 8 }), 'wood-under')?.mend?.();
    expect(deep?.set).toEqual([{ path: 'bridge.slot.depth', value: expect.closeTo(7.1, 9) }]);
    const shallow = named(side({ airspace: 0.5, slotDepth: 3 }), 'saddle-share')?.mend?.();
    expect(shallow?.set).toEqual([{ path: 'bridge.slot.depth', value: expect.closeTo(4, 9) }]);
    for (const mend of [deep, shallow]) {
      const slotDepth = Number(mend?.set[0]?.value);
      const after = side({ airspace: 0.5, slotDepth });
      expect([named(after, 'wood-under')?.verdict, named(after, 'saddle-share')?.verdict]).toEqual(['good', 'good']);
    }
    // 8 proud wants 8 in the slot, and 7.1 is the deepest.
    expect(named(side({ airspace: 4.5, slotDepth: 8 }), 'wood-under')?.mend?.()).toBeNull();
    expect(named(side({ airspace: 4.5, slotDepth: 3 }), 'saddle-share')?.mend?.()).toBeNull();
  });

  it('says so where the straightedge was not read; the wood does not rest on it', () => {
    const checks = side({ airspace: 1 }, {}, false);
    for (const id of ['break-treble', 'break-bass', 'saddle-share'])
      expect(named(checks, id)).toMatchObject({
        message: expect.stringContaining('Straightedge not read: {0} over the bridge is taken.'),
        lengths: [1],
      });
    expect(named(checks, 'wood-under')?.message).toBe('Wood under the slot {0}.');
  });
});

describe('soleChecks', () => {
  const checksOf = (sole: Sole, limits: Project['limits'] = {}) =>
    soleChecks(
      { ...steelProject.bridge, thickness: 9.5, sole },
      answerOf(soleFit(sole, SIX_INCH)),
      soleLimitsInUse(limits),
      { least: 2.4, source: 'a test' },
      655,
    );
  const domed = (feet: number, limits: Project['limits'] = {}) =>
    checksOf(soleWith({ top: { across: feet * FOOT } }), limits);

  it('asks that no wing be forced down: 0.340 on 28 ft', () => {
    expect(domed(28)[0]).toMatchObject({
      id: 'sole-wings',
      verdict: 'look',
      message: expect.stringContaining('Gap of 0.34 mm (0.013 in) under the wings; 0.10 mm (0.004 in) at most'),
      source: expect.stringContaining('pegasusguitars.com'),
      at: [
        { x: -76.2, y: 655 },
        { x: 76.2, y: 655 },
      ],
    });
    // 76.2²/(2·30480) = 0.095
    expect(domed(100)[0]).toMatchObject({ verdict: 'good', message: 'Gap of 0.10 mm (0.004 in) under the wings.' });
    expect(domed(28, { wingGap: 0.5 })[0]).toMatchObject({ verdict: 'good', source: 'set by the maker' });
  });

  it('asks for no more than a hair at the centre', () => {
    const hollow = (feet: number) => checksOf(soleWith({ across: feet * FOOT }))[1];
    expect(hollow(25)).toMatchObject({
      id: 'sole-centre',
      verdict: 'look',
      message: expect.stringContaining('0.38 mm'),
    });
    expect(hollow(100)).toMatchObject({ verdict: 'good' });
  });

  it('tells the wood that sanding leaves: 3 less 0.381, less 0.5 more', () => {
    const wood = (sanding: number) =>
      checksOf(soleWith({ sanding, top: { across: 25 * FOOT } })).find(({ id }) => id === 'wood-after');
    expect(wood(0)).toMatchObject({
      verdict: 'good',
      message: 'Once 0.38 mm (0.015 in) is sanded off the sole, {0} of wood is left under the slot.',
    });
    expect(wood(0)?.lengths[0]).toBeCloseTo(2.619, 3);
    expect(wood(0.5)).toMatchObject({ verdict: 'wrong', message: expect.stringContaining('{1} is the least') });
    expect(checksOf(soleWith({})).map(({ id }) => id)).toEqual(['sole-wings', 'sole-centre']);
  });

  it('mends by sanding the sole to a dome that is known', () => {
    const sole = soleWith({ top: { across: 25 * FOOT, along: 25 * FOOT } });
    const mend = checksOf(sole)[0]?.mend?.();
    expect(mend?.set).toEqual([
      { path: 'bridge.sole.across', value: expect.closeTo(7620, 9) },
      { path: 'bridge.sole.along', value: expect.closeTo(7620, 9) },
    ]);
    const after = checksOf({ ...sole, across: 25 * FOOT, along: 25 * FOOT });
    expect(after.map(({ verdict }) => verdict)).toEqual(['good', 'good']);
    expect(after[0]?.mend?.()).toBeNull();
    const gaps = { bassTip: 0.5, bassWing: 0, centre: 0, trebleWing: 0, trebleTip: 0.5 };
    expect(checksOf(soleWith({ top: { from: 'gaps', gaps } }))[0]?.mend?.()).toBeNull();
    expect(checksOf(soleWith({ across: 25 * FOOT }))[0]?.mend?.()).toBeNull();
  });
});
