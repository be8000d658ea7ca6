import { describe, expect, it } from 'vitest';
import { same } from '../../../src/canvas/repaint/same';
import type { PathItem, TextItem } from '../../../src/core/drawing/types';

const EDGE: PathItem = {
  kind: 'path',
  id: 'footprint',
  part: 'footprint',
  role: 'outline',
  layer: 'bridge',
  path: {
    start: { x: 0, y: 0 },
    segments: [
      { kind: 'line', to: { x: 10, y: 0 } },
      { kind: 'arc', to: { x: 0, y: 0 }, centre: { x: 5, y: 0 }, clockwise: true },
    ],
    closed: true,
  },
};
const WORD: TextItem = {
  kind: 'text',
  id: 'word',
  part: 'footprint',
  role: 'note',
  layer: 'text',
  at: { x: 1, y: 2 },
  text: 'TREBLE',
  height: 3,
  anchor: 'middle',
  angle: 0,
};
const copy = <Value>(value: Value): Value => structuredClone(value);

describe('same', () => {
  it('takes a copy for the same', () => {
    expect(same(EDGE, copy(EDGE))).toBe(true);
    expect(same(WORD, copy(WORD))).toBe(true);
  });

  it.each<[string, PathItem | TextItem, PathItem | TextItem]>([
    ['a moved end', EDGE, { ...EDGE, path: { ...EDGE.path, start: { x: 0, y: 1e-9 } } }],
    ['a segment less', EDGE, { ...EDGE, path: { ...EDGE.path, segments: EDGE.path.segments.slice(0, 1) } }],
    [
      'another turn',
      EDGE,
      {
        ...EDGE,
        path: {
          ...EDGE.path,
          segments: [
            EDGE.path.segments[0] as never,
            { kind: 'arc', to: { x: 0, y: 0 }, centre: { x: 5, y: 0 }, clockwise: false },
          ],
        },
      },
    ],
    ['an open path', EDGE, { ...EDGE, path: { ...EDGE.path, closed: false } }],
    ['another role', EDGE, { ...EDGE, role: 'slot' }],
    ['another word', WORD, { ...WORD, text: 'BASS' }],
    ['a text for a path', EDGE, WORD],
  ])('sees %s', (_, one, other) => {
    expect(same(one, other)).toBe(false);
    expect(same(other, one)).toBe(false);
  });
});
