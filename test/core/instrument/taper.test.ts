import { describe, expect, it } from 'vitest';
import { edgeMargins } from '../../../src/core/instrument/edgeMargins';
import { TAPER_LIMIT, taper } from '../../../src/core/instrument/taper';

// The 24th fret stands at three quarters of 640, 480 mm; the 12th at 320. Straight: 44 + 12 · 320/480 = 52.
const BOARD = {
  scaleLength: 640,
  nutOffset: 0,
  widths: { nut: 44, twelfth: 52, last: 56 },
  lastFret: 24,
  limit: TAPER_LIMIT.value,
};
const answer = (change: Partial<typeof BOARD>) => {
  const result = taper({ ...BOARD, ...change });
  return result.ok ? result.value : result.issues[0]?.code;
};

describe('taper', () => {
  it('passes a straight board (by hand)', () => {
    expect(answer({})).toEqual({ growth: 0.025, straightAtTwelfth: 52, deviation: 0, straight: true });
  });
  it('gives the sign and the size of a bulge and of a waist', () => {
    expect(answer({ widths: { nut: 44, twelfth: 52.3, last: 56 } })).toMatchObject({
      deviation: expect.closeTo(0.3, 9),
      straight: true,
    });
    expect(answer({ widths: { nut: 44, twelfth: 51.6, last: 56 } })).toMatchObject({
      deviation: expect.closeTo(-0.4, 9),
      straight: false,
    });
  });
  it('counts from the nut datum: a nut moved by −0.64 leaves 319.36 and 479.36', () => {
    // 44 + 12 · 319.36/479.36
    expect(answer({ nutOffset: -0.64 })).toMatchObject({ straightAtTwelfth: expect.closeTo(51.99466, 6) });
  });
  it('says what was expected', () => {
    expect(answer({ scaleLength: 0 })).toBe('taper.scale');
    expect(answer({ nutOffset: Number.NaN })).toBe('taper.scale');
    expect(answer({ lastFret: 12 })).toBe('taper.lastFret');
    expect(answer({ widths: { nut: 44, twelfth: 0, last: 56 } })).toBe('taper.width');
    expect(answer({ limit: -1 })).toBe('taper.limit');
  });
});

describe('edgeMargins', () => {
  const treble = { nutX: 18, saddleX: 27, diameter: 0.4 };
  const bass = { nutX: -18, saddleX: -27, diameter: 1.4 };
  it('runs from the edge to the outside of the strings (by hand)', () => {
    // Half way the centres stand at ±22.5; half of 52 less 22.5 less half a diameter.
    const half = edgeMargins(treble, bass, 640, { y: 320, width: 52 });
    expect(half.treble).toBeCloseTo(3.3, 12);
    expect(half.bass).toBeCloseTo(2.8, 12);
    expect(edgeMargins(treble, bass, 640, { y: 640, width: 54 }).treble).toBeCloseTo(-0.2, 12);
  });
  it('refuses what is not a figure', () => {
    expect(() => edgeMargins(treble, bass, 0, { y: 0, width: 44 })).toThrow(RangeError);
    expect(() => edgeMargins(treble, bass, 640, { y: Number.NaN, width: 44 })).toThrow(RangeError);
  });
});
