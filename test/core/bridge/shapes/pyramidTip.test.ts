import { describe, expect, it } from 'vitest';
import { pyramidTip } from '../../../../src/core/bridge/shapes/pyramidTip';
import { pathArea } from '../../../../src/core/geom/pathArea';
import { pathBounds } from '../../../../src/core/geom/pathBounds';
import { signedArea } from '../../../../src/core/geom/signedArea';
import { valueOf as answerOf, codesOf } from '../../document/valueOf';
import { expectSymmetric } from './outlineChecks';

const usual = { length: 152.4, full: 25.4, pyramid: 20 };

describe('pyramidTip', () => {
  it('is a rectangle from above', () => {
    const { outline } = answerOf(pyramidTip(usual));
    expect(pathBounds(outline)).toEqual({ minX: -76.2, minY: 0, maxX: 76.2, maxY: 25.4 });
    expect(pathArea(outline)).toBeCloseTo(152.4 * 25.4, 9);
    expect(signedArea(outline)).toBeGreaterThan(0);
    expectSymmetric(outline);
  });

  // 76.2 − 20 = 56.2 to the foot; the diagonals of a rectangle halve one another, at 66.2 and 12.7.
  it('names its corners, the feet of its pyramids and their points', () => {
    const { points } = answerOf(pyramidTip(usual));
    const expected = [
      ['front', 'front corner', 76.2, 0],
      ['back', 'back corner', 76.2, 25.4],
      ['pyramid-front', 'front of the pyramid', 56.2, 0],
      ['pyramid-back', 'back of the pyramid', 56.2, 25.4],
      ['pyramid-point', 'point of the pyramid', 66.2, 12.7],
    ] as const;
    expect(points).toEqual(
      expected.flatMap(([id, label, x, y]) =>
        ([1, -1] as const).map((side) => ({
          id: `${id}-${side === 1 ? 'treble' : 'bass'}`,
          label: `${label}, ${side === 1 ? 'treble' : 'bass'}`,
          at: { x: expect.closeTo(side * x, 9), y: expect.closeTo(y, 9) },
        })),
      ),
    );
  });

  it('draws each pyramid by its foot and two diagonals that cross under its point', () => {
    const { faceLines, points } = answerOf(pyramidTip(usual));
    const drawn = faceLines.map(({ start, segments, closed }) => [
      ...[start.x, start.y, segments[0]?.to.x ?? 0, segments[0]?.to.y ?? 0].map((mm) => Number(mm.toFixed(9))),
      closed,
    ]);
    expect(drawn).toEqual([
      [56.2, 0, 56.2, 25.4, false],
      [56.2, 0, 76.2, 25.4, false],
      [56.2, 25.4, 76.2, 0, false],
      [-56.2, 0, -56.2, 25.4, false],
      [-56.2, 0, -76.2, 25.4, false],
      [-56.2, 25.4, -76.2, 0, false],
    ]);
    // The middle of a diagonal is the point: mean of 56.2 and 76.2.
    expect(points.find(({ id }) => id === 'pyramid-point-bass')?.at.x).toBeCloseTo((-56.2 - 76.2) / 2, 9);
  });

  it.each([76.2, 100])('refuses pyramids of %s that take the whole bridge', (pyramid) => {
    expect(codesOf(pyramidTip({ ...usual, pyramid }))).toEqual(['pyramid-tip.long']);
  });

  it('takes pyramids that nearly meet', () => expect(pyramidTip({ ...usual, pyramid: 76 }).ok).toBe(true));
});
