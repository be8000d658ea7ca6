import { describe, expect, it } from 'vitest';
import { hatchLines } from '../../../../src/core/drawing/repair/hatchLines';
import { rectanglePath } from '../../../../src/core/geom/rectanglePath';
import type { Path } from '../../../../src/core/geom/types';

const total = (paths: readonly Path[], apart: number, angle: number): number =>
  hatchLines(paths, apart, angle).reduce((sum, { from, to }) => sum + Math.hypot(to.x - from.x, to.y - from.y), 0);

describe('hatchLines', () => {
  it('draws level lines from edge to edge', () => {
    // Between 1 and 7.5 there are the multiples 2, 4 and 6.
    expect(hatchLines([rectanglePath(10, 1, 5, 6.5)], 2, 0)).toEqual(
      [2, 4, 6].map((y) => ({ from: { x: 10, y }, to: { x: 15, y } })),
    );
  });

  it('leaves out holes', () => {
    const hole = rectanglePath(12, 3, 1, 2);
    expect(hatchLines([rectanglePath(10, 1, 5, 6.5), hole], 4, 0)).toEqual([
      { from: { x: 10, y: 4 }, to: { x: 12, y: 4 } },
      { from: { x: 13, y: 4 }, to: { x: 15, y: 4 } },
    ]);
  });

  // Lines 0.5 mm apart that cover an area: their length together is the area over that, to the ends of the lines.
  it.each([0, 0.3, Math.PI / 4, 2])('covers the area evenly at a slope of %f', (angle) => {
    expect(total([rectanglePath(-30.1, 600.2, 60, 20)], 0.5, angle) * 0.5).toBeCloseTo(1200, -1.5);
  });

  it('never draws more than some hundred lines, and none for nothing', () => {
    expect(hatchLines([rectanglePath(0, 0, 1, 5000)], 1, 0).length).toBeLessThanOrEqual(301);
    expect(hatchLines([], 2, 0)).toEqual([]);
  });
});
