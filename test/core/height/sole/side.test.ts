import { describe, expect, it } from 'vitest';
import { createDerive } from '../../../../src/core/derive/createDerive';
import { createSideStep, type Side } from '../../../../src/core/derive/createSideStep';
import type { Project } from '../../../../src/core/document/types';
import { soleLimitsInUse } from '../../../../src/core/height/sole/soleLimits';
import { usualSole } from '../../../../src/core/height/sole/usualSole';
import { KINDS } from '../../../../src/core/kinds/kinds';
import { PROUD_645 } from '../../../reference/bench';
import { steelProject, steelWith } from '../../document/steelProject';
import { valueOf as answerOf } from '../../document/valueOf';
import { FLAT_SOLE, FOOT, soleWith } from './soleCase';

const sides = (value: number) => ({ treble: value, bass: value });
const bench = (straightedge: number | null): Project =>
  steelWith({
    setup: { nutHeight: sides(0.5), action: sides(2.2), relief: 0.15 },
    compensation: { rule: { treble: 0, bass: 0, reach: 'break-point', source: '' } },
    height: { straightedge },
  });
const sideOf = (project: Project): Side => createSideStep()(project, createDerive()(project));
const soled = (project: Project, sole: Project['bridge']['sole']): Project => ({
  ...project,
  bridge: { ...project.bridge, sole },
});

describe('the bridge from the side', () => {
  it.each(PROUD_645.proud)('airspace %d: the saddle stands up %d, and 6.5 deeper', (airspace, proud) => {
    const { heights, blank } = sideOf(bench(airspace));
    expect(answerOf(heights)).toMatchObject({ airspace, read: true });
    for (const string of answerOf(blank).strings) {
      expect(Math.abs(string.aboveBridge - proud)).toBeLessThan(0.05);
      expect(Math.abs(string.aboveFloor - proud - 6.5)).toBeLessThan(0.05);
    }
    // Slot 76.2 and 3.175: less 0.2 and 0.05 of play.
    expect(answerOf(blank).length).toBeCloseTo(76, 9);
    expect(answerOf(blank).thickness).toBeCloseTo(3.125, 9);
  });

  it('takes the middle of its limits until the straightedge is read: 1/64 in and 1.6', () => {
    const { heights } = sideOf(bench(null));
    expect(answerOf(heights)).toMatchObject({ airspace: expect.closeTo(0.9984375, 9), read: false });
    // 3.783 + 0.998
    expect(answerOf(heights).chain.proud.most).toBeCloseTo(4.781, 2);
  });

  // The belly bridge is 152.4 long and 34.925 wide: 0.340 under its tips on 28 ft.
  it('lays the bridge of the project on its top', () => {
    const { fit } = sideOf(soled(steelProject, soleWith({ top: { across: 28 * FOOT } })));
    if (fit === null) throw new Error('There is no fit.');
    expect(Math.abs(answerOf(fit).worst.gap - 0.34)).toBeLessThan(0.001);
    expect(answerOf(fit).places).toMatchObject({
      bassTip: expect.closeTo(-76.2, 6),
      trebleTip: expect.closeTo(76.2, 6),
    });
    expect(answerOf(fit).after.thickness).toBeCloseTo(9.525 - answerOf(fit).worst.gap, 9);
    expect(sideOf(steelProject).fit).toBeNull();
  });

  it('goes by the maker’s own play', () => {
    const own = { ...bench(1), limits: { saddlePlay: 1, saddleClearance: 0.2 } };
    expect(answerOf(sideOf(own).blank)).toMatchObject({
      length: expect.closeTo(75.2, 9),
      thickness: expect.closeTo(2.975, 9),
    });
    expect(soleLimitsInUse({ wingGap: 0.3 }).wingGap).toEqual({ value: 0.3, source: 'set by the maker' });
  });

  it('is total: what fails takes down only what needs it', () => {
    const deep = {
      ...bench(1),
      bridge: { ...bench(1).bridge, sole: FLAT_SOLE, slot: { ...bench(1).bridge.slot, depth: 10 } },
    };
    const { heights, fit, blank, checks } = sideOf(deep);
    expect([heights.ok, blank.ok, fit?.ok]).toEqual([false, false, true]);
    expect(checks.map(({ id }) => id)).toEqual(['sole-wings', 'sole-centre']);
  });

  it('keeps its answers while nothing that they need has changed', () => {
    const step = createSideStep();
    const derive = createDerive();
    const project = bench(1);
    const before = step(project, derive(project));
    const renamed = { ...project, about: { ...project.about, name: 'Another' } };
    const after = step(renamed, derive(renamed));
    expect(after.heights).toBe(before.heights);
    expect(after.blank).toBe(before.blank);
    expect(after.checks).toBe(before.checks);
  });
});

describe('usualSole', () => {
  it.each(KINDS.map(({ id, make }) => [id, make('p', '2026-01-01T00:00:00Z')] as const))('fits %s', (_, project) => {
    const place = answerOf(createDerive()(project).bridge);
    const tips = place.footprint.outline.segments.map(({ to }) => Math.abs(to.x));
    const sole = usualSole(project, Math.max(...tips));
    expect(sole.wing.tip).toBeLessThanOrEqual(project.bridge.thickness);
    const { fit } = sideOf(soled(project, sole));
    expect(fit?.ok).toBe(true);
  });

  // 1/8 to 3/16 in at the tips from memory; 28 ft from one kit; flat where no source speaks of a dome.
  it('begins with 5/32 in at the tips of a steel-string on 28 ft, and level wings beside a tie block', () => {
    const steel = usualSole(steelProject, 76.2);
    expect(steel.wing).toEqual({ tip: 3.96875, inner: 9.525, begin: 43.1 });
    expect(steel.top.across).toBeCloseTo(8534.4, 9);
    const classical = KINDS.find(({ id }) => id === 'classical')?.make('p', '2026-01-01T00:00:00Z') ?? steelProject;
    expect(usualSole(classical, 95).wing).toEqual({ tip: 3.5, inner: 3.5, begin: 40 });
    expect(usualSole(classical, 95).top.across).toBeNull();
  });
});
