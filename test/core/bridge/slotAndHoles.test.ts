import { describe, expect, it } from 'vitest';
import { footprintOf } from '../../../src/core/bridge/footprintOf';
import { freeLocatingPoints, locatingHoles } from '../../../src/core/bridge/locatingHoles';
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
  rise: 0,
  ramp: null,
};

const footprint = answerOf(footprintOf(steelProject.bridge.outline)).outline;

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

  // The outline of the open slot ends on the bridge's ends, x = ±76.2, where the belly bridge's ends are straight and square.
  it('runs out of both ends of the bridge where it is open, whatever its length', () => {
    const { outline } = steelProject.bridge;
    const place = answerOf(slotPlace({ ...slot, run: 'open', length: 10 }, slanted, outline));
    const slope = -2.38125 / 54;
    expectAt(place.ends.treble, 76.2, 647.778125 + slope * 76.2);
    expectAt(place.ends.bass, -76.2, 647.778125 - slope * 76.2);
    const half = 1.5875 / COS;
    expectAt(place.outline.start, -76.2, 647.778125 - slope * 76.2 - half);
    expectAt(place.outline.segments[0]?.to, 76.2, 647.778125 + slope * 76.2 - half);
    expectAt(place.outline.segments[1]?.to, 76.2, 647.778125 + slope * 76.2 + half);
    // A parallelogram 152.4 across and 3.175 / cos along.
    expect(pathArea(place.outline)).toBeCloseTo((152.4 * 3.175) / COS, 4);
  });

  it('refuses an open slot that misses the bridge', () => {
    const { outline } = steelProject.bridge;
    expect(codesOf(slotPlace({ ...slot, run: 'open', fromFront: 60 }, slanted, outline))).toEqual(['slot.outside']);
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

  // Five pins over 48 with the middle 4 back: radius (24² + 4²) / 8 = 74; at 12 off the middle √(74² − 12²) = 73.0205, so
  // that pin lies 74 − 73.0205 = 0.9795 ahead of the middle one, and the outer ones 4.
  it('lays a row on an arc, its middle behind its ends, evenly along the chord', () => {
    const pins = pinHoles(
      { ...usualPins, spread: 48, row: 'arc', rise: 4 },
      5,
      answerOf(slotPlace(slot, square)),
      square,
    );
    const middle = 633 + 1.5875 + 9.525;
    for (const [index, [x, ahead]] of [
      [24, 4],
      [12, 0.9795],
      [0, 0],
      [-12, 0.9795],
      [-24, 4],
    ].entries()) {
      expect(pins[index]?.centre.x).toBeCloseTo(x ?? 0, 9);
      expect(pins[index]?.centre.y).toBeCloseTo(middle - (ahead ?? 0), 4);
    }
  });

  it('turns the chord of an arc with the slot, and bends it the other way for a middle ahead', () => {
    const pins = pinHoles({ ...usualPins, row: 'arc', rise: -3 }, 3, at, slanted);
    // Square to the chord by 3 from the line of the outer pins to the middle one.
    const [one, two, three] = pins.map(({ centre }) => centre);
    if (!one || !two || !three) throw new Error('Three pins were asked for.');
    expect((one.y - three.y) / (one.x - three.x)).toBeCloseTo(-2.38125 / 54, 9);
    expect(two.x).toBeCloseTo(0, 9);
    const chordAtMiddle = (one.y + three.y) / 2 - ((one.x + three.x) / 2) * (-2.38125 / 54);
    expect((two.y - chordAtMiddle) * COS).toBeCloseTo(-3, 5);
  });

  it('is a straight row with no rise', () => {
    const straight = pinHoles(usualPins, 6, at, slanted);
    expect(pinHoles({ ...usualPins, row: 'arc' }, 6, at, slanted)).toEqual(straight);
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
    const holes = answerOf(
      locatingHoles(
        { site: 'slot-ends', drill: 1.5875, points: null, clearance: 0.5 },
        { ...slot, ends },
        at,
        slanted,
        pins,
        footprint,
        638.789,
      ),
    );
    expect(holes.map(({ id, diameter }) => [id, diameter])).toEqual([
      ['locating-treble', 1.5875],
      ['locating-bass', 1.5875],
    ]);
    expectAt(holes[0]?.centre, 36.5125 * COS, 647.778125 - 36.5125 * SIN);
    expectAt(holes[1]?.centre, -36.5125 * COS, 647.778125 + 36.5125 * SIN);
  });

  it('are the outer pin holes, at their own drill', () => {
    const holes = answerOf(
      locatingHoles(
        { site: 'outer-pin-holes', drill: 2, points: null, clearance: 0.5 },
        slot,
        at,
        slanted,
        pins,
        footprint,
        638.789,
      ),
    );
    expect(holes.map(({ centre, diameter }) => [centre, diameter])).toEqual([
      [pins[0]?.centre, 2],
      [pins[5]?.centre, 2],
    ]);
  });

  it.each([0, 1])('need two outer pins, not %s', (count) => {
    const few = pins.slice(0, count);
    expect(
      codesOf(
        locatingHoles(
          { site: 'outer-pin-holes', drill: 2, points: null, clearance: 0.5 },
          slot,
          at,
          slanted,
          few,
          footprint,
          638.789,
        ),
      ),
    ).toEqual(['locating.pins']);
  });

  // Footprint frame: 60 to the treble and 12.5 behind the front edge, which lies at 638.789.
  it('are two free points of the footprint', () => {
    const points = { treble: { x: 60, y: 12.5 }, bass: { x: -61, y: 11 } };
    const holes = answerOf(
      locatingHoles({ site: 'free', drill: 2, points, clearance: 0.5 }, slot, at, slanted, pins, footprint, 638.789),
    );
    expectAt(holes[0]?.centre, 60, 651.289);
    expectAt(holes[1]?.centre, -61, 649.789);
  });

  // Belly bridge 152.4 long, wings 25.4 deep: 0.8 · 76.2 = 60.96 out, and halfway back, before the belly begins at 52 + 40.
  it('begin well inside the wings when they have no place yet', () => {
    const { treble, bass } = freeLocatingPoints(footprint);
    expect(treble.x).toBeCloseTo(60.96, 9);
    expect(bass.x).toBeCloseTo(-60.96, 9);
    expect(treble.y).toBe(bass.y);
    expect(treble.y).toBeGreaterThanOrEqual(25.4 / 2 - 1e-9);
    expect(treble.y).toBeLessThan(34.925 / 2);
  });

  // The bridge's ends at ±76.2 along the slot's middle, less 6 along the slant.
  it('lie 6 in from the ends of the bridge in an open slot', () => {
    const open = { ...slot, run: 'open' as const };
    const through = answerOf(slotPlace(open, slanted, steelProject.bridge.outline));
    const locating = { site: 'slot-ends' as const, drill: 1.5875, points: null, clearance: 0.5 };
    const holes = answerOf(locatingHoles(locating, open, through, slanted, pins, footprint, 638.789));
    expectAt(holes[0]?.centre, 76.2 - 6 * COS, 647.778125 - (2.38125 / 54) * 76.2 + 6 * SIN);
  });
});
