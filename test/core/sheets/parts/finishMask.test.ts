import { describe, expect, it } from 'vitest';
import type { Project } from '../../../../src/core/document/types';
import { circlePath } from '../../../../src/core/geom/circlePath';
import { distance } from '../../../../src/core/geom/points';
import { rectanglePath } from '../../../../src/core/geom/rectanglePath';
import { hatchInside } from '../../../../src/core/sheets/parts/finish/hatchInside';
import { finishMask } from '../../../../src/core/sheets/parts/finishMask';
import { HATCH, RIM } from '../../../reference/glueSheets';
import { steelProject, steelWith } from '../../document/steelProject';
import { valueOf as answerOf, codesOf } from '../../document/valueOf';
import { itemBox } from '../itemBox';
import { boxIn, contextOf, INCH, MM, middleOf, partNamed, proseOn } from './partCase';

/** 6 × 1 in, sharp corners, no pins. */
const rectangle = (rim: number, hand: 'right' | 'left' = 'right'): Project => ({
  ...steelWith({ instrument: { hand } }),
  bridge: {
    ...steelProject.bridge,
    outline: { shape: 'rectangular', parameters: { length: 152.4, full: 25.4, corner: 0 } },
    pins: null,
    rim,
  },
});

const partsOf = async (project: Project, style = MM) => answerOf(finishMask.make(await contextOf(project, style)));

describe('hatching', () => {
  it('fills a rectangle with lines at 45°, from side to side', () => {
    const lines = hatchInside([rectanglePath(0, 0, 100, 20)], 4);
    expect(lines).toHaveLength(HATCH.lines);
    for (const { from, to } of lines) {
      expect(to.y - from.y).toBeCloseTo(to.x - from.x, 9);
      for (const { x, y } of [from, to])
        expect(Math.min(Math.abs(x), Math.abs(100 - x), Math.abs(y), Math.abs(20 - y))).toBeLessThan(1e-9);
    }
    expect(Math.max(...lines.map(({ from, to }) => distance(from, to)))).toBeCloseTo(HATCH.whole, 5);
  });

  it('ends on the true circle, and leaves a hole out', () => {
    // The line through the middle of circles of radius 10 and 4: from 10 to 4 on either side.
    const through = hatchInside([circlePath({ x: 0, y: 0 }, 10), circlePath({ x: 0, y: 0 }, 4)], 100);
    expect(through.map(({ from, to }) => [Math.hypot(from.x, from.y), Math.hypot(to.x, to.y)])).toEqual([
      [expect.closeTo(10, 9), expect.closeTo(4, 9)],
      [expect.closeTo(4, 9), expect.closeTo(10, 9)],
    ]);
    for (const { from, to } of hatchInside([circlePath({ x: 3, y: 1 }, 10)], 1.3))
      for (const end of [from, to]) expect(distance(end, { x: 3, y: 1 })).toBeCloseTo(10, 9);
  });
});

describe('the finish mask and the clearing line', () => {
  it('stand the rim inside the footprint, on both sheets', async () => {
    for (const part of await partsOf(rectangle(3.175))) {
      const [outer, inner] = [boxIn(part, 'footprint'), boxIn(part, 'finish-0')];
      for (const side of ['minX', 'minY'] as const) expect(inner[side] - outer[side]).toBeCloseTo(3.175, 4);
      for (const side of ['maxX', 'maxY'] as const) expect(outer[side] - inner[side]).toBeCloseTo(3.175, 4);
    }
  });

  it('hatch what is cleared and no more, on the clearing line alone', async () => {
    for (const rim of [0, 3.175]) {
      const parts = await partsOf(rectangle(rim));
      const clearing = partNamed(parts, 'clearing-line');
      const edge = boxIn(clearing, rim === 0 ? 'footprint' : 'finish-0');
      const hatch = clearing.items.filter(({ id }) => id.includes('-hatch-')).map(itemBox);
      expect(hatch.length).toBeGreaterThan(20);
      expect(Math.min(...hatch.map(({ minY }) => minY))).toBeCloseTo(edge.minY, 4);
      expect(Math.max(...hatch.map(({ maxY }) => maxY))).toBeCloseTo(edge.maxY, 4);
      for (const { minX, maxX } of hatch) {
        expect(minX).toBeGreaterThan(edge.minX - 1e-4);
        expect(maxX).toBeLessThan(edge.maxX + 1e-4);
      }
      const mask = partNamed(parts, 'finish-mask');
      expect(mask.items.some(({ id }) => id.includes('-hatch-'))).toBe(false);
    }
  });

  it('tell what the rim costs', async () => {
    const said = proseOn(partNamed(await partsOf(rectangle(3.175)), 'clearing-line'));
    expect(said).toContain(
      `Glue area ${RIM.glue}. A rim of 3.2 mm left under the bridge costs ${RIM.lost}, ${RIM.share} of`,
    );
    const inches = proseOn(partNamed(await partsOf(rectangle(3.175), INCH), 'clearing-line'));
    expect(inches).toContain(`Glue area ${RIM.glueInches}. A rim of 1/8″ left`);
    expect(proseOn(partNamed(await partsOf(rectangle(0)), 'clearing-line'))).toContain(
      'no finish is left under the rim',
    );
  });

  it('say where the danger is', async () => {
    const [mask, clearing] = await partsOf(rectangle(1));
    if (mask === undefined || clearing === undefined) throw new Error('There are not two sheets.');
    for (const words of ['THIS SIDE UP', 'right hand', 'NUT SIDE', 'BASS', 'TREBLE', 'not the wood', 'Shellac'])
      for (const part of [mask, clearing]) expect(proseOn(part)).toContain(words);
    for (const words of ['light passes', 'heat shield', 'cut away from the holding hand'])
      expect(proseOn(clearing)).toContain(words);
  });

  it('mirror for the left hand, the words upright', async () => {
    const [right, left] = [await partsOf(rectangle(1)), await partsOf(rectangle(1, 'left'))];
    for (const id of ['finish-mask', 'clearing-line']) {
      const [one, other] = [partNamed(right, id), partNamed(left, id)];
      // From the middle of the footprint, which is as wide to both sides.
      const off = (part: typeof one, hole: string) =>
        middleOf(boxIn(part, hole)).x - middleOf(boxIn(part, 'footprint')).x;
      expect(off(one, 'locating-treble')).toBeCloseTo(36.477051, 5);
      expect(off(other, 'locating-treble')).toBeCloseTo(-36.477051, 5);
      expect(proseOn(other)).toContain('left hand');
    }
  });

  it('are refused where the rim takes it all, or the line is not known', async () => {
    expect(codesOf(finishMask.make(await contextOf(rectangle(13))))).toEqual(['sheet.rimTakesAll']);
    const unknown = { ...(await contextOf(rectangle(1))), areas: null };
    expect(codesOf(finishMask.make(unknown))).toEqual(['sheet.finishUnknown']);
    expect(finishMask.make({ ...unknown, project: rectangle(0) }).ok).toBe(true);
  });
});
