import { describe, expect, it } from 'vitest';
import { crownPlace, thicknessNeeded } from '../../../src/core/bridge/crownReach';
import { saddlePlace } from '../../../src/core/bridge/saddlePlace';
import { ok } from '../../../src/core/result';
import { CROWN_OF_WORKED } from '../../reference/bench';
import { WORKED } from '../../reference/intonation-worked';
import { steelProject } from '../document/steelProject';
import { valueOf as answerOf } from '../document/valueOf';

describe('crownPlace', () => {
  // A straight saddle 3 thick, face at 100: a mark at 101.2 lies 1.2 from the face, 0.4 of the thickness.
  it('finds the mark in the thickness', () => {
    const place = crownPlace(101.2, 100, 3, 0, 0.3);
    expect(place.share).toBeCloseTo(0.4, 12);
    expect(place.fromFace).toBeCloseTo(1.2, 12);
    expect(place.shaped).toBeCloseTo(1.2, 12);
    expect(place.reached).toBe(true);
    expect(place.left).toBeCloseTo(0, 12);
  });

  // Land 0.3: from 0.3 to 2.7. Marks ahead of and behind that stay off by the rest: + too far back.
  it.each([
    [100.3, 0.3, true, 0],
    [100.1, 0.3, false, 0.2],
    [99.5, 0.3, false, 0.8],
    [102.7, 2.7, true, 0],
    [103.5, 2.7, false, -0.8],
  ])('a mark at %d is shaped %d from the face: reached %s, left %d', (wanted, shaped, reached, left) => {
    const place = crownPlace(wanted, 100, 3, 0, 0.3);
    expect(place.shaped).toBeCloseTo(shaped, 12);
    expect(place.reached).toBe(reached);
    expect(place.left).toBeCloseTo(left, 12);
  });

  // Slope 0.75: √(1 + 0.5625) = 1.25, so 2.5 along the centreline are 2 across the saddle; 0.5 short across, 0.625 along.
  it('works across a slanted saddle and answers along the centreline', () => {
    expect(crownPlace(102.5, 100, 3, 0.75, 0.3).fromFace).toBeCloseTo(2, 12);
    const far = crownPlace(104, 100, 3, -0.75, 0.3);
    expect(far.fromFace).toBeCloseTo(3.2, 12);
    expect(far.shaped).toBeCloseTo(2.7, 12);
    expect(far.left).toBeCloseTo(-0.625, 12);
  });

  it('breaks in the middle of a saddle with no more than the land', () => {
    expect(crownPlace(100.1, 100, 0.6, 0, 0.3).shaped).toBeCloseTo(0.3, 12);
    expect(crownPlace(100.1, 100, 0.4, 0, 0.3).shaped).toBeCloseTo(0.2, 12);
  });
});

describe('thicknessNeeded', () => {
  // 2 × 0.908 + 2 × 0.3; the slant of 1.742° takes 0.0008 off it.
  it('is twice the worst miss and the land on both sides', () => {
    const { worst, angleDeg } = WORKED.minimax.fit;
    expect(thicknessNeeded(worst, 0, 0.3)).toBeCloseTo(2.416, 12);
    const needed = thicknessNeeded(worst, -Math.tan((angleDeg * Math.PI) / 180), 0.3);
    expect(needed).toBeCloseTo(CROWN_OF_WORKED.needed, 2);
    // 3/32 in just fails, 1/8 in passes.
    expect(needed).toBeGreaterThan(CROWN_OF_WORKED.fails);
    expect(needed).toBeLessThan(CROWN_OF_WORKED.passes);
  });

  it('does what it says: on the line with the least worst miss the least saddle reaches every mark, a hair less does not', () => {
    const { compensation, bridge } = steelProject;
    const places = [27, 16.2, 5.4, -5.4, -16.2, -27].map((saddleX, index) => ({
      id: `s${index + 1}`,
      name: `${index + 1}`,
      nutX: 0,
      saddleX,
    }));
    const own = Object.fromEntries(WORKED.fit.map((setback, index) => [`s${index + 1}`, setback]));
    const scale = { scaleLength: 645, nutOffset: 0, from: 'entered', readings: 0, readingSpread: 0 } as const;
    const board = { nutWidth: 46, taper: 0.034, twelfth: 322.5, bodyJoin: 357.6, octave: 645 };
    const fit = { ...compensation.fit, line: 'minimax' } as const;
    const reached = (width: number): boolean =>
      answerOf(
        saddlePlace(
          { ...compensation, by: 'own', own, fit },
          { ...bridge.slot, width },
          scale,
          board,
          places,
          ok([]),
          0.3,
        ),
      ).strings.every(({ crown }) => crown.reached);
    expect(reached(CROWN_OF_WORKED.fails)).toBe(false);
    expect(reached(CROWN_OF_WORKED.passes)).toBe(true);
    expect(reached(2.41)).toBe(false);
    expect(reached(2.42)).toBe(true);
  });
});
