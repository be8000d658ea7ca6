import { describe, expect, it } from 'vitest';
import { LINE_STYLES } from '../../../../src/core/drawing/lineStyles';
import { plotCompensation } from '../../../../src/core/drawing/plots/plotCompensation';
import type { PlotPicture } from '../../../../src/core/drawing/plots/types';
import type { LengthStyle } from '../../../../src/core/units/formatLength';
import { expectSoundPicture, middleOf, pathOf, textOf } from './pictureChecks';
import { SMALL_OCTAVE, smallSaddle } from './smallSaddle';

// A saddle 3 mm thick with 0.5 kept each side, breaking in its middle: the crown reaches 1 mm either way, square to it,
// which is √(1 + 0.05²) = 1.00124922 along the centreline. Everything here was worked by hand.
const SLOT = { width: 3, crown: 0.5 };
const REACH = 1.00124922;
const MM: LengthStyle = { unit: 'mm', decimals: 1 };

const draw = (style: LengthStyle = MM, hand: 'right' | 'left' = 'right', saddle = smallSaddle) =>
  plotCompensation(saddle, SLOT, 0.5, SMALL_OCTAVE, style, hand);

/** Compensation that a y stands for, read off between the lines of 1 and 2 mm as a maker would. */
const readOff = (picture: PlotPicture, y: number): number => {
  const lineOf = (figure: string): number => {
    const text = picture.items.find(
      (item) => item.id.startsWith('tick') && item.kind === 'text' && item.text === figure,
    );
    return middleOf(picture, (text?.id ?? '').replace('-figure', '')).y;
  };
  return 1 + (y - lineOf('1')) / (lineOf('2') - lineOf('1'));
};
const ends = (picture: PlotPicture, id: string) => {
  const { start, segments } = pathOf(picture, id).path;
  const end = segments.at(-1)?.to ?? start;
  return start.x < end.x ? [start, end] : [end, start];
};

describe('plotCompensation', () => {
  const picture = draw();

  it('is a sound picture in mm, inches and fractions, for either hand', () => {
    const styles: readonly LengthStyle[] = [MM, { unit: 'in', decimals: 3 }, { unit: 'in', denominator: 64 }];
    for (const style of styles) for (const hand of ['right', 'left'] as const) expectSoundPicture(draw(style, hand));
  });

  it('marks at each string what it wants, true to scale', () => {
    const [first, second, third] = [1, 2, 3].map((n) => middleOf(picture, `wanted-${n}`));
    expect((first?.x ?? 0) - (second?.x ?? 0)).toBeCloseTo(20, 9);
    expect((second?.x ?? 0) - (third?.x ?? 0)).toBeCloseTo(20, 9);
    // The range −0.2 to 4.2 takes 44 mm of paper at 10:1, within its 60.
    expect((second?.y ?? 0) - (first?.y ?? 0)).toBeCloseTo((3.25 - 1.1) * 10, 9);
    expect(readOff(picture, first?.y ?? 0)).toBeCloseTo(1.1, 9);
    expect(readOff(picture, second?.y ?? 0)).toBeCloseTo(3.25, 9);
    expect(readOff(picture, third?.y ?? 0)).toBeCloseTo(2.5, 9);
    for (const n of [1, 2, 3])
      expect(textOf(picture, `name-${n}`).at.x).toBeCloseTo(middleOf(picture, `wanted-${n}`).x, 9);
    expect([1, 2, 3].map((n) => textOf(picture, `name-${n}`).text)).toEqual(['E', 'B', 'G']);
    expect(
      picture.items
        .filter(({ id }) => id.startsWith('caption'))
        .map((item) => item.kind === 'text' && item.text)
        .join(' '),
    ).toBe('The dashes leave 0.5 mm of saddle at each face. Drawn 1:1 across, 10:1 along the neck.');
  });

  it('draws the saddle and the reach of its crown from 4 mm beyond either outer string', () => {
    for (const [id, beyond] of [
      ['saddle-line', 0],
      ['reach-ahead', -REACH],
      ['reach-behind', REACH],
    ] as const) {
      const [bass, treble] = ends(picture, id);
      expect((treble?.x ?? 0) - (bass?.x ?? 0)).toBeCloseTo(48, 9);
      expect(readOff(picture, bass?.y ?? 0)).toBeCloseTo(2 + 1.2 + beyond, 7);
      expect(readOff(picture, treble?.y ?? 0)).toBeCloseTo(2 - 1.2 + beyond, 7);
    }
  });

  it('shifts the reach with the line’s own place in the thickness', () => {
    // On the front face: 0.5 to 2.5 behind it. A saddle of 0.8 has no room for two lands: its middle, 0.4, and no more.
    const at = (slot: typeof SLOT) => {
      const other = plotCompensation(smallSaddle, slot, 0.5, SMALL_OCTAVE, MM, 'right');
      return ['reach-ahead', 'reach-behind'].map((id) => readOff(other, middleOf(other, id).y) - 2);
    };
    expect(at({ width: 3, crown: 0 })[0]).toBeCloseTo(0.5 * REACH, 7);
    expect(at({ width: 3, crown: 0 })[1]).toBeCloseTo(2.5 * REACH, 7);
    for (const middle of at({ width: 0.8, crown: 0 })) expect(middle).toBeCloseTo(0.4 * REACH, 7);
  });

  it('sets the model’s open diamond and its bar, twice 1.96 sigma long, beside the filled dots', () => {
    expect(readOff(picture, middleOf(picture, 'model-2').y)).toBeCloseTo(2.2, 9);
    // 1.96: normal distribution, 95 %, any table.
    expect(readOff(picture, middleOf(picture, 'model-2-less-cap').y)).toBeCloseTo(2.2 - 0.98, 9);
    expect(readOff(picture, middleOf(picture, 'model-2-more-cap').y)).toBeCloseTo(2.2 + 0.98, 9);
    expect(picture.items.filter(({ id }) => /^model-[13]/u.test(id))).toEqual([]);
    const [dot, diamond] = [pathOf(picture, 'wanted-2'), pathOf(picture, 'model-2')];
    expect(LINE_STYLES[dot.role].fill).toBe(0);
    expect(LINE_STYLES[diamond.role].fill).toBeNull();
    expect(dot.path.segments.map(({ kind }) => kind)).toEqual(['arc', 'arc']);
    expect(diamond.path.segments.map(({ kind }) => kind)).toEqual(['line', 'line', 'line']);
    expect(LINE_STYLES['plot-reach'].dash.length).toBeGreaterThan(0);
    expect(LINE_STYLES['plot-line'].dash).toEqual([]);
  });

  it('leaves the model out of the key when there is none', () => {
    const without = { ...smallSaddle, strings: smallSaddle.strings.map((string) => ({ ...string, model: null })) };
    const keyOf = ({ items }: PlotPicture) =>
      items.filter((item) => item.part === 'key' && item.kind === 'text').length;
    expect([keyOf(picture), keyOf(draw(MM, 'right', without))]).toEqual([4, 3]);
  });

  it('has the treble to the right for a right hand, to the left for a left one, figures and words where they were', () => {
    const left = draw(MM, 'left');
    const middle = textOf(picture, 'nut-side').at.x;
    expect(middleOf(picture, 'wanted-1').x).toBeCloseTo(middle + 20, 9);
    expect([textOf(picture, 'treble').anchor, textOf(left, 'treble').anchor]).toEqual(['end', 'start']);
    for (const id of ['wanted-1', 'wanted-2', 'wanted-3', 'model-2', 'saddle-line', 'reach-ahead']) {
      expect(middleOf(left, id).x + middleOf(picture, id).x).toBeCloseTo(2 * middle, 9);
      expect(middleOf(left, id).y).toBeCloseTo(middleOf(picture, id).y, 9);
    }
    expect(ends(left, 'saddle-line')[0]?.y).toBeCloseTo(ends(picture, 'saddle-line')[1]?.y ?? 0, 9);
    const unsided = ({ items }: PlotPicture) => items.filter(({ part }) => ['axis', 'key', 'caption'].includes(part));
    expect(unsided(left)).toEqual(unsided(picture));
    expect(left.items.map((item) => item.kind === 'text' && item.text)).toEqual(
      picture.items.map((item) => item.kind === 'text' && item.text),
    );
  });

  it('divides the axis roundly in the unit in use', () => {
    const figures = (style: LengthStyle) =>
      draw(style).items.flatMap((item) => (item.id.endsWith('-figure') && item.kind === 'text' ? [item.text] : []));
    // −0.20 to 4.20 mm at 10:1. Inches: −0.008 to 0.165; a fiftieth would be 5.1 mm of paper, a thirty-second is 7.9.
    expect(figures(MM)).toEqual(['−1', '0', '1', '2', '3', '4', '5']);
    expect(figures({ unit: 'in', decimals: 3 })).toEqual(['−0.05', '0.00', '0.05', '0.10', '0.15', '0.20']);
    expect(figures({ unit: 'in', denominator: 64 })).toEqual([
      '−1/32',
      '0',
      '1/32',
      '1/16',
      '3/32',
      '1/8',
      '5/32',
      '3/16',
    ]);
  });

  it('doubles the width for strings in pairs, and flattens a wide range', () => {
    const [one, two, three] = smallSaddle.strings;
    if (!one || !two || !three) throw new Error('Three strings.');
    const long = 'a long name for one string';
    const paired = draw(MM, 'right', {
      ...smallSaddle,
      strings: [one, { ...two, x: 18, name: long }, { ...three, wanted: 12 }],
    });
    expectSoundPicture(paired);
    expect(middleOf(paired, 'wanted-1').x - middleOf(paired, 'wanted-2').x).toBeCloseTo(4, 9);
    // −0.2 to 12 mm: 122 mm of paper at 10:1, 61 at 5:1, so 2:1.
    expect(middleOf(paired, 'wanted-3').y - middleOf(paired, 'wanted-1').y).toBeCloseTo((12 - 1.1) * 2, 9);
    expect(textOf(paired, 'name-2').text).toMatch(/^a long.*…$/u);
    expect(textOf(paired, 'name-2').at.y).not.toBe(textOf(paired, 'name-1').at.y);
  });

  it('says in words where the saddle stands and which mark it misses', () => {
    expect(picture.summary).toBe(
      'The straight saddle stands 1.0 mm at string 1 (E) and 3.0 mm at string 3 (G) behind the octave line. Its crown cannot be shaped to the mark of string 2 (B): 0.3 mm is left.',
    );
    const [one, , three] = smallSaddle.strings;
    if (!one || !three) throw new Error('Three strings.');
    expect(draw({ unit: 'in', denominator: 32 }, 'right', { ...smallSaddle, strings: [one, three] }).summary).toBe(
      'The straight saddle stands 1/32″ at string 1 (E) and 1/8″ at string 2 (G) behind the octave line. Its crown can be shaped to the mark of every string.',
    );
  });

  it('refuses a saddle without strings, and figures that are none', () => {
    expect(() => draw(MM, 'right', { ...smallSaddle, strings: [] })).toThrow(RangeError);
    expect(() => draw(MM, 'right', { ...smallSaddle, centre: Number.NaN })).toThrow(RangeError);
  });
});
