import { describe, expect, it } from 'vitest';
import type { Hole, SaddlePlace } from '../../../../src/core/bridge/types';
import { checkMessage } from '../../../../src/core/checks/checkMessage';
import { heightFirst } from '../../../../src/core/checks/repair/heightFirst';
import { holeChecks } from '../../../../src/core/checks/repair/holeChecks';
import { repairAreaChecks } from '../../../../src/core/checks/repair/repairAreaChecks';
import { slotOverHoles } from '../../../../src/core/checks/repair/slotOverHoles';
import type { DesignCheck } from '../../../../src/core/checks/types';
import { rectanglePath } from '../../../../src/core/geom/rectanglePath';
import { holeMatch } from '../../../../src/core/repair/holeMatch';

const said = (check: DesignCheck | undefined): string =>
  check === undefined ? '' : `${check.verdict}: ${checkMessage(check, (mm) => `${mm.toFixed(2)} mm`)}`;

const row = (inches: number, y: number): readonly Hole[] =>
  [0, 1, 2, 3, 4, 5].map((index) => ({
    id: `${index}`,
    label: `hole ${index + 1}`,
    centre: { x: inches * 25.4 * (0.5 - index / 5), y },
    diameter: 5,
  }));
const string = (name: string, x: number) => ({ id: name, name, x }) as SaddlePlace['strings'][number];
const saddle: SaddlePlace = { centre: 647, slope: 0, strings: [string('E', 27), string('E', -27)] };
const checksOf = (drilled: number, old: number, back = 0, own = {}) =>
  holeChecks(holeMatch(row(drilled, 660), row(old, 660 + back), saddle, 2.684), own);

describe('holeChecks', () => {
  // 2 1/4 in against 2 3/16 in: half of 1.5875 mm at either end.
  it('says plug and redrill when no place of the bridge serves, and what differs', () => {
    const [holes, spread] = checksOf(2.25, 2.1875);
    expect(said(holes)).toBe(
      'look: Plug and redrill: wherever the bridge goes, an old hole lies 0.79 mm or more off its pin; 0.25 mm will do.',
    );
    expect(holes?.source).toBe('our own choice of tolerance, no source');
    expect(said(spread)).toBe('look: The new pins span 57.15 mm, the old holes 55.56 mm: they are wider by 1.59 mm.');
  });

  it('lets the maker set the limit', () => {
    const checks = checksOf(2.25, 2.1875, 0, { holeOff: 0.8 });
    expect(checks.map(said)).toEqual(['good: The old holes serve: the farthest lies 0.79 mm off its pin.']);
    expect(checks[0]?.source).toBe('set by the maker');
  });

  // 0.3 mm farther back at 2.684 cents per mm: 0.8 cents flat.
  it('tells the cost of moving the bridge where that would serve', () => {
    expect(checksOf(2.1875, 2.1875, 0.3).map(said)).toEqual([
      'look: Plug and redrill, or move the bridge: where the strings want it an old hole lies 0.30 mm off its pin, moved to the best match 0.00 mm. That costs E 0.8 cents flat.',
    ]);
    expect(checksOf(2.1875, 2.1875, 0.2).map(said)).toEqual([
      'good: The old holes serve: the farthest lies 0.20 mm off its pin.',
    ]);
  });

  it('says plug and redrill for another count of holes', () => {
    const checks = holeChecks(holeMatch(row(2.25, 660), row(2.25, 660).slice(1), saddle, 2.684), {});
    expect(checks.map(said)).toEqual(['look: Plug and redrill: 5 old holes cannot serve 6 pins one for one.']);
  });
});

describe('slotOverHoles', () => {
  const wall = { value: 3, source: 'a test' };
  const slot = rectanglePath(-35, 645, 70, 3);
  const hole = (y: number): readonly Hole[] => [{ id: 'h', label: 'old hole 1', centre: { x: 0, y }, diameter: 5 }];

  it('asks for wood around the old holes of a bridge that stays', () => {
    // From the back wall at 648, less half of 5.
    expect(slotOverHoles(slot, hole(654), true, wall).map(said)).toEqual([
      'good: The new slot clears the old holes by 3.50 mm.',
    ]);
    expect(slotOverHoles(slot, hole(652), true, wall).map(said)).toEqual([
      'look: The new slot clears the old holes by 1.50 mm only; 3.00 mm is usual.',
    ]);
    expect(slotOverHoles(slot, hole(649), true, wall)[0]?.verdict).toBe('wrong');
    expect(slotOverHoles(slot, hole(646), true, wall).map(said)).toEqual([
      'wrong: The new slot clears the old holes: they overlap by 3.50 mm.',
    ]);
  });

  it('asks only for a plug beneath a new bridge', () => {
    expect(slotOverHoles(slot, hole(652), false, wall)).toEqual([]);
    expect(slotOverHoles(slot, hole(649), false, wall)).toMatchObject([{ verdict: 'look' }]);
    expect(slotOverHoles(slot, [], true, wall)).toEqual([]);
  });
});

describe('repairAreaChecks', () => {
  const wall = { value: 2, source: 'a test' };

  it('looks at an old footprint that shows', () => {
    expect(said(repairAreaChecks(304.8, null, {}, wall)[0])).toContain('shows beside the new bridge over 305 mm²');
    expect(repairAreaChecks(0.9, null, {}, wall).map(said)).toEqual(['good: The new bridge covers the old footprint.']);
    expect(repairAreaChecks(304.8, null, { showing: 305 }, wall)[0]).toMatchObject({
      verdict: 'good',
      source: 'set by the maker',
    });
  });

  it.each([
    ['inside', 0, 'good'],
    ['partly', 0, 'look'],
    ['clear', 1.5, 'look'],
    ['clear', 2.5, 'good'],
  ] as const)('a new slot %s, %f mm away: %s', (lies, wallLeft, verdict) => {
    expect(repairAreaChecks(0, { lies, wall: wallLeft, at: [] }, {}, wall)[1]).toMatchObject({
      id: 'repair-fill',
      verdict,
    });
  });
});

describe('heightFirst', () => {
  it('asks for the straightedge before the old bridge is copied', () => {
    const height = { kind: 'steel' as const, pickup: 0, run: 9.5 };
    expect(heightFirst({ ...height, straightedge: null }).verdict).toBe('look');
    expect(heightFirst({ ...height, straightedge: 0.5 }).verdict).toBe('good');
  });
});
