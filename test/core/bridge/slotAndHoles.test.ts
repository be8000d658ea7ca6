import { describe, expect, it } from 'vitest';
import { locatingHoles } from '../../../src/core/bridge/locatingHoles';
import { pinHoles } from '../../../src/core/bridge/pinHoles';
import { slotPlace } from '../../../src/core/bridge/slotPlace';
import type { Pins } from '../../../src/core/document/types';
import { pathArea } from '../../../src/core/geom/pathArea';
import { pathBounds } from '../../../src/core/geom/pathBounds';
import type { Point } from '../../../src/core/geom/types';
import { EVEN_CENTRES } from '../../reference/trade';
import { steelProject } from '../document/steelProject';
import { valueOf as answerOf, codesOf } from '../document/valueOf';

/** Bass 2.38125 farther back over 54: slant 2.524949°, cosine 0.99902913, sine 0.04405441. */
const slanted = { centre: 647.778125, slope: -2.38125 / 54, strings: [] };
const square = { centre: 633, slope: 0, strings: [] };
const COS = 0.99902913;
const SIN = 0.04405441;
const { slot } = steelProject.bridge;
const usualPins: Pins = {
  from: 9.525,
  spread: 54,
  row: 'parallel',
  hole: 4.7625,
  stagger: 0,
  taper: 3,
  underHead: 5.4,
};

const expectAt = (point: Point | undefined, x: number, y: number): void => {
  expect(point?.x).toBeCloseTo(x, 5);
  expect(point?.y).toBeCloseTo(y, 5);
};

describe('slotPlace', () => {
  // Stadium: straights of length less width, and a whole circle. 73.025 · 3.175 + π · 1.5875².
  it('has round ends within its length', () => {
    const place = answerOf(slotPlace(slot, slanted));
    expect(pathArea(place.outline)).toBeCloseTo(73.025 * 3.175 + Math.PI * 1.5875 ** 2, 8);
    expect(place.middle).toBeCloseTo(647.778125, 9);
    expect(place.front).toBeCloseTo(647.778125 - 1.5875 / COS, 6);
    expect(place.back).toBeCloseTo(647.778125 + 1.5875 / COS, 6);
    // Half the length, 38.1, along the slant; the treble end nearer the nut.
    expectAt(place.ends.treble, 38.1 * COS, 647.778125 - 38.1 * SIN);
    expectAt(place.ends.bass, -38.1 * COS, 647.778125 + 38.1 * SIN);
    // The round end reaches half its length along the slant, so 36.5125 · cos + 1.5875 across.
    expect(pathBounds(place.outline).maxX).toBeCloseTo(36.5125 * COS + 1.5875, 5);
  });

  it('has square ends whose corners lie half a width to either side', () => {
    const place = answerOf(slotPlace({ ...slot, ends: 'square' }, slanted));
    expect(pathArea(place.outline)).toBeCloseTo(76.2 * 3.175, 8);
    const corners = [place.outline.start, ...place.outline.segments.map(({ to }) => to)];
    // (x, y) turned by −2.524949° is (x·cos + y·sin, y·cos − x·sin); first the bass end of the front wall, (−38.1, −1.5875).
    expectAt(corners[0], -38.1 * COS - 1.5875 * SIN, 647.778125 + 38.1 * SIN - 1.5875 * COS);
    expectAt(corners[1], 38.1 * COS - 1.5875 * SIN, 647.778125 - 38.1 * SIN - 1.5875 * COS);
    expectAt(corners[2], 38.1 * COS + 1.5875 * SIN, 647.778125 - 38.1 * SIN + 1.5875 * COS);
  });

  it('hangs a straight slot by its crown', () => {
    const place = answerOf(slotPlace({ ...slot, width: 2.5, crown: 0.2 }, square));
    expect([place.front, place.middle, place.back]).toEqual([632.5, 633.75, 635]);
  });

  it('refuses a slot no longer than wide', () => {
    expect(codesOf(slotPlace({ ...slot, length: 3, width: 3 }, square))).toEqual(['slot.short']);
  });
});

describe('pinHoles', () => {
  const at = answerOf(slotPlace(slot, slanted));
  const back = 647.778125 + 1.5875 / COS;

  it('lays six pins parallel to the slot, behind its back wall', () => {
    const pins = pinHoles(usualPins, 6, at, slanted);
    expect(pins.map(({ id, diameter }) => [id, diameter])).toEqual([1, 2, 3, 4, 5, 6].map((n) => [`pin-${n}`, 4.7625]));
    expectAt(pins[0]?.centre, 27 * COS, back + 9.525 - 27 * SIN);
    expectAt(pins[1]?.centre, 16.2 * COS, back + 9.525 - 16.2 * SIN);
    expectAt(pins[5]?.centre, -27 * COS, back + 9.525 + 27 * SIN);
  });

  it('lays four pins square to the centreline', () => {
    const pins = pinHoles({ ...usualPins, spread: 42, row: 'square' }, 4, at, slanted);
    expect(pins.map(({ centre }) => centre.x)).toEqual([21, 7, -7, -21]);
    for (const { centre } of pins) expect(centre.y).toBeCloseTo(back + 9.525, 5);
  });

  it.each([2, 3])('leaves five gaps, not six, between six pins: row %#', (which) => {
    const row = EVEN_CENTRES[which - 1];
    const pins = pinHoles({ ...usualPins, spread: row?.outer ?? 0 }, row?.count ?? 0, at, slanted);
    for (let index = 1; index < pins.length; index += 1) {
      const [a, b] = [pins[index - 1]?.centre, pins[index]?.centre];
      expect(Math.hypot((a?.x ?? 0) - (b?.x ?? 0), (a?.y ?? 0) - (b?.y ?? 0))).toBeCloseTo(row?.pitch ?? 0, 9);
    }
  });

  // Twelve pins over 55: 5 apart along the row; rows 6 apart, so that neighbours lie √(5² + 6²) = 7.81 apart.
  it('sets every second of twelve pins in a row behind the first', () => {
    const pins = pinHoles({ ...usualPins, spread: 55, row: 'square', stagger: 6 }, 12, at, slanted);
    expectAt(pins[0]?.centre, 27.5, back + 9.525);
    expectAt(pins[1]?.centre, 22.5, back + 15.525);
    expectAt(pins[11]?.centre, -27.5, back + 15.525);
    const [a, b] = [pins[4]?.centre, pins[5]?.centre];
    expect(Math.hypot((a?.x ?? 0) - (b?.x ?? 0), (a?.y ?? 0) - (b?.y ?? 0))).toBeCloseTo(7.8102, 4);
  });

  it('puts a lone pin on the centreline', () => {
    expect(pinHoles(usualPins, 1, at, slanted)[0]?.centre.x).toBe(0);
  });
});

describe('locatingHoles', () => {
  const at = answerOf(slotPlace(slot, slanted));
  const pins = pinHoles(usualPins, 6, at, slanted);

  // Half a slot width in from the end: 38.1 − 1.5875 = 36.5125 along the slant, the centre of a round end.
  it.each(['round', 'square'] as const)('lie half a width inside %s slot ends', (ends) => {
    const holes = answerOf(locatingHoles({ site: 'slot-ends', drill: 1.5875 }, { ...slot, ends }, at, slanted, pins));
    expect(holes.map(({ id, diameter }) => [id, diameter])).toEqual([
      ['locating-treble', 1.5875],
      ['locating-bass', 1.5875],
    ]);
    expectAt(holes[0]?.centre, 36.5125 * COS, 647.778125 - 36.5125 * SIN);
    expectAt(holes[1]?.centre, -36.5125 * COS, 647.778125 + 36.5125 * SIN);
  });

  it('are the outer pin holes, at their own drill', () => {
    const holes = answerOf(locatingHoles({ site: 'outer-pin-holes', drill: 2 }, slot, at, slanted, pins));
    expect(holes.map(({ centre, diameter }) => [centre, diameter])).toEqual([
      [pins[0]?.centre, 2],
      [pins[5]?.centre, 2],
    ]);
  });

  it.each([0, 1])('need two outer pins, not %s', (count) => {
    const few = pins.slice(0, count);
    expect(codesOf(locatingHoles({ site: 'outer-pin-holes', drill: 2 }, slot, at, slanted, few))).toEqual([
      'locating.pins',
    ]);
  });
});
