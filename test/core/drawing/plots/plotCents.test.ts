import { describe, expect, it } from 'vitest';
import { LINE_STYLES } from '../../../../src/core/drawing/lineStyles';
import { plotCents } from '../../../../src/core/drawing/plots/plotCents';
import { pathBounds } from '../../../../src/core/geom/pathBounds';
import { expectSoundPicture, middleOf, pathOf, textOf } from './pictureChecks';

// All figures worked by hand. Squares of 9 mm: half a square less 0.6 is 3.9, the bar of 4 cents.
const GRID = {
  strings: ['E', 'B'],
  frets: [1, 7, 12],
  cents: [
    [2, -1, 0.04],
    [-4.04, 6, -10.26],
  ],
};

describe('plotCents', () => {
  const picture = plotCents(GRID, 4);
  const box = (id: string) => pathBounds(pathOf(picture, id).path);

  it('is a sound picture, also for long names, large errors and many frets', () => {
    expectSoundPicture(picture);
    const frets = Array.from({ length: 24 }, (_, index) => index + 1);
    const strings = ['E4 twin of a long name indeed', 'B'];
    expectSoundPicture(plotCents({ strings, frets, cents: strings.map(() => frets.map((n) => n * -6.7)) }, 0.5));
  });

  it('has a square for every note, strings downward and frets to the right', () => {
    const first = box('cell-1-1');
    expect(first.maxX - first.minX).toBeCloseTo(first.maxY - first.minY, 9);
    expect(box('cell-1-2').minX).toBeCloseTo(first.maxX, 9);
    expect(box('cell-2-1').minY).toBeCloseTo(first.maxY, 9);
    expect(picture.items.filter(({ id }) => /^cell-\d+-\d+$/u.test(id))).toHaveLength(6);
    expect([1, 2, 3].map((n) => textOf(picture, `fret-${n}`).text)).toEqual(['1', '7', '12']);
    expect([1, 2].map((n) => textOf(picture, `name-${n}`).text)).toEqual(['E', 'B']);
    expect(textOf(picture, 'fret-3').at.x).toBeCloseTo(middleOf(picture, 'cell-1-3').x, 9);
    expect(textOf(picture, 'name-2').at.y).toBeCloseTo(middleOf(picture, 'cell-2-1').y, 9);
  });

  it('draws sharp up and flat down from the middle, in proportion to the limit', () => {
    const size = box('cell-1-1').maxX - box('cell-1-1').minX;
    const full = size / 2 - 0.6;
    const bar = (id: string) => {
      const middle = middleOf(picture, id).y;
      const { minY, maxY } = box(`${id}-bar`);
      return { up: middle - minY, down: maxY - middle };
    };
    expect(bar('cell-1-1').up).toBeCloseTo(full / 2, 9);
    expect(bar('cell-1-1').down).toBeCloseTo(0, 9);
    expect(bar('cell-1-2').down).toBeCloseTo(full / 4, 9);
    expect(bar('cell-1-2').up).toBeCloseTo(0, 9);
    expect(bar('cell-2-1').down).toBeCloseTo(full, 9);
    expect(bar('cell-2-2').up).toBeCloseTo(full, 9);
    expect(picture.items.some(({ id }) => id === 'cell-1-3-bar')).toBe(false);
  });

  it('writes each figure in the half that its bar leaves free', () => {
    const figure = (id: string) => textOf(picture, `${id}-figure`);
    expect(
      ['cell-1-1', 'cell-1-2', 'cell-1-3', 'cell-2-1', 'cell-2-2', 'cell-2-3'].map((id) => figure(id).text),
    ).toEqual(['+2.0', '−1.0', '0.0', '−4.0', '+6.0', '−10.3']);
    expect(figure('cell-1-1').at.y).toBeGreaterThan(middleOf(picture, 'cell-1-1').y);
    expect(figure('cell-1-2').at.y).toBeLessThan(middleOf(picture, 'cell-1-2').y);
  });

  it('tells what is beyond the limit by a black bar and a bold figure, as the figure reads', () => {
    const look = (id: string) => [pathOf(picture, `${id}-bar`).role, textOf(picture, `${id}-figure`).role];
    expect(look('cell-2-2')).toEqual(['plot-mark', 'heading']);
    expect(look('cell-2-3')).toEqual(['plot-mark', 'heading']);
    // −4.04 reads −4.0, which is no more than 4.
    expect(look('cell-2-1')).toEqual(['plot-bar', 'note']);
    // Grey against white and black: 0 black, 1 white.
    expect(LINE_STYLES['plot-mark'].fill).toBe(0);
    expect(LINE_STYLES['plot-bar'].fill).toBe(0.75);
  });

  it('states its scale, and says in words what is furthest out', () => {
    const caption = picture.items.flatMap((item) =>
      item.part === 'caption' && item.kind === 'text' ? [item.text] : [],
    );
    expect(caption.join(' ')).toBe(
      'Cents: bar up, + sharp; bar down, − flat. A full bar is 4 cents, a black one is more.',
    );
    expect(picture.summary).toBe(
      'Furthest out: 10.3 cents flat, string 2 (B) at fret 12. 2 of 6 notes lie beyond 4 cents.',
    );
    expect(plotCents({ strings: ['E'], frets: [3], cents: [[0.01]] }, 2).summary).toBe(
      'Furthest out: 0.0 cents, string 1 (E) at fret 3. The note lies within 2 cents.',
    );
  });

  it.each([
    ['no string', { strings: [], frets: [1], cents: [] }, 2],
    ['no fret', { strings: ['E'], frets: [], cents: [[]] }, 2],
    ['a row short', { strings: ['E', 'B'], frets: [1], cents: [[1]] }, 2],
    ['a note short', { strings: ['E'], frets: [1, 2], cents: [[1]] }, 2],
    ['no number', { strings: ['E'], frets: [1], cents: [[Number.NaN]] }, 2],
    ['no limit', { strings: ['E'], frets: [1], cents: [[1]] }, 0],
  ])('refuses %s', (_name, grid, limit) => {
    expect(() => plotCents(grid, limit)).toThrow(RangeError);
  });
});
