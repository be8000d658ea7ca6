import { describe, expect, it } from 'vitest';
import { deriveRepairAreas, type RepairAreas } from '../../../src/core/derive/deriveRepairAreas';
import { rectanglePath } from '../../../src/core/geom/rectanglePath';
import type { Path } from '../../../src/core/geom/types';

const slotAt = (y: number): Path => rectanglePath(-35, y, 70, 3);
const front = { x: 0, y: 0 };

const areasOf = async (old: Path, fresh: Path, slots: { old: Path | null; fresh: Path }): Promise<RepairAreas> => {
  const slot = slots.old && { outline: slots.old, front, angle: 0, width: 3 };
  const areas = await deriveRepairAreas({ outline: old, holes: [], slot }, fresh, slots.fresh);
  if (!areas.ok) throw new Error(areas.issues[0]?.message);
  return areas.value;
};

/** 6 × 1 in. */
const bridgeAt = (x: number, y: number): Path => rectanglePath(-76.2 + x, y, 152.4, 25.4);
const near = (value: number) => expect.closeTo(value, 2);
const noSlot = { old: null, fresh: slotAt(626) };

// By hand arithmetic: 152.4 × 25.4 = 3870.96 mm².
describe('deriveRepairAreas', () => {
  it('of a bridge in the place of a like one', async () => {
    expect(await areasOf(bridgeAt(0, 620), bridgeAt(0, 620), noSlot)).toEqual({
      former: near(3870.96),
      covered: near(3870.96),
      showing: { area: 0, outlines: [] },
      beyond: { area: 0, outlines: [] },
      fill: null,
    });
  });

  it('of a like bridge 2 mm farther back: 152.4 × 2 mm² show ahead of it, as much lies beyond', async () => {
    const { covered, showing, beyond } = await areasOf(bridgeAt(0, 620), bridgeAt(0, 622), noSlot);
    expect(covered).toBeCloseTo(3870.96 - 304.8, 2);
    expect(showing.area).toBeCloseTo(304.8, 2);
    expect(beyond.area).toBeCloseTo(304.8, 2);
    expect([showing.outlines.length, beyond.outlines.length]).toEqual([1, 1]);
  });

  it('of a bridge 1/16 in larger all round: nothing shows', async () => {
    const larger = rectanglePath(-76.2 - 1.5875, 620 - 1.5875, 152.4 + 3.175, 25.4 + 3.175);
    const { showing, beyond } = await areasOf(bridgeAt(0, 620), larger, noSlot);
    expect(showing).toEqual({ area: 0, outlines: [] });
    // 155.575 × 28.575 − 3870.96
    expect(beyond.area).toBeCloseTo(4445.555625 - 3870.96, 2);
  });

  it.each([
    ['inside', 626, 210, 0, 0],
    ['partly', 627, 140, 70, 0],
    ['clear', 630.5, 0, 210, 1.5],
    ['clear', 629, 0, 210, 0],
  ] as const)('the new slot lies %s when it begins at %f', async (lies, y, shared, beside, wall) => {
    const { fill } = await areasOf(bridgeAt(0, 620), bridgeAt(0, 620), { old: slotAt(626), fresh: slotAt(y) });
    expect(fill).toEqual({
      lies,
      shared: near(shared),
      beside: near(beside),
      wall: near(wall),
      at: lies === 'clear' ? [{ x: expect.any(Number), y: near(y) }] : [],
    });
  });

  it('refuses an open outline', async () => {
    const open = { ...bridgeAt(0, 620), closed: false };
    const areas = await deriveRepairAreas({ outline: open, holes: [], slot: null }, bridgeAt(0, 620), slotAt(626));
    expect(areas).toMatchObject({ ok: false, issues: [{ code: 'path.open' }] });
  });
});
