import { describe, expect, it } from 'vitest';
import { createAround } from '../../../../src/core/derive/createAround';
import { createDerive } from '../../../../src/core/derive/createDerive';
import { deriveRepairAreas } from '../../../../src/core/derive/deriveRepairAreas';
import type { Repair } from '../../../../src/core/document/repairTypes';
import type { Hand } from '../../../../src/core/document/types';
import { drawAround } from '../../../../src/core/drawing/drawAround';
import type { Item } from '../../../../src/core/drawing/types';
import { pathBounds } from '../../../../src/core/geom/pathBounds';
import { steelProject } from '../../document/steelProject';
import { FORMER, rowWith, slotWith } from '../../repair/formerCase';

/** The steel-string's front edge lies at 647.778 − 1.589 − 7.4 = 638.789 from the nut. */
const repair: Repair = {
  footprint: { ...FORMER, front: 638, aside: -2 },
  holes: rowWith({ spread: 54, distance: 20 }),
  slot: slotWith(),
};

const drawn = async (hand: Hand, change: Repair | null = repair): Promise<readonly Item[]> => {
  const project = {
    ...steelProject,
    repair: change,
    instrument: { ...steelProject.instrument, hand },
  };
  const derived = createDerive()(project);
  const { bridge, slot } = derived;
  // Asked once without an answer to learn the place, then again with the areas.
  const place = createAround(() => null)(project, derived).repair?.place;
  const areas =
    place?.ok && bridge.ok && slot.ok
      ? await deriveRepairAreas(place.value, bridge.value.footprint.outline, slot.value.outline)
      : null;
  const around = createAround(() => areas)(project, derived);
  const view = { hand, datum: 'front' as const, style: { unit: 'mm' as const, decimals: 1 } };
  return drawAround(project, derived, around, view).over.filter(({ layer }) => layer === 'former');
};

const boundsOf = (items: readonly Item[], part: string) => {
  const found = items.find((item) => item.part === part && item.kind === 'path');
  if (found?.kind !== 'path') throw new Error(`no ${part}`);
  return pathBounds(found.path);
};

describe('the old bridge in the drawing', () => {
  it('is outlined where it lay, with its holes and its slot, all in the line type of what was before', async () => {
    const items = await drawn('right');
    const formers = items.filter(({ role }) => role === 'former').map(({ part }) => part);
    expect(formers).toEqual(['old bridge', 'old slot', ...[1, 2, 3, 4, 5, 6].map((number) => `old hole ${number}`)]);
    // 152.4 wide about −2, from 638 on.
    expect(boundsOf(items, 'old bridge')).toEqual({
      minX: expect.closeTo(-78.2, 9),
      maxX: expect.closeTo(74.2, 9),
      minY: expect.closeTo(638, 9),
      maxY: expect.closeTo(663.4, 9),
    });
  });

  it('lies on the other side for the other hand, its words upright', async () => {
    const items = await drawn('left');
    expect(boundsOf(items, 'old bridge')).toMatchObject({
      minX: expect.closeTo(-74.2, 9),
      maxX: expect.closeTo(78.2, 9),
    });
    const text = items.find((item) => item.kind === 'text');
    expect(text).toMatchObject({ angle: 0, anchor: 'middle' });
  });

  it('is hatched where it shows, with the area beside its name', async () => {
    const items = await drawn('right');
    const showing = items.filter(({ part }) => part === 'old footprint showing');
    expect(showing.length).toBeGreaterThan(3);
    for (const item of showing) {
      if (item.kind !== 'path') continue;
      const { minX, maxX, minY, maxY } = pathBounds(item.path);
      expect(minX).toBeGreaterThan(-78.2001);
      expect(maxX).toBeLessThan(74.2001);
      expect(minY).toBeGreaterThan(637.999);
      expect(maxY).toBeLessThan(663.401);
    }
    const text = items.find((item) => item.kind === 'text');
    expect(text?.kind === 'text' && text.text).toMatch(/^old bridge, \d+ mm² showing$/);
  });

  it('has a mark of true length from each pin to its old hole', async () => {
    const items = await drawn('right');
    const marks = items.filter(({ role }) => role === 'mark');
    expect(marks.map(({ part }) => part)).toEqual([1, 2, 3, 4, 5, 6].map((n) => `pin ${n} to old hole ${n}`));
    const [first] = marks;
    // Old hole 1 stands at −2 + 27, 638 + 20.
    expect(first?.kind === 'path' && first.path.segments[0]?.to).toEqual({
      x: expect.closeTo(25, 9),
      y: expect.closeTo(658, 9),
    });
  });

  it('is not there for new work, nor when it cannot be computed', async () => {
    expect(await drawn('right', null)).toEqual([]);
    expect(await drawn('right', { ...repair, slot: slotWith({ length: 10, width: 12 }) })).toEqual([]);
  });
});
