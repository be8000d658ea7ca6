import { describe, expect, it } from 'vitest';
import { createAround } from '../../../../src/core/derive/createAround';
import { createDerive } from '../../../../src/core/derive/createDerive';
import type { Body } from '../../../../src/core/document/bodyTypes';
import type { Hand } from '../../../../src/core/document/types';
import { clipToBounds } from '../../../../src/core/drawing/body/clipToBounds';
import { wordsAlong } from '../../../../src/core/drawing/body/wordsAlong';
import { buildDrawing } from '../../../../src/core/drawing/buildDrawing';
import { drawAround } from '../../../../src/core/drawing/drawAround';
import type { Item } from '../../../../src/core/drawing/types';
import { pathBounds } from '../../../../src/core/geom/pathBounds';
import { bodied, braceWith, plateWith } from '../../body/bodyCase';
import { steelProject } from '../../document/steelProject';

/** The legs of an X that meet ahead of the bridge, the bass one longer, and a plate that lies 6 to the bass side. */
const body: Partial<Body> = {
  braces: [
    braceWith({ name: 'X-leg, bass', from: { x: 0, y: 588 }, to: { x: -172.5, y: 738 } }),
    braceWith({ id: 'b2', name: 'X-leg, treble', from: { x: 0, y: 588 }, to: { x: 115, y: 688 } }),
  ],
  plate: plateWith({ aside: -6 }),
  soundhole: { centre: 500, across: 100, along: null },
  cutaway: { side: 'treble', aside: 40, end: 450 },
  wireHole: { at: { x: -30, y: 648 }, diameter: 2.5 },
};

const drawn = (strung: Hand, of: Partial<Body> = body) => {
  const project = bodied(steelProject, of, strung);
  const derived = createDerive()(project);
  const view = { hand: strung, datum: 'front' as const, style: { unit: 'mm' as const, decimals: 1 as const } };
  const { over } = drawAround(project, derived, createAround(() => null)(project, derived), view);
  return { body: over.filter(({ layer }) => layer === 'body'), bridge: buildDrawing(derived, view) };
};

const boxOf = (items: readonly Item[], part: string) => {
  const boxes = items.flatMap((item) =>
    item.kind === 'path' && item.part === part && item.role !== 'cross' ? [pathBounds(item.path)] : [],
  );
  if (boxes.length === 0) throw new Error(`no ${part}`);
  return {
    minX: Math.min(...boxes.map(({ minX }) => minX)),
    maxX: Math.max(...boxes.map(({ maxX }) => maxX)),
  };
};

describe('the body in the drawing', () => {
  it('is dashed beneath the top, and its edges are those of a neighbouring part', () => {
    const roles = new Map(
      drawn('right').body.flatMap((item) => (item.kind === 'path' ? [[item.part, item.role]] : [])),
    );
    expect(roles.get('brace 1, X-leg, bass')).toBe('beneath');
    expect(roles.get('bridge plate')).toBe('beneath');
    expect(roles.get('soundhole')).toBe('board-edge');
    expect(roles.get('cutaway')).toBe('board-edge');
  });

  it('shows both sides of a brace, as wide as it is apart', () => {
    const sides = drawn('right').body.filter(({ id, kind }) => /^body-b1-/.test(id) && kind === 'path');
    const [one, other] = sides.map((item) => (item.kind === 'path' ? item.path.start : { x: 0, y: 0 }));
    expect(sides).toHaveLength(2);
    // 8 wide, square to a leg that runs 1.15 across for 1 along: 8/√(1 + 1.15²) across.
    expect(Math.abs((one?.x ?? 0) - (other?.x ?? 0))).toBeCloseTo(8 / Math.hypot(1, 1.15), 9);
    expect(Math.abs((one?.y ?? 0) - (other?.y ?? 0))).toBeCloseTo((8 * 1.15) / Math.hypot(1, 1.15), 9);
  });

  it('of a converted instrument keeps its braces while the pins change side', () => {
    const own: Partial<Body> = { ...body, hand: 'right' };
    const [right, left] = [drawn('right', own), drawn('left', own)];
    const lines = ({ body: items }: typeof right) => items.filter(({ kind }) => kind === 'path');
    expect(lines(left)).toEqual(lines(right));
    expect(left.body.map(({ id }) => id)).toEqual(right.body.map(({ id }) => id));
    const [pin, other] = [boxOf(right.bridge, 'pin 1'), boxOf(left.bridge, 'pin 1')];
    expect(pin.minX).toBeGreaterThan(0);
    expect(other.maxX).toBeCloseTo(-pin.minX, 9);
    expect(other.minX).toBeCloseTo(-pin.maxX, 9);
  });

  it('changes side with the strings when it was built for their hand', () => {
    const [right, left] = [drawn('right').body, drawn('left').body];
    for (const part of ['brace 1, X-leg, bass', 'bridge plate', 'pickup wire hole', 'cutaway']) {
      const [one, other] = [boxOf(right, part), boxOf(left, part)];
      expect(other.minX).toBeCloseTo(-one.maxX, 9);
      expect(other.maxX).toBeCloseTo(-one.minX, 9);
    }
    // The bass is on the left of a right-handed guitar.
    expect(boxOf(right, 'bridge plate')).toEqual({ minX: -56, maxX: 44 });
  });

  it('keeps every word readable, along its brace, whichever the hand', () => {
    for (const strung of ['right', 'left'] as const) {
      const items = drawn(strung).body;
      const words = items.flatMap((item) => (item.kind === 'text' ? [item] : []));
      expect(words.map(({ text }) => text)).toEqual([
        'soundhole',
        'cutaway',
        'X-leg, bass',
        'X-leg, treble',
        'bridge plate',
      ]);
      for (const { angle } of words) expect(Math.abs(angle)).toBeLessThanOrEqual(Math.PI / 2);
      const [, , bass] = words;
      // The bass leg runs down to the left on a right-handed guitar: its words climb to the right.
      const climb = Math.atan2(1, 1.15) * (strung === 'right' ? -1 : 1);
      expect(bass?.angle).toBeCloseTo(climb, 9);
      // And stand on the middle of the leg.
      const sign = strung === 'right' ? -1 : 1;
      expect(bass?.at.x).toBeCloseTo(sign * 1.15 * ((bass?.at.y ?? 0) - 588), 6);
    }
  });

  it('says of a brace that it was not found yet', () => {
    const guess = { braces: [braceWith({ name: 'bar', read: false })] };
    expect(drawn('right', guess).body.flatMap((item) => (item.kind === 'text' ? [item.text] : []))).toEqual(['bar?']);
  });

  it('goes no farther than 260 around the bridge', () => {
    const far = {
      braces: [braceWith({ from: { x: -300, y: 60 }, to: { x: 300, y: 1200 } })],
      soundhole: { centre: 200, across: 100, along: null },
    };
    const { body: items } = drawn('right', far);
    expect(items.some(({ part }) => part === 'soundhole')).toBe(false);
    // Half the bridge, 76.2, and 260.
    const { minX, maxX } = boxOf(items, 'brace 1, leg');
    expect(minX).toBeGreaterThanOrEqual(-336.2 - 1e-9);
    expect(maxX).toBeLessThanOrEqual(336.2 + 1e-9);
    for (const item of items)
      if (item.kind === 'path') expect(pathBounds(item.path).minY).toBeGreaterThan(638.789 - 260.01);
  });
});

describe('clipToBounds', () => {
  const bounds = { minX: 0, maxX: 10, minY: 0, maxY: 10 };

  it.each([
    ['through both sides', [-5, 5, 15, 5], [0, 5, 10, 5]],
    ['across a corner', [-5, 0, 5, 10], [0, 5, 5, 10]],
    ['inside', [2, 2, 3, 4], [2, 2, 3, 4]],
  ] as const)('%s', (_, [x, y, toX, toY], [a, b, c, d]) =>
    expect(clipToBounds({ x, y }, { x: toX, y: toY }, bounds)).toEqual([
      { x: a, y: b },
      { x: c, y: d },
    ]),
  );

  it('is nothing outside', () => {
    expect(clipToBounds({ x: 11, y: 0 }, { x: 11, y: 10 }, bounds)).toBeNull();
    expect(clipToBounds({ x: -6, y: 5 }, { x: 5, y: 16 }, bounds)).toBeNull();
  });
});

describe('wordsAlong', () => {
  const bridge = { minX: -50, maxX: 50, minY: 0, maxY: 30 };

  it('stand ahead of the bridge where there is room', () => {
    const { at, angle } = wordsAlong({ x: 0, y: -100 }, { x: 0, y: 100 }, 20, bridge);
    expect(at.x).toBe(0);
    // 10 of words and 4 of air ahead of the front edge, within a step of 4.
    expect(at.y).toBeLessThanOrEqual(-14);
    expect(at.y).toBeGreaterThan(-18.001);
    expect(angle).toBeCloseTo(Math.PI / 2, 12);
  });

  it('stand behind it where there is none, and in the middle where there is none at all', () => {
    const behind = wordsAlong({ x: 0, y: 10 }, { x: 0, y: 100 }, 20, bridge).at.y;
    expect(behind).toBeGreaterThanOrEqual(44);
    expect(behind).toBeLessThan(48.001);
    expect(wordsAlong({ x: -20, y: 10 }, { x: 20, y: 10 }, 20, bridge)).toEqual({ at: { x: 0, y: 10 }, angle: 0 });
    expect(wordsAlong({ x: 20, y: 10 }, { x: -20, y: 10 }, 100, bridge).angle).toBeCloseTo(0, 12);
  });
});
