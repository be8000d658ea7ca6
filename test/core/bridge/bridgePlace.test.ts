import { describe, expect, it } from 'vitest';
import { bridgePlace } from '../../../src/core/bridge/bridgePlace';
import { footprintOf } from '../../../src/core/bridge/footprintOf';
import { slotPlace } from '../../../src/core/bridge/slotPlace';
import { pathBounds } from '../../../src/core/geom/pathBounds';
import { steelProject } from '../document/steelProject';
import { valueOf as answerOf, codesOf } from '../document/valueOf';

const { bridge } = steelProject;
const saddle = { centre: 647.778125, slope: -2.38125 / 54, strings: [] };
const slot = answerOf(slotPlace(bridge.slot, saddle));

describe('bridgePlace', () => {
  // Slot front 646.189082 by bench arithmetic, less 7.4.
  it('hangs the front edge ahead of the slot front', () => {
    const place = answerOf(bridgePlace(bridge, 6, saddle, slot));
    expect(place.front).toBeCloseTo(638.789082, 6);
    const bounds = pathBounds(place.footprint.outline);
    expect(bounds.minY).toBeCloseTo(638.789082, 6);
    expect(bounds.maxY).toBeCloseTo(638.789082 + 34.925, 6);
    expect(place.points.map(({ id }) => id)).toEqual([
      'front-treble',
      'front-bass',
      'back-treble',
      'back-bass',
      'front-tip-treble',
      'front-tip-bass',
      'back-tip-treble',
      'back-tip-bass',
      'belly-treble',
      'belly-bass',
      'shoulder-treble',
      'shoulder-bass',
      'locating-treble',
      'locating-bass',
    ]);
    expect(place.points[0]?.at.x).toBeCloseTo(74.2, 9);
    expect(place.points[0]?.at.y).toBeCloseTo(638.789082, 6);
    expect(place.points.at(-2)?.at).toEqual(place.locating[0]?.centre);
    expect(place.pins).toHaveLength(6);
  });

  // The area does not depend on where the bridge stands: the tie-block's is 190 · 28.
  it('knows the area of its footprint', () => {
    const tied = {
      ...bridge,
      outline: { shape: 'tie-block' as const, parameters: { length: 190, full: 28, block: 80, corner: 0 } },
    };
    const place = answerOf(bridgePlace(tied, 6, saddle, slot));
    expect(place.area).toBeCloseTo(5320, 8);
    expect(place.footprint.faceLines[0]?.start.y).toBeCloseTo(638.789082, 6);
  });

  it('has no pins when there are none', () => {
    expect(answerOf(bridgePlace({ ...bridge, pins: null }, 6, saddle, slot)).pins).toEqual([]);
  });
});

describe('footprintOf', () => {
  it('fills dimensions that a project leaves out', () => {
    const footprint = answerOf(footprintOf({ shape: 'small-ukulele', parameters: { length: 100 } }));
    const bounds = pathBounds(footprint.outline);
    expect(bounds.maxX - bounds.minX).toBeCloseTo(100, 9);
    // 3/4 in wide: theamateurluthier.com, fall projects
    expect(bounds.maxY).toBeCloseTo(19.05, 9);
  });

  it('hands on what the shape refuses', () => {
    expect(codesOf(footprintOf({ shape: 'tie-block', parameters: { block: 250 } }))).toEqual(['tie-block.block']);
  });

  it('refuses a rounding too small to be drawn', () => {
    expect(codesOf(footprintOf({ shape: 'tie-block', parameters: { corner: 1e-8 } }))).toEqual(['outline.degenerate']);
  });
});
