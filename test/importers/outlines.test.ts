import { describe, expect, it } from 'vitest';
import { foundBox, readFile } from './foundBox';

const mm = (...data: readonly string[]): string =>
  `<svg xmlns="http://www.w3.org/2000/svg" width="500mm" height="500mm" viewBox="0 0 500 500">${data.map((d) => `<path d="${d}"/>`).join('')}</svg>`;
const first = (...data: readonly string[]) => {
  const [outline] = readFile(mm(...data)).outlines;
  if (outline === undefined) throw new Error('Nothing was found.');
  return outline;
};

describe('why a path cannot be taken', () => {
  // Each path drawn so that the fault can be seen in its numbers.
  it.each([
    ['open', 'M0 0H150V30H0V2', 'It is open: its ends lie 2 mm apart.'],
    [
      'crossing',
      'M0 0L100 40L100 0L0 40Z',
      'It crosses or touches itself, 50 mm from its left and 20 mm from its top.',
    ],
    ['tiny', 'M0 0H12V3H0Z', 'It is too small: 12 mm over its longer side, expected 20 to 400 mm.'],
    ['huge', 'M0 0H450V3H0Z', 'It is too large: 450 mm over its longer side, expected 20 to 400 mm.'],
    ['hollow', 'M0 0H100V0H0Z', 'It encloses nothing.'],
    [
      'too many nodes',
      `M0 0${Array.from({ length: 2100 }, (_, at) => `L${at * 0.1} ${at % 2}`).join('')}L210 9L0 9Z`,
      'It has 2102 nodes, expected at most 2000: draw it with curves, or simplify it.',
    ],
  ])('%s', (_, data, refusal) => {
    expect(first(data).refusal).toBe(refusal);
  });

  it('is nothing for a closed simple one of a sensible size', () => {
    expect(first('M0 0H150V30H0Z').refusal).toBeNull();
    // Its ends meet within 0.01 mm.
    expect(first('M0 0H150V30H0V0.009').refusal).toBeNull();
  });
});

describe('the order of outlines', () => {
  it('puts those that can be taken first, the largest first, and lists the others', () => {
    const found = readFile(mm('M0 0H450V200H0Z', 'M0 0H60V20H0Z', 'M0 0H150V30H0Z', 'M0 0H150V30', 'M0 0H9V9H0Z'));
    expect(found.outlines.map(({ across, along }) => [across, along])).toEqual([
      [150, 30],
      [60, 20],
      [450, 200],
      [150, 30],
      [9, 9],
    ]);
    expect(found.outlines.map(({ refusal }) => refusal === null)).toEqual([true, true, false, false, false]);
    expect(found.outlines[0]?.area).toBe(4500);
  });

  it('lists forty and counts the rest; drawn twice is once', () => {
    const many = readFile(mm(...Array.from({ length: 60 }, (_, at) => `M0 0H${30 + at}V20H0Z`)));
    expect([many.outlines.length, many.more]).toEqual([40, 20]);
    expect(readFile(mm('M0 0H150V30H0Z', 'M150 30H0V0H150Z')).outlines).toHaveLength(1);
  });
});

describe('loose pieces', () => {
  it('are joined where they meet within 0.01 mm, whichever way they run', () => {
    // A stadium 120 × 30 out of order: its area is 90·30 + π·15².
    const stadium = first(
      'M105 30H15.004',
      'M105.004 0A15 15 0 0 1 105.004 30',
      'M105 0H15',
      'M15 30A15 15 0 0 1 15 0',
    );
    expect(stadium.refusal).toBeNull();
    expect(stadium.path.segments.map(({ kind }) => kind).sort()).toEqual(['arc', 'arc', 'line', 'line']);
    expect(Math.abs(stadium.area - (2700 + 225 * Math.PI))).toBeLessThan(0.2);
  });

  it('stay apart beyond that', () => {
    expect(first('M0 0H100', 'M100.02 0L90 30L0 0').refusal).toBe('It is open: its ends lie 0.02 mm apart.');
  });

  it('are each used once, and a line drawn twice counts once', () => {
    const found = readFile(mm('M0 0H100', 'M100 0H0', 'M100 0V30', 'M100 30H0', 'M0 30V0'));
    expect(found.outlines.map(({ refusal }) => refusal)).toEqual([null]);
    expect(foundBox(found)).toEqual({ minX: 0, minY: 0, maxX: 100, maxY: 30 });
  });
});
