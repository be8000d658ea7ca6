import { describe, expect, it } from 'vitest';
import { linearDimension } from '../../../../src/core/drawing/dimensions/linearDimension';
import { LINE_STYLES } from '../../../../src/core/drawing/lineStyles';
import { idsOf, pairsOf, textOf } from './readItems';

const words = { id: 'd', part: 'pins', layer: 'dimensions', text: '55.0' } as const;

// All coordinates by hand: a witness line begins 0.8 mm from its point and runs 0.7 mm past the dimension line; an arrowhead
// is 2.2 mm long and 2.2·tan 15° = 0.589 mm to either side. The kinds of lines: ISO 129-1, from memory; sizes our own.
describe('linearDimension', () => {
  it('tells a distance across, toward the tail, from the farther point on', () => {
    const items = linearDimension({ x: -20, y: 3 }, { x: 35, y: 10 }, { ...words, direction: 'across', offset: 6 });
    expect(pairsOf(items, 'd-line')).toEqual([
      [-20, 16],
      [35, 16],
    ]);
    expect(pairsOf(items, 'd-witness-from')).toEqual([
      [-20, 3.8],
      [-20, 16.7],
    ]);
    expect(pairsOf(items, 'd-witness-to')).toEqual([
      [35, 10.8],
      [35, 16.7],
    ]);
    expect(pairsOf(items, 'd-arrow-from')).toEqual([
      [-17.8, 15.411],
      [-20, 16],
      [-17.8, 16.589],
    ]);
    expect(pairsOf(items, 'd-arrow-to')).toEqual([
      [32.8, 16.589],
      [35, 16],
      [32.8, 15.411],
    ]);
    const text = textOf(items, 'd-text');
    expect(text).toMatchObject({ text: '55.0', anchor: 'middle', angle: 0, part: 'pins', layer: 'dimensions' });
    expect(text.at.x).toBeCloseTo(7.5, 9);
    // 3.2 mm letters have capitals of 3.2·1493/2048 = 2.333 mm, so their middle is 1.166 + 1.5 above the line.
    expect(text.at.y).toBeCloseTo(16 - 2.6664, 4);
  });

  it('lies toward the nut for a negative offset, and its words below when asked', () => {
    const items = linearDimension(
      { x: -20, y: 3 },
      { x: 35, y: 10 },
      { ...words, direction: 'across', offset: -6, words: 'below' },
    );
    expect(pairsOf(items, 'd-line')).toEqual([
      [-20, -3],
      [35, -3],
    ]);
    expect(pairsOf(items, 'd-witness-to')).toEqual([
      [35, 9.2],
      [35, -3.7],
    ]);
    expect(textOf(items, 'd-text').at.y).toBeCloseTo(-3 + 2.6664, 4);
  });

  it.each([
    ['down', { x: 2, y: 0 }, { x: 5, y: 30 }],
    ['up', { x: 5, y: 30 }, { x: 2, y: 0 }],
  ])('tells a distance along, drawn %s, with words that read from below', (_way, from, to) => {
    const items = linearDimension(from, to, { ...words, direction: 'along', offset: 4 });
    for (const [x] of pairsOf(items, 'd-line')) expect(x).toBe(9);
    const text = textOf(items, 'd-text');
    expect(text.angle).toBeCloseTo(-Math.PI / 2, 12);
    // Seen with the head to the left, over the line is to its left.
    expect([text.at.x, text.at.y]).toEqual([expect.closeTo(9 - 2.6664, 4), expect.closeTo(15, 9)]);
  });

  // 3-4-5: the way (24, 32) is 40 long; clockwise of it as seen lies (−0.8, 0.6).
  it('tells a straight distance beside its own way', () => {
    const items = linearDimension({ x: 0, y: 0 }, { x: 24, y: 32 }, { ...words, direction: 'aligned', offset: 10 });
    expect(pairsOf(items, 'd-line')).toEqual([
      [-8, 6],
      [16, 38],
    ]);
    expect(pairsOf(items, 'd-witness-from')).toEqual([
      [-0.64, 0.48],
      [-8.56, 6.42],
    ]);
    const { angle, at } = textOf(items, 'd-text');
    expect((angle * 180) / Math.PI).toBeCloseTo(53.1301, 4);
    // Over the line: the middle (4, 22) moved by 2.6664 toward (0.8, −0.6).
    expect([at.x, at.y]).toEqual([expect.closeTo(4 + 2.1331, 4), expect.closeTo(22 - 1.5998, 4)]);
  });

  it('reads from the left or from below, whatever its direction', () => {
    for (let degrees = 0; degrees < 360; degrees += 5) {
      const turn = (degrees * Math.PI) / 180;
      const to = { x: 40 * Math.cos(turn), y: 40 * Math.sin(turn) };
      const items = linearDimension({ x: 0, y: 0 }, to, { ...words, direction: 'aligned', offset: 5 });
      const { angle } = textOf(items, 'd-text');
      expect(angle, `${degrees}°`).toBeGreaterThanOrEqual(-Math.PI / 2 - 1e-9);
      expect(angle, `${degrees}°`).toBeLessThan(Math.PI / 2 - 1e-9);
      expect(Math.sin(angle - turn)).toBeCloseTo(0, 9);
    }
  });

  it('has its arrowheads outside where there is no room between', () => {
    const items = linearDimension({ x: 0, y: 0 }, { x: 2, y: 0 }, { ...words, direction: 'across', offset: 5 });
    expect(pairsOf(items, 'd-line')).toEqual([
      [-4.4, 5],
      [6.4, 5],
    ]);
    expect(pairsOf(items, 'd-arrow-from')[0]?.[0]).toBe(-2.2);
    expect(pairsOf(items, 'd-arrow-from')[1]).toEqual([0, 5]);
    expect(pairsOf(items, 'd-arrow-to')[1]).toEqual([2, 5]);
    expect(pairsOf(items, 'd-arrow-to')[2]?.[0]).toBe(4.2);
  });

  it('tells a distance of nothing', () => {
    for (const direction of ['across', 'along', 'aligned'] as const) {
      const items = linearDimension({ x: 1, y: 1 }, { x: 1, y: 1 }, { ...words, direction, offset: 0 });
      expect(idsOf(items)).toEqual(['d-line', 'd-arrow-from', 'd-arrow-to', 'd-text']);
      expect(pairsOf(items, 'd-arrow-from')[1]).toEqual([1, 1]);
    }
  });

  it('reaches under words that are moved along it', () => {
    const items = linearDimension(
      { x: 0, y: 0 },
      { x: 10, y: 0 },
      { ...words, text: 'Pyramid', direction: 'across', offset: -5, slide: -20 },
    );
    // Table hmtx of the font, units of 2048: P 1111, y 1090, r 757, a 1129, m 1795, i 512, d 1170, together 7564; at 3.2 mm
    // 11.81875 mm, about x = 5 − 20.
    expect(textOf(items, 'd-text').at.x).toBe(-15);
    const [first, last] = pairsOf(items, 'd-line');
    expect(first?.[0]).toBeCloseTo(-20.909, 3);
    expect(last?.[0]).toBe(10);
  });

  it('runs on to a shelf that carries its words', () => {
    const items = linearDimension(
      { x: 0, y: 0 },
      { x: 0, y: 25 },
      { ...words, direction: 'along', offset: -4, shelf: { beyond: 8, side: 'right' } },
    );
    const [start, elbow, end] = pairsOf(items, 'd-line');
    expect([start, elbow]).toEqual([
      [-4, 0],
      [-4, 33],
    ]);
    expect(end?.[1]).toBe(33);
    const text = textOf(items, 'd-text');
    expect(text).toMatchObject({ anchor: 'start', angle: 0 });
    expect([text.at.x, text.at.y]).toEqual([expect.closeTo(-3.2, 9), expect.closeTo(33 - 2.6664, 4)]);
  });

  it('draws its lines thin and continuous', () => {
    const items = linearDimension({ x: 0, y: 0 }, { x: 40, y: 0 }, { ...words, direction: 'across', offset: 5 });
    const roles = new Set(items.filter(({ kind }) => kind === 'path').map(({ role }) => role));
    expect([...roles]).toEqual(['dimension']);
    expect(LINE_STYLES.dimension).toEqual({ width: 0.18, dash: [], fill: null });
    expect(new Set(idsOf(items)).size).toBe(items.length);
  });

  it('refuses what is not a number', () => {
    const at = { x: 0, y: 0 };
    expect(() => linearDimension(at, { x: Number.NaN, y: 0 }, { ...words, direction: 'across', offset: 5 })).toThrow(
      RangeError,
    );
    expect(() => linearDimension(at, at, { ...words, direction: 'across', offset: Number.POSITIVE_INFINITY })).toThrow(
      RangeError,
    );
  });
});
