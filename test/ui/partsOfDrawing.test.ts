import { describe, expect, it } from 'vitest';
import type { Item } from '../../src/core/drawing/types';
import { partsOfDrawing } from '../../src/ui/drawing/partsOfDrawing';

const line = (id: string, part: string, from: readonly [number, number], to: readonly [number, number]): Item => ({
  kind: 'path',
  id,
  part,
  role: 'slot',
  layer: 'slot',
  path: {
    start: { x: from[0], y: from[1] },
    segments: [{ kind: 'line', to: { x: to[0], y: to[1] } }],
    closed: false,
  },
});
const ITEMS: readonly Item[] = [
  line('a', 'pin 3', [9, 640], [11, 642]),
  { ...line('a-cross', 'pin 3', [0, 600], [20, 700]), role: 'cross' },
  line('b', 'footprint', [-50, 625], [50, 625]),
  line('c', 'footprint', [-50, 655], [50, 655]),
  {
    kind: 'text',
    id: 'd',
    part: 'words alone',
    role: 'note',
    layer: 'text',
    at: { x: 0, y: 0 },
    text: 'x',
    height: 3,
    anchor: 'start',
    angle: 0,
  },
];
const show = (mm: number): string => mm.toFixed(1);

describe('partsOfDrawing', () => {
  it('tells each part once, with its middle and its size', () => {
    expect(partsOfDrawing(ITEMS, 'right', 'nut', show)).toEqual([
      {
        part: 'pin 3',
        name: 'Pin 3',
        place: 'Middle 641.0 from the nut, 10.0 to the treble side. 2.0 across, 2.0 along.',
      },
      {
        part: 'footprint',
        name: 'Footprint',
        place: 'Middle 640.0 from the nut, on the centreline. 100.0 across, 30.0 along.',
      },
    ]);
  });

  it('names the side by the hand that the drawing was made for', () => {
    expect(partsOfDrawing(ITEMS, 'left', 'nut', show)[0]?.place).toContain('10.0 to the bass side');
  });
});
