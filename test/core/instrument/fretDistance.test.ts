import { describe, expect, it } from 'vitest';
import { fretDistance } from '../../../src/core/instrument/fretDistance';
import { PITCH } from '../../reference/pitch';

describe('fretDistance', () => {
  it('puts the 1st fret of 650 mm at 650 / 17.8171537', () => {
    expect(fretDistance(650, 1)).toBeCloseTo(650 / PITCH.rule, 9);
    expect(fretDistance(1, 1)).toBeCloseTo(PITCH.firstFret, 12);
  });

  it('differs by 0.0003 mm from the rule cut short to 17.817', () => {
    expect(650 / 17.817 - fretDistance(650, 1)).toBeCloseTo(0.0003, 4);
  });

  // Halving at the octave is the definition of it.
  it.each([
    [0, 0],
    [12, 325],
    [24, 487.5],
  ])('puts fret %s of 650 mm at %s', (fret, distance) => {
    expect(fretDistance(650, fret)).toBeCloseTo(distance, 10);
  });

  it('leaves each fret a semitone of the one before', () => {
    for (let fret = 1; fret <= 24; fret += 1) {
      const left = (n: number) => 645 - fretDistance(645, n);
      expect(left(fret - 1) / left(fret)).toBeCloseTo(PITCH.semitone, 12);
    }
  });

  it.each([
    [0, 12],
    [-650, 12],
    [Number.NaN, 12],
    [Number.POSITIVE_INFINITY, 12],
    [650, -1],
    [650, Number.NaN],
    [650, Number.POSITIVE_INFINITY],
  ])('refuses scale %s, fret %s', (scale, fret) => {
    expect(() => fretDistance(scale, fret)).toThrow(RangeError);
  });
});
