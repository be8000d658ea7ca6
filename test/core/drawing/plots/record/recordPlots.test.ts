import { describe, expect, it } from 'vitest';
import { createDerive } from '../../../../../src/core/derive/createDerive';
import { plotChange } from '../../../../../src/core/drawing/plots/record/plotChange';
import { plotCrown } from '../../../../../src/core/drawing/plots/record/plotCrown';
import { plotFound } from '../../../../../src/core/drawing/plots/record/plotFound';
import type { PlotPicture } from '../../../../../src/core/drawing/plots/types';
import type { Item } from '../../../../../src/core/drawing/types';
import { pathBounds } from '../../../../../src/core/geom/pathBounds';
import { crownMoves } from '../../../../../src/core/learning/crownMoves';
import { planAsStrung } from '../../../../../src/core/learning/planAsStrung';
import { measureText } from '../../../../../src/core/text/measureText';
import { steelWith } from '../../../document/steelProject';
import { valueOf as answerOf } from '../../../document/valueOf';
import { atTwelfth, stringUp } from '../../../learning/strung';

const STYLE = { unit: 'mm', decimals: 2 } as const;

const find = ({ items }: PlotPicture, id: string): Item => {
  const item = items.find((each) => each.id === id);
  if (item === undefined) throw new Error(`${id} is not drawn.`);
  return item;
};
const middleOf = (plot: PlotPicture, id: string): { x: number; y: number } => {
  const item = find(plot, id);
  if (item.kind === 'text') return item.at;
  const { minX, maxX, minY, maxY } = pathBounds(item.path);
  return { x: (minX + maxX) / 2, y: (minY + maxY) / 2 };
};
const wordsOf = ({ items }: PlotPicture): readonly string[] =>
  items.flatMap((item) => (item.kind === 'text' ? [item.text] : []));

/** Everything lies on the paper, and no id comes twice. */
const expectWhole = ({ width, height, items }: PlotPicture): void => {
  expect(new Set(items.map(({ id }) => id)).size).toBe(items.length);
  for (const item of items) {
    const box =
      item.kind === 'path'
        ? pathBounds(item.path)
        : (() => {
            const wide = measureText(item.text, item.height, item.role === 'heading' ? 'bold' : 'regular');
            const left = item.at.x - (item.anchor === 'start' ? 0 : item.anchor === 'end' ? wide : wide / 2);
            return { minX: left, maxX: left + wide, minY: item.at.y - 1, maxY: item.at.y + 1 };
          })();
    expect(box.minX, item.id).toBeGreaterThanOrEqual(0);
    expect(box.minY, item.id).toBeGreaterThanOrEqual(0);
    expect(box.maxX, item.id).toBeLessThanOrEqual(width + 1e-6);
    expect(box.maxY, item.id).toBeLessThanOrEqual(height + 1e-6);
  }
};

// A saddle 3.175 mm thick, all strings breaking in its middle at scale 645, 2.684084 cents a mm; land 0.3 mm.
const project = steelWith({ compensation: { rule: { treble: 2, bass: 2, reach: 'break-point', source: '' } } });
const saddle = answerOf(createDerive()(project).saddle);
const moves = crownMoves(
  stringUp({
    cents: atTwelfth([0.5, -1, 2, 0].map((mm) => mm * 2.684084)),
    stood: planAsStrung(saddle, 'straight', null).stood,
  }),
  saddle,
  project.bridge.slot,
  645,
  0.3,
);

describe('plotCrown', () => {
  const plot = plotCrown(moves, saddle.strings, 3.175, 0.3, STYLE, 'right');

  it('keeps everything on its paper, for either hand and with short names or long', () => {
    expectWhole(plot);
    expectWhole(plotCrown(moves, saddle.strings, 3.175, 0.3, STYLE, 'left'));
    const long = saddle.strings.map((string) => ({ ...string, name: 'a long name for a string' }));
    expectWhole(plotCrown(moves, long, 3.175, 0.3, { unit: 'in', denominator: 64 }, 'right'));
  });

  // Drawn 10:1: 0.5 mm back is 5 mm down the page, 1 mm to the front 10 mm up; 1.2875 mm is all the crown has.
  it('draws where each broke and where it goes, ten times as thick', () => {
    const down = (string: number) => middleOf(plot, `to-${string}`).y - middleOf(plot, `from-${string}`).y;
    expect(down(1)).toBeCloseTo(5, 4);
    expect(down(2)).toBeCloseTo(-10, 4);
    expect(down(3)).toBeCloseTo(12.875, 4);
    expect(down(4)).toBeCloseTo(0, 9);
    expect(middleOf(plot, 'land-back').y - middleOf(plot, 'land-front').y).toBeCloseTo(25.75, 6);
  });

  it('says it in words, and what the crown comes short of', () => {
    expect(wordsOf(plot)).toEqual(
      expect.arrayContaining(['0.50', 'back', '1.00', 'front', '1.29', '0.71 short', 'stays']),
    );
    expect(plot.items.some(({ id }) => id === 'to-5')).toBe(false);
    expect(plot.summary).toBe('2 strings move back and 1 to the front; the crown comes short of the mark of 1.');
  });

  it('has the treble at the right for the right hand and at the left for the left, its words upright', () => {
    const left = plotCrown(moves, saddle.strings, 3.175, 0.3, STYLE, 'left');
    expect(middleOf(plot, 'from-1').x).toBeGreaterThan(middleOf(plot, 'from-2').x);
    expect(middleOf(left, 'from-1').x).toBeLessThan(middleOf(left, 'from-2').x);
    expect(middleOf(left, 'from-1').x).toBeCloseTo(left.width - middleOf(plot, 'from-1').x, 9);
    expect(wordsOf(left)).toEqual(wordsOf(plot));
  });
});

describe('plotFound', () => {
  const next = {
    count: 2,
    mean: 0.5,
    low: 0.25,
    high: 0.75,
    factor: 0.5,
    estimate: 0.25,
    doubt: 1,
    doubt99: 2,
    spread: 0.5,
  };
  const strings = [
    { id: 's1', name: 'E', model: 2, next, errors: [0.25, 0.75] },
    { id: 's2', name: 'B', model: 3, next: null, errors: [] },
  ];
  const plot = plotFound(strings, STYLE, 'right');

  it('keeps everything on its paper, for either hand, and for 40 instruments far off', () => {
    expectWhole(plot);
    expectWhole(plotFound(strings, { unit: 'in', denominator: 64 }, 'left'));
    const many = Array.from({ length: 40 }, (_, index) => index - 12);
    expectWhole(plotFound([{ ...strings[0], id: 's1', name: 'E', model: 2, next, errors: many }], STYLE, 'right'));
  });

  // From −0.75 to 1.25 is 2 mm, which has room at 20:1: half a mm is 10 mm of paper, down the page for farther back.
  it('draws each instrument and what to expect, to scale', () => {
    const at = (id: string): number => middleOf(plot, id).y;
    expect(at('found-1-2') - at('found-1-1')).toBeCloseTo(10, 6);
    expect(at('next-1') - at('model')).toBeCloseTo(5, 6);
    expect(at('next-1-more-cap') - at('next-1-less-cap')).toBeCloseTo(40, 6);
    expect(wordsOf(plot).join(' ')).toContain('Drawn 20:1.');
    expect(plot.items.some(({ id }) => id.startsWith('next-2'))).toBe(false);
  });

  it('refuses to plot no string', () => {
    expect(() => plotFound([], STYLE, 'right')).toThrow(RangeError);
  });
});

describe('plotChange', () => {
  const change = {
    strings: ['1 E', '2 B'],
    readings: ['3 Mar', '9 Sep'],
    cents: [
      [1.24, null],
      [-6, 2],
    ],
  };
  const plot = plotChange(change, 5);

  it('keeps everything on its paper', () => {
    expectWhole(plot);
    expectWhole(plotChange({ strings: ['1 E'], readings: ['3 Mar'], cents: [[0]] }, 5));
  });

  it('says each change, leaves free what was not read, and tells the largest', () => {
    expect(wordsOf(plot)).toEqual(expect.arrayContaining(['+1.2', '−6.0', '+2.0', '3 Mar', '9 Sep']));
    expect(plot.items.some(({ id }) => id === 'cell-1-2-figure')).toBe(false);
    expect(find(plot, 'cell-2-1-bar').role).toBe('plot-mark');
    expect(find(plot, 'cell-2-2-bar').role).toBe('plot-bar');
    expect(plot.summary).toBe('Largest change: −6.0 cents, 2 B, 3 Mar.');
  });

  it('refuses to plot nothing', () => {
    expect(() => plotChange({ ...change, readings: [] }, 5)).toThrow(RangeError);
    expect(() => plotChange(change, 0)).toThrow(RangeError);
  });
});
