import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { arcOver } from '../../../../src/core/height/sole/arcOver';

const turned = (angle: number) => (x: number, y: number) => ({
  x: x * Math.cos(angle) - y * Math.sin(angle),
  y: x * Math.sin(angle) + y * Math.cos(angle),
});

describe('arcOver', () => {
  // Chord 8, rise 2: R = (4² + 2²)/(2·2) = 5, centre at −3; 3 beside the middle the circle stands at √(25 − 9) − 3 = 1.
  it('finds the circle of three points', () => {
    const arc = arcOver([
      { x: -4, y: 0 },
      { x: 0, y: 2 },
      { x: 4, y: 0 },
    ]);
    expect(arc.radius).toBeCloseTo(5, 6);
    expect(arc.deviation).toBeCloseTo(0, 6);
    expect(arc.at(3)).toBeCloseTo(1, 6);
    expect(arc.at(-4)).toBeCloseTo(0, 9);
  });

  it('finds it on a slant too', () => {
    const place = turned(0.1);
    const arc = arcOver([place(-4, 0), place(0, 2), place(4, 0)]);
    expect(arc.radius).toBeCloseTo(5, 6);
    const top = place(0, 2);
    expect(arc.at(top.x)).toBeCloseTo(top.y, 6);
  });

  it('is straight where nothing rises, and where the middle sags', () => {
    const line = arcOver([
      { x: 0, y: 1 },
      { x: 2, y: 2 },
      { x: 4, y: 3 },
    ]);
    expect(line).toMatchObject({ radius: null });
    expect(line.deviation).toBeCloseTo(0, 12);
    expect(line.at(6)).toBeCloseTo(4, 12);
    const sags = arcOver([
      { x: 0, y: 0 },
      { x: 2, y: -0.3 },
      { x: 4, y: 0 },
    ]);
    expect(sags).toMatchObject({ radius: null, deviation: 0.3 });
    expect(
      arcOver([
        { x: 0, y: 1 },
        { x: 4, y: 3 },
      ]).at(2),
    ).toBeCloseTo(2, 12);
  });

  // Points at ±h/2 about the circle of rise r at the middle and its neighbour: the best arc leaves some of it at each.
  it('leaves what no circle meets', () => {
    const arc = arcOver([
      { x: -4, y: 0 },
      { x: -2, y: 0.3 },
      { x: 2, y: 0.5 },
      { x: 4, y: 0 },
    ]);
    // Alike on both sides of the middle, the best arc passes half way between: 0.1 from each.
    expect(arc.deviation).toBeCloseTo(0.1, 6);
    expect(arc.at(2)).toBeCloseTo(0.4, 6);
  });

  it('finds any circle that its points lie on (seeded)', () => {
    const figures = fc.record({
      radius: fc.double({ min: 150, max: 1000, noNaN: true }),
      tilt: fc.double({ min: -0.05, max: 0.05, noNaN: true }),
    });
    fc.assert(
      fc.property(figures, ({ radius, tilt }) => {
        const place = turned(tilt);
        const points = [-27, -16, -5, 6, 17, 27].map((x) => place(x, Math.sqrt(radius * radius - x * x)));
        const arc = arcOver(points);
        expect(Math.abs((arc.radius ?? 0) / radius - 1)).toBeLessThan(1e-6);
        expect(arc.deviation).toBeLessThan(1e-6);
      }),
      { seed: 3, numRuns: 200 },
    );
  });

  it('refuses points that are no row', () => {
    expect(() => arcOver([{ x: 0, y: 0 }])).toThrow(RangeError);
    expect(() =>
      arcOver([
        { x: 1, y: 0 },
        { x: 0, y: 0 },
      ]),
    ).toThrow(RangeError);
  });
});
