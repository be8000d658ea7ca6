import { describe, expect, it } from 'vitest';
import type { Hand } from '../../../../src/core/document/types';
import { rectanglePath } from '../../../../src/core/geom/rectanglePath';
import { windowSheet } from '../../../../src/core/sheets/parts/windowSheet';
import { windowReliefs } from '../../../../src/core/sheets/parts/windowSheetReliefs';
import { WINDOW } from '../../../reference/glueSheets';
import { steelWith } from '../../document/steelProject';
import { valueOf as answerOf, codesOf } from '../../document/valueOf';
import { itemBox } from '../itemBox';
import { boxIn, contextOf, INCH, MM, middleOf, partNamed, proseOn } from './partCase';

const sheet = async (hand: Hand = 'right', style = MM) =>
  partNamed(answerOf(windowSheet.make(await contextOf(steelWith({ instrument: { hand } }), style))), 'window');

describe('the window sheet', () => {
  it.each([MM, INCH])('has a window of the bridge’s own size, where the square line puts it: %o', async (style) => {
    const part = await sheet('right', style);
    const [line, cut] = [boxIn(part, 'square-line'), boxIn(part, 'cut')];
    expect(cut.maxX - cut.minX).toBeCloseTo(WINDOW.width, 6);
    expect(cut.maxY - cut.minY).toBeCloseTo(WINDOW.height, 6);
    expect(cut.minY - line.minY).toBeCloseTo(WINDOW.frontFromLine[style.unit], 5);
    expect(middleOf(cut).x).toBeCloseTo(middleOf(line).x, 6);
    for (const id of ['octave-treble', 'octave-bass'])
      expect(boxIn(part, id).minY - line.minY).toBeCloseTo(WINDOW.octaveFromLine[style.unit], 6);
    // What is cut away is the grey of the windows on the template.
    expect(boxIn(part, 'window')).toEqual(cut);
  });

  it('relieves its four rounded corners in their middle', async () => {
    const part = await sheet();
    const reliefs = part.items
      .filter(({ id }) => id.startsWith('window-relief-'))
      .map((item) => middleOf(itemBox(item)));
    const cut = boxIn(part, 'cut');
    expect(reliefs).toHaveLength(4);
    for (const { x } of reliefs)
      expect(Math.min(Math.abs(x - cut.minX), Math.abs(cut.maxX - x))).toBeCloseTo(WINDOW.reliefIn, 5);
    const front = reliefs.filter(({ y }) => y < cut.minY + 5);
    expect(front).toHaveLength(2);
    for (const { y } of front) expect(y - cut.minY).toBeCloseTo(WINDOW.reliefIn, 5);
  });

  it('relieves sharp corners where they are, and a corner that stands inward not at all', () => {
    expect(windowReliefs(rectanglePath(0, 0, 100, 20))).toEqual([
      { x: 0, y: 0 },
      { x: 100, y: 0 },
      { x: 100, y: 20 },
      { x: 0, y: 20 },
    ]);
    const corners = [
      [0, 0],
      [60, 0],
      [60, 20],
      [30, 20],
      [30, 40],
      [0, 40],
    ].map(([x = 0, y = 0]) => ({ x, y }));
    for (const way of [corners, [...corners].reverse()]) {
      const [start = { x: 0, y: 0 }, ...rest] = way;
      const shape = { start, segments: rest.map((to) => ({ kind: 'line' as const, to })), closed: true };
      const reliefs = windowReliefs(shape);
      expect(reliefs).toHaveLength(5);
      expect(reliefs).not.toContainEqual({ x: 30, y: 20 });
    }
  });

  it('draws no line of the instrument within the window', async () => {
    const part = await sheet();
    const cut = boxIn(part, 'cut');
    for (const id of ['string-1-0', 'string-6-0', 'board-treble-0', 'board-bass-0', 'centreline-0'])
      expect(boxIn(part, id).maxY, id).toBeCloseTo(cut.minY, 6);
    for (const id of ['board-treble-1', 'centreline-1']) expect(boxIn(part, id).minY).toBeGreaterThan(cut.maxY - 11);
    expect(boxIn(part, 'octave-treble').minX - cut.maxX).toBeCloseTo(1.5, 6);
    expect(cut.minX - boxIn(part, 'octave-bass').maxX).toBeCloseTo(1.5, 6);
  });

  it('says how it is cut and set, with treble and bass where they are for either hand', async () => {
    for (const hand of ['right', 'left'] as const) {
      const part = await sheet(hand);
      const said = [
        'cut here, on the bench',
        'THIS SIDE UP',
        `${hand} hand`,
        'NUT SIDE',
        'SQUARE LINE',
        'octave line 645.0 mm',
      ];
      for (const words of said) expect(proseOn(part)).toContain(words);
      const toRight = middleOf(boxIn(part, 'treble-label')).x - middleOf(boxIn(part, 'bass-label')).x;
      expect(Math.sign(toRight)).toBe(hand === 'right' ? 1 : -1);
    }
  });

  it('tells why there is none when the bridge could not be computed', async () => {
    const project = steelWith({
      bridge: { pins: null, locating: { site: 'outer-pin-holes', drill: 3, points: null, clearance: 0.5 } },
    });
    expect(codesOf(windowSheet.make(await contextOf(project)))).toContain('locating.pins');
  });
});
