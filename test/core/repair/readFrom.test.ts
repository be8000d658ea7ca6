import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { FormerFootprint, FormerHoles } from '../../../src/core/document/repairTypes';
import { formerHoles } from '../../../src/core/repair/formerHoles';
import { holesReadFrom, slotReadFrom } from '../../../src/core/repair/readFrom';
import { FORMER, rowWith, slotWith } from './formerCase';

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const footprints = fc
  .record({ aside: between(-20, 20), front: between(300, 700), turn: between(-0.15, 0.15) })
  .map((place): FormerFootprint => ({ ...FORMER, ...place }));

const each: FormerHoles = {
  from: 'front',
  kind: 'each',
  each: [
    { id: 'a', x: -20, y: 17, diameter: 5 },
    { id: 'b', x: 20, y: 19, diameter: 6 },
  ],
};

describe('reading from the other datum', () => {
  it('leaves every hole where it is, there and back', () => {
    fc.assert(
      fc.property(footprints, fc.constantFrom(each, rowWith({ slant: 0.04, aside: 1.5 })), (footprint, holes) => {
        const before = formerHoles(holes, footprint);
        const fromNut = holesReadFrom(holes, 'nut', footprint);
        const again = holesReadFrom(fromNut, 'front', footprint);
        for (const told of [fromNut, again])
          expect(formerHoles(told, footprint)).toEqual(
            before.map((hole) => ({
              ...hole,
              centre: { x: expect.closeTo(hole.centre.x, 7), y: expect.closeTo(hole.centre.y, 7) },
            })),
          );
        expect(fromNut.from).toBe('nut');
      }),
      { seed: 3, numRuns: 100 },
    );
  });

  it('adds the turn of the old bridge to a slant, and its place to a distance', () => {
    const footprint = { ...FORMER, aside: 2, turn: 0.01 };
    expect(slotReadFrom(slotWith({ slant: 0.03 }), 'nut', footprint)).toMatchObject({
      from: 'nut',
      // (0, 6) turned by −0.01, then moved to (2, 620)
      aside: expect.closeTo(2 + 6 * Math.sin(0.01), 8),
      distance: expect.closeTo(620 + 6 * Math.cos(0.01), 8),
      slant: expect.closeTo(0.04, 8),
    });
    expect(slotReadFrom(slotWith(), 'front', footprint)).toEqual(slotWith());
  });
});
