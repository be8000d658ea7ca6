import { describe, expect, it } from 'vitest';
import { createDerive } from '../../../../src/core/derive/createDerive';
import type { PinnedDimension } from '../../../../src/core/document/dimensionTypes';
import type { Hand, Project } from '../../../../src/core/document/types';
import { drawPinned } from '../../../../src/core/drawing/measure/drawPinned';
import type { PathItem } from '../../../../src/core/drawing/types';
import { demoProject } from '../../../../src/core/kinds/demo';

const demo = demoProject('test', '2026-03-01T09:00:00.000Z');
const pin = (number: number) => ({ kind: 'part', part: `pin ${number}`, feature: 'centre' }) as const;

const PINNED: readonly PinnedDimension[] = [
  { kind: 'distance', id: 'd1', way: 'across', from: pin(1), to: pin(6) },
  {
    kind: 'distance',
    id: 'd2',
    way: 'along',
    from: { kind: 'part', part: 'footprint', feature: 'front edge' },
    to: pin(3),
  },
  { kind: 'distance', id: 'd3', way: 'straight', from: pin(1), to: pin(6) },
  { kind: 'angle', id: 'd4', from: pin(1), corner: { kind: 'point', at: { x: 0, y: 0 } }, to: pin(6) },
  { kind: 'gap', id: 'd5', from: 'slot', to: 'pin 3' },
];

const drawn = (project: Project, hand: Hand, dimensions = PINNED) => {
  const { bridge, slot } = createDerive()(project);
  if (!bridge.ok || !slot.ok) throw new Error('the demo has a bridge');
  return { items: drawPinned(dimensions, bridge.value, slot.value, hand, (mm) => mm.toFixed(3)), bridge: bridge.value };
};
const textOf = (items: ReturnType<typeof drawn>['items'], id: string): string => {
  const item = items.find((each) => each.id === `dimension-${id}-text`);
  return item?.kind === 'text' ? item.text : '';
};
const lineOf = (items: ReturnType<typeof drawn>['items'], id: string): PathItem => {
  const item = items.find((each) => each.id === `dimension-${id}-line`);
  if (item?.kind !== 'path') throw new Error(`there is no line of ${id}`);
  return item;
};

describe('drawPinned', () => {
  it('tells each distance, by hand from the centres of the holes', () => {
    const { items, bridge } = drawn(demo, 'right');
    const [one, , three, , , six] = bridge.pins.map(({ centre }) => centre);
    if (one === undefined || three === undefined || six === undefined) throw new Error('the demo has six pins');
    expect(Number(textOf(items, 'd1'))).toBeCloseTo(one.x - six.x, 3);
    expect(Number(textOf(items, 'd2'))).toBeCloseTo(three.y - bridge.front, 3);
    expect(Number(textOf(items, 'd3'))).toBeCloseTo(Math.sqrt((one.x - six.x) ** 2 + (one.y - six.y) ** 2), 3);
    expect(textOf(items, 'd4')).toMatch(/^\d+\.\d\d°$/);
    // Slot to pin row is measured from its back wall to the centres; the row is parallel: less the hole's radius, a little
    // less again for the slant of a few degrees.
    const { pins } = demo.bridge;
    if (pins === null) throw new Error('the demo has pins');
    const straight = pins.from - pins.hole / 2;
    expect(Number(textOf(items, 'd5'))).toBeLessThanOrEqual(straight + 1e-3);
    expect(Number(textOf(items, 'd5'))).toBeGreaterThan(straight - 0.1);
  });

  it('follows its parts', () => {
    const { pins } = demo.bridge;
    if (pins === null) throw new Error('the demo has pins');
    const moved = { ...demo, bridge: { ...demo.bridge, pins: { ...pins, from: pins.from + 2 } } };
    const [before, after] = [drawn(demo, 'right').items, drawn(moved, 'right').items];
    expect(Number(textOf(after, 'd2')) - Number(textOf(before, 'd2'))).toBeCloseTo(2, 3);
    expect(textOf(after, 'd1')).toBe(textOf(before, 'd1'));
  });

  it('draws nothing for a part that is gone, and keeps the others', () => {
    const bare = { ...demo, bridge: { ...demo.bridge, pins: null } };
    const { items } = drawn(bare, 'right');
    expect(items).toEqual([]);
    const slot: PinnedDimension = {
      kind: 'distance',
      id: 'd9',
      way: 'along',
      from: { kind: 'part', part: 'footprint', feature: 'front edge' },
      to: { kind: 'part', part: 'slot', feature: 'front wall' },
    };
    // Front edge to slot, as the maker typed it.
    expect(Number(textOf(drawn(bare, 'right', [slot]).items, 'd9'))).toBeCloseTo(demo.bridge.slot.fromFront, 3);
  });

  it('lies on the other side for the other hand, and its words with it', () => {
    const [right, left] = [drawn(demo, 'right').items, drawn(demo, 'left').items];
    for (const id of ['d1', 'd2', 'd3', 'd4', 'd5']) expect(textOf(left, id)).toBe(textOf(right, id));
    const [one, other] = [lineOf(right, 'd5').path.start, lineOf(left, 'd5').path.start];
    expect(other.x).toBeCloseTo(-one.x, 9);
    expect(other.y).toBeCloseTo(one.y, 9);
  });

  it('stands across ones behind the bridge, one behind the other', () => {
    const two: readonly PinnedDimension[] = ['a', 'b'].map((id) => ({
      kind: 'distance',
      id,
      way: 'across',
      from: pin(1),
      to: pin(6),
    }));
    const { items, bridge } = drawn(demo, 'right', two);
    const [one, other] = ['a', 'b'].map((id) => lineOf(items, id).path.start.y);
    const back = Math.max(...bridge.points.map(({ at }) => at.y));
    expect(one).toBeGreaterThan(back);
    expect(other).toBeGreaterThan((one ?? 0) + 5);
  });
});
