import { describe, expect, it } from 'vitest';
import { roughOutline } from '../../../../src/core/geom/offset/roughOutline';
import type { Path } from '../../../../src/core/geom/types';

/** A circle of radius 10 mm about (20, 30). */
const CIRCLE: Path = {
  start: { x: 30, y: 30 },
  segments: [
    { kind: 'arc', to: { x: 10, y: 30 }, centre: { x: 20, y: 30 }, clockwise: true },
    { kind: 'arc', to: { x: 30, y: 30 }, centre: { x: 20, y: 30 }, clockwise: true },
  ],
  closed: true,
};

const cornersOf = ({ start, segments }: Path) => [start, ...segments.map(({ to }) => to)];

describe('roughOutline', () => {
  it('is made of lines that come back to their start, the fewer the farther they may stray', () => {
    const rough = roughOutline(CIRCLE, 0.02);
    expect(rough.segments.every(({ kind }) => kind === 'line')).toBe(true);
    expect(rough.segments.at(-1)?.to).toEqual(rough.start);
    // A chord of turn θ strays by r·θ²/8 from a circle: θ = √(8·0.02/10) = 0.1265, and 50 of them go around.
    expect(rough.segments).toHaveLength(50);
    expect(roughOutline(CIRCLE, 0.0004).segments.length).toBeGreaterThan(300);
  });

  it('keeps the area: π r² of a circle, by the shoelace formula on its corners', () => {
    const corners = cornersOf(roughOutline(CIRCLE, 0.02));
    const twice = corners.slice(1).reduce((sum, to, index) => {
      const from = corners[index] ?? to;
      return sum + from.x * to.y - to.x * from.y;
    }, 0);
    // The corners where its arcs meet stay on the circle: each takes half a chord's share away.
    expect(Math.abs(Math.abs(twice) / 2 - Math.PI * 100)).toBeLessThan(0.1);
  });

  it('strays no farther than asked', () => {
    const corners = cornersOf(roughOutline(CIRCLE, 0.02));
    for (const [index, to] of corners.slice(1).entries()) {
      const from = corners[index] ?? to;
      for (const { x, y } of [from, { x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 }])
        expect(Math.abs(Math.hypot(x - 20, y - 30) - 10)).toBeLessThanOrEqual(0.02);
    }
  });
});
