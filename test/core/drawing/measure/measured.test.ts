import { describe, expect, it } from 'vitest';
import type { BridgePlace, SlotPlace } from '../../../../src/core/bridge/types';
import type { Anchor } from '../../../../src/core/document/dimensionTypes';
import { anchorPlace, anchorWords } from '../../../../src/core/drawing/measure/anchorPlace';
import { anchorsOf } from '../../../../src/core/drawing/measure/anchorsOf';
import { angleBetween, measureBetween } from '../../../../src/core/drawing/measure/measureBetween';
import { measuredOf, wantedWords } from '../../../../src/core/drawing/measure/measuredOf';
import { measuredFigure, measuredWords } from '../../../../src/core/drawing/measure/measuredWords';
import { wantedOf } from '../../../../src/core/drawing/measure/wantedOf';
import { rectanglePath } from '../../../../src/core/geom/rectanglePath';

/** A bridge of 100 by 30, its front edge at 600, with a slot of 60 by 3, its front wall at 610, and two pins; by hand. */
const BRIDGE: BridgePlace = {
  footprint: {
    outline: rectanglePath(-50, 600, 100, 30),
    points: [{ id: 'front-treble', label: 'front corner, treble', at: { x: 50, y: 600 } }],
    faceLines: [],
  },
  front: 600,
  area: 3000,
  pins: [
    { id: 'pin-1', label: 'pin 1', centre: { x: 24, y: 622 }, diameter: 5 },
    { id: 'pin-2', label: 'pin 2', centre: { x: -24, y: 629 }, diameter: 5 },
  ],
  pinRow: 622,
  locating: [{ id: 'locating-treble', label: 'locating pin, treble', centre: { x: 28.5, y: 611.5 }, diameter: 1.5 }],
  points: [],
};
const SLOT: SlotPlace = {
  outline: rectanglePath(-30, 610, 60, 3),
  front: 610,
  middle: 611.5,
  back: 613,
  ends: { treble: { x: 30, y: 611.5 }, bass: { x: -30, y: 611.5 } },
};
const pin = (number: number): Anchor => ({ kind: 'part', part: `pin ${number}`, feature: 'centre' });
const node = (number: number): Anchor => ({ kind: 'part', part: `node ${number}`, feature: 'itself' });
const show = (mm: number): string => `${mm.toFixed(2)} mm`;

describe('places to measure from', () => {
  it.each<[string, Anchor, { x: number; y: number } | null]>([
    ['centre of pin 1', pin(1), { x: 24, y: 622 }],
    ['treble end of the slot', { kind: 'part', part: 'slot', feature: 'treble end' }, { x: 30, y: 611.5 }],
    ['front wall of the slot', { kind: 'part', part: 'slot', feature: 'front wall' }, { x: 0, y: 610 }],
    ['front edge', { kind: 'part', part: 'footprint', feature: 'front edge' }, { x: 0, y: 600 }],
    ['front corner, treble', { kind: 'part', part: 'footprint', feature: 'front corner, treble' }, { x: 50, y: 600 }],
    ['a point', { kind: 'point', at: { x: 3, y: 4 } }, { x: 3, y: 604 }],
    ['centre of pin 9', pin(9), null],
    ['node 99', node(99), null],
    ['toString of the slot', { kind: 'part', part: 'slot', feature: 'toString' }, null],
  ])('%s', (words, anchor, place) => {
    expect(anchorPlace(anchor, BRIDGE, SLOT)).toEqual(place);
    expect(anchorWords(anchor)).toBe(words);
  });

  it('lists each once, nodes only of an outline that is drawn freely', () => {
    const keys = (drawn: boolean) => anchorsOf(BRIDGE, SLOT, drawn).map(({ anchor }) => anchorWords(anchor));
    expect(keys(false)).toContain('centre of locating pin, treble');
    expect(keys(false).join()).not.toContain('node');
    // A rectangle has four nodes.
    expect(keys(true).filter((words) => words.startsWith('node'))).toEqual(['node 1', 'node 2', 'node 3', 'node 4']);
    expect(new Set(keys(true)).size).toBe(keys(true).length);
    for (const { anchor, at } of anchorsOf(BRIDGE, SLOT, true)) expect(anchorPlace(anchor, BRIDGE, SLOT)).toEqual(at);
  });
});

describe('what is measured', () => {
  it('is a distance three ways: the 7-24-25 triangle doubled across', () => {
    // 48 across and 7 along: √(2304 + 49) = 48.5077.
    const between = measureBetween({ x: 24, y: 622 }, { x: -24, y: 629 });
    expect(between).toMatchObject({ across: 48, along: 7 });
    expect(between.straight).toBeCloseTo(48.5077, 4);
  });

  it.each([
    [{ x: 5, y: 0 }, { x: 0, y: 3 }, 90],
    [{ x: 5, y: 0 }, { x: -2, y: 0 }, 180],
    [{ x: 5, y: 0 }, { x: 1, y: 0 }, 0],
    [{ x: 1, y: 0 }, { x: 1, y: -1 }, 45],
    // The 3-4-5 triangle: atan(3/4).
    [{ x: 4, y: 3 }, { x: 1, y: 0 }, 36.8699],
  ])('is an angle: %j, %j', (from, to, degrees) => {
    expect(((angleBetween(from, { x: 0, y: 0 }, to) ?? Number.NaN) * 180) / Math.PI).toBeCloseTo(degrees, 4);
    expect(((angleBetween(to, { x: 0, y: 0 }, from) ?? Number.NaN) * 180) / Math.PI).toBeCloseTo(degrees, 4);
  });

  it('is no angle where a side has no length', () => {
    expect(angleBetween({ x: 0, y: 0 }, { x: 0, y: 0 }, { x: 1, y: 1 })).toBeNull();
  });

  it('is told in words and as one figure', () => {
    const wanted = wantedOf('distance', [pin(1), pin(2)], 'along');
    const measured = wanted && measuredOf(wanted, BRIDGE, SLOT);
    if (wanted === null || measured === null) throw new Error('nothing was measured');
    expect(measuredWords(measured, show)).toBe('48.51 mm straight, 48.00 mm across, 7.00 mm along');
    expect(measuredFigure(measured, 'along', show)).toBe('7.00 mm');
    expect(wantedWords(wanted)).toBe('centre of pin 1 to centre of pin 2');
  });

  it('is the wood between edges', () => {
    // Pin 1 lies 9 behind the slot's back wall; less 2.5.
    const gap = wantedOf('gap', [{ kind: 'part', part: 'slot', feature: 'edge' }, pin(1)], 'straight');
    const measured = gap && measuredOf(gap, BRIDGE, SLOT);
    expect(measured?.kind === 'gap' && measured.gap).toBeCloseTo(6.5, 6);
    expect(gap && wantedWords(gap)).toBe('edge of the slot to edge of pin 1');
    expect(measuredOf({ kind: 'gap', from: 'slot', to: 'slot' }, BRIDGE, SLOT)).toBeNull();
    expect(measuredOf({ kind: 'gap', from: 'slot', to: 'pin 7' }, BRIDGE, SLOT)).toBeNull();
  });

  it('is the angle at the second of three places', () => {
    const wanted = wantedOf(
      'angle',
      [pin(1), { kind: 'point', at: { x: 24, y: 0 } }, { kind: 'point', at: { x: 0, y: 0 } }],
      'straight',
    );
    const measured = wanted && measuredOf(wanted, BRIDGE, SLOT);
    // Straight back from the corner, and square to that.
    expect(measured && measuredWords(measured, show)).toBe('90.00°');
    expect(wanted && wantedWords(wanted)).toBe('at a point, from centre of pin 1 to a point');
  });

  it('waits for as many places as it takes', () => {
    expect(wantedOf('distance', [pin(1)], 'straight')).toBeNull();
    expect(wantedOf('angle', [pin(1), pin(2)], 'straight')).toBeNull();
    expect(wantedOf('gap', [pin(1), { kind: 'point', at: { x: 0, y: 0 } }], 'straight')).toBeNull();
  });
});
