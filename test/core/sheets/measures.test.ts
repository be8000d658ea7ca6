import { describe, expect, it } from 'vitest';
import type { Item } from '../../../src/core/drawing/types';
import { calibrationSquare } from '../../../src/core/sheets/calibrationSquare';
import { frameOf } from '../../../src/core/sheets/frame';
import { longLineLengths, longLines } from '../../../src/core/sheets/longLines';
import { itemBox } from './itemBox';

const find = (items: readonly Item[], id: string): Item => {
  const found = items.find((item) => item.id === id);
  if (found === undefined) throw new Error(`There is no ${id}.`);
  return found;
};
const words = (items: readonly Item[], id: string): string => {
  const item = find(items, id);
  return item.kind === 'text' ? item.text : '';
};

describe('calibrationSquare', () => {
  // 4 in are 101.6 mm; 100 · √2 = 141.42; 4 · √2 = 5.65685 in, nearest 32nd 5 21/32 (5.65625).
  it.each([
    ['mm', 100, '100.0 × 100.0 mm', 'corner to corner 141.4 mm, both ways'],
    ['in', 101.6, '4 × 4 in', 'corner to corner 5 21/32 in, both ways'],
  ] as const)('in %s is %s mm square, and says so', (unit, side, size, diagonal) => {
    const items = calibrationSquare({ x: 20, y: 150 }, unit);
    const box = itemBox(find(items, 'calibration-square'));
    expect(box.minX).toBe(20);
    expect(box.minY).toBe(150);
    expect(box.maxX - box.minX).toBeCloseTo(side, 10);
    expect(box.maxY - box.minY).toBeCloseTo(side, 10);
    expect(words(items, 'square-size')).toBe(size);
    expect(words(items, 'square-diagonal')).toBe(diagonal);
  });

  // Ticks every 10 mm, or every half inch, on all four sides: 9 or 7 a side.
  it.each([
    ['mm', 10, 9],
    ['in', 12.7, 7],
  ] as const)('in %s has a tick every %s mm', (unit, step, count) => {
    const ticks = calibrationSquare({ x: 0, y: 0 }, unit).filter(({ id }) => id.startsWith('square-tick-top-'));
    expect(ticks).toHaveLength(count);
    for (const [index, tick] of ticks.entries()) expect(itemBox(tick).minX).toBeCloseTo((index + 1) * step, 9);
  });
});

describe('longLines', () => {
  // Free of a 10 mm margin, a 10 mm strip at the left and 20 mm at the foot: A4 leaves 180 × 257, on its side 267 × 170;
  // Letter 185.9 × 239.4, on its side 249.4 × 175.9. The longest whole 20 mm or inch in it.
  it.each([
    ['A4', 210, 297, 'mm', 180, 240],
    ['A4 on its side', 297, 210, 'mm', 260, 160],
    ['A4', 210, 297, 'in', 7 * 25.4, 10 * 25.4],
    ['Letter', 215.9, 279.4, 'mm', 180, 220],
    ['Letter', 215.9, 279.4, 'in', 7 * 25.4, 9 * 25.4],
    ['Letter on its side', 279.4, 215.9, 'in', 9 * 25.4, 6 * 25.4],
  ] as const)('on %s (%s × %s) in %s are %s across and %s along', (_, width, height, unit, across, along) => {
    const frame = frameOf(width, height);
    const lengths = longLineLengths(frame, unit);
    expect(lengths.across).toBeCloseTo(across, 9);
    expect(lengths.along).toBeCloseTo(along, 9);
    const items = longLines(frame, unit);
    const acrossBox = itemBox(find(items, 'long-across'));
    const alongBox = itemBox(find(items, 'long-along'));
    expect(acrossBox.maxX - acrossBox.minX).toBeCloseTo(across, 9);
    expect(acrossBox.maxY - acrossBox.minY).toBe(0);
    expect(alongBox.maxY - alongBox.minY).toBeCloseTo(along, 9);
    for (const item of items) {
      const box = itemBox(item);
      expect(Math.min(box.minX, box.minY, width - box.maxX, height - box.maxY)).toBeGreaterThan(6.4);
    }
  });

  it('say their lengths, and carry a figure where a rule shows one', () => {
    const items = longLines(frameOf(210, 297), 'mm');
    expect(words(items, 'long-note')).toContain('180.0 mm across, 240.0 mm along');
    const figures = items.flatMap((item) => (item.id.startsWith('long-across-figure') ? [words(items, item.id)] : []));
    expect(figures).toEqual(['0', '20', '40', '60', '80', '100', '120', '140', '160', '180']);
    expect(words(items, 'caution')).toContain('eyes and lungs covered');
    const inches = longLines(frameOf(215.9, 279.4), 'in');
    expect(words(inches, 'long-note')).toContain('7 in across, 9 in along');
    expect(words(inches, 'long-across-figure-28')).toBe('7');
    // The figure for 7 in stands at 7 in from the start.
    expect(find(inches, 'long-across-figure-28')).toMatchObject({ at: { x: expect.closeTo(20 + 177.8, 9) } });
  });
});
