import { describe, expect, it } from 'vitest';
import { isConverted } from '../../../src/core/body/bodyHand';
import { bodyPlace } from '../../../src/core/body/bodyPlace';
import { braceAcross, braceGap } from '../../../src/core/body/braceGap';
import { caulPasses } from '../../../src/core/body/caulPasses';
import { mirrorBody } from '../../../src/core/body/mirrorBody';
import { ovalPath } from '../../../src/core/body/ovalPath';
import { pathArea } from '../../../src/core/geom/pathArea';
import { pathBounds } from '../../../src/core/geom/pathBounds';
import { plainBridge } from '../checks/plainBridge';
import { bodied, bodyWith, braceWith, plateWith, stepOf } from './bodyCase';

const placed = (brace: Parameters<typeof braceWith>[0]) => {
  const [found] = bodyPlace(bodyWith({ braces: [braceWith(brace)] })).braces;
  if (found === undefined) throw new Error('no brace');
  return found;
};

describe('braceGap', () => {
  // By hand: distance of a point from a line, less half the brace and half the hole.
  it('is the wood beside a brace along the centreline', () => {
    expect(braceGap(placed({}), { x: 20, y: 650 }, 5)).toBeCloseTo(20 - 4 - 2.5, 12);
    expect(braceGap(placed({}), { x: -6, y: 650 }, 5)).toBeCloseTo(-0.5, 12);
  });

  it('is square to an oblique brace', () => {
    // On x + y = 615.25, so that (−21, 656.25) lies 20/√2 = 14.142136 off it.
    const brace = placed({ from: { x: 0, y: 615.25 }, to: { x: -100, y: 715.25 } });
    expect(braceGap(brace, { x: -21, y: 656.25 }, 5)).toBeCloseTo(7.642136, 6);
  });

  it('is taken from the end beyond it', () => {
    expect(braceGap(placed({}), { x: 3, y: 704 }, 2)).toBeCloseTo(5 - 4 - 1, 12);
  });
});

describe('braceAcross', () => {
  it('finds where a brace crosses a square line', () => {
    const leg = { from: { x: 0, y: 588 }, to: { x: 172.5, y: 738 } };
    // 1.15 across for 1 along: 62 behind the crossing of the legs 71.3 to the side.
    expect(braceAcross(leg, 650)).toBeCloseTo(71.3, 9);
    expect(braceAcross(leg, 580)).toBeNull();
    expect(braceAcross({ from: { x: -50, y: 600 }, to: { x: 50, y: 600 } }, 600)).toBeNull();
  });
});

describe('bodyPlace', () => {
  it('lays the plate as a trapezoid', () => {
    const { plate } = bodyPlace(bodyWith({ plate: plateWith({ aside: 3, acrossBack: 140 }) }));
    if (plate === null) throw new Error('no plate');
    expect(pathBounds(plate)).toEqual({ minX: -67, maxX: 73, minY: 630, maxY: 680 });
    // (100 + 140) / 2 · 50
    expect(pathArea(plate)).toBeCloseTo(6000, 9);
  });

  it('leaves out a brace whose points are one, and calls one without a name by its number', () => {
    const same = braceWith({ to: { x: 0, y: 600 } });
    const { braces } = bodyPlace(
      bodyWith({ braces: [same, braceWith({ id: 'b2', name: '  ' }), braceWith({ id: 'b3' })] }),
    );
    expect(braces.map(({ id, name, part }) => [id, name, part])).toEqual([
      ['b2', 'brace 2', 'brace 2'],
      ['b3', 'leg', 'brace 3, leg'],
    ]);
  });
});

describe('mirrorBody', () => {
  const built = bodyPlace(
    bodyWith({
      braces: [braceWith({ from: { x: -10, y: 600 } })],
      plate: plateWith({ aside: 5 }),
      wireHole: { at: { x: -30, y: 647 }, diameter: 2.5 },
      soundhole: { centre: 500, across: 100, along: null },
      cutaway: { side: 'treble', aside: 40, end: 450 },
    }),
  );

  it('puts everything on the other side and leaves the names', () => {
    const other = mirrorBody(built);
    expect(other.braces[0]).toMatchObject({ from: { x: 10, y: 600 }, name: 'leg' });
    expect(other.plate && pathBounds(other.plate)).toMatchObject({ minX: -55, maxX: 45 });
    expect(other.wireHole?.centre).toEqual({ x: 30, y: 647 });
    expect(other.cutaway?.side).toBe('bass');
  });

  it('is its own inverse', () => expect(mirrorBody(mirrorBody(built))).toEqual(built));
});

describe('isConverted', () => {
  it.each([
    [null, 'right', false],
    [null, 'left', false],
    ['right', 'right', false],
    ['right', 'left', true],
    ['left', 'right', true],
  ] as const)('body %s, strung %s: %s', (hand, instrument, converted) =>
    expect(isConverted(bodyWith({ hand }), instrument)).toBe(converted),
  );
});

describe('ovalPath', () => {
  it('is a true circle when it is as long as it is wide', () => {
    const circle = ovalPath({ x: 0, y: 500 }, 100, 100);
    expect(circle.segments.every(({ kind }) => kind === 'arc')).toBe(true);
  });

  it('is an ellipse otherwise: its box, and π/4 of it', () => {
    const oval = ovalPath({ x: 0, y: 500 }, 110, 80);
    const { minX, maxX, minY, maxY } = pathBounds(oval);
    for (const [found, expected] of [
      [minX, -55],
      [maxX, 55],
      [minY, 460],
      [maxY, 540],
    ] as const)
      expect(found).toBeCloseTo(expected, 4);
    expect(pathArea(oval)).toBeCloseTo((Math.PI / 4) * 110 * 80, 1);
  });
});

describe('caulPasses', () => {
  // A section 60 × 28.575 has a diagonal of 66.5; in an oval 60 × 100 it stands with its 60 along the 100.
  it.each([
    [66.4, null, false],
    [66.5, null, true],
    [60, 100, true],
    [30, 100, false],
  ] as const)('60 × 28.575 through %s × %s: %s', (across, along, passes) =>
    expect(caulPasses({ centre: 500, across, along }, 60, 28.575)).toBe(passes),
  );
});

describe('the reach from the soundhole', () => {
  // Hole 100 about 500: its back edge at 550. Bridge 190 × 28 from 639.75 on, slot middle 647, pins 656.25.
  const { reach } = stepOf(bodied(plainBridge(), { soundhole: { centre: 500, across: 100, along: null } }));

  it.each([
    ['front', 89.75],
    ['slot', 97],
    ['pins', 106.25],
    ['back', 117.75],
    // √(95² + 153.75²) − 50
    ['treble', 130.732],
    ['bass', 130.732],
  ])('to the %s is %f', (id, distance) =>
    expect(reach.find((each) => each.id === id)?.distance).toBeCloseTo(distance, 3),
  );
});
