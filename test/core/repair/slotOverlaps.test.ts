import { describe, expect, it } from 'vitest';
import { slotPlace } from '../../../src/core/bridge/slotPlace';
import type { SaddlePlace } from '../../../src/core/bridge/types';
import { formerSlot } from '../../../src/core/repair/formerSlot';
import { slotOverlaps } from '../../../src/core/repair/slotOverlaps';
import { FORMER, slotWith } from './formerCase';

const string = (name: string, x: number) => ({ id: name, name, x }) as SaddlePlace['strings'][number];
const saddleAt = (centre: number, slope = 0): SaddlePlace => ({
  centre,
  slope,
  strings: [string('E', 27), string('E', -27)],
});

/** A new slot 3 wide whose front wall lies at the line of the saddle. */
const overlapsAt = (saddle: SaddlePlace, old = slotWith()) => {
  const former = formerSlot(old, FORMER);
  const slot = slotPlace(
    { fromFront: 0, length: 70, width: 3, ends: 'square', run: 'stopped', crown: 0, depth: 6, slant: null },
    saddle,
  );
  if (!former.ok || !slot.ok) throw new Error('no slot');
  return slotOverlaps(former.value, slot.value, saddle).map(({ id, shared, moved }) => [id, shared, moved]);
};

const near = (value: number) => expect.closeTo(value, 9);

// The old slot runs from 626 to 629. By hand.
describe('slotOverlaps', () => {
  it('tells the shared width and the way moved', () => {
    expect(overlapsAt(saddleAt(628.2))).toEqual([
      ['treble', near(0.8), near(2.2)],
      ['centre', near(0.8), near(2.2)],
      ['bass', near(0.8), near(2.2)],
    ]);
  });

  it('tells the wood between them as a minus', () => {
    expect(overlapsAt(saddleAt(630.5))[1]).toEqual(['centre', near(-1.5), near(4.5)]);
    expect(overlapsAt(saddleAt(622))[1]).toEqual(['centre', near(-1), near(-4)]);
  });

  it('follows the slants: a new slot that leans back to the bass leaves the old one on that side', () => {
    const slope = -0.1;
    const width = 3 * Math.hypot(1, slope);
    expect(overlapsAt(saddleAt(627, slope))).toEqual([
      ['treble', near(624.3 + width - 626), near(-1.7)],
      ['centre', near(2), near(1)],
      ['bass', near(629 - 629.7), near(3.7)],
    ]);
  });

  it('shares the whole width with a slot cut where it was', () => {
    expect(overlapsAt(saddleAt(626, -0.05), slotWith({ slant: Math.atan(0.05) }))).toEqual(
      ['treble', 'centre', 'bass'].map((id) => [id, near(3 * Math.hypot(1, 0.05)), near(0)]),
    );
  });
});
