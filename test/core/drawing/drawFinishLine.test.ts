import { describe, expect, it } from 'vitest';
import { drawFinishLine } from '../../../src/core/drawing/drawFinishLine';
import { pathBounds } from '../../../src/core/geom/pathBounds';
import { rectanglePath } from '../../../src/core/geom/rectanglePath';

describe('drawFinishLine', () => {
  const outlines = [rectanglePath(10, 600, 30, 20), rectanglePath(-60, 600, 30, 20)];

  it('is a part of its own, each outline once', () => {
    const items = drawFinishLine(outlines, 'right');
    expect(items.map(({ id }) => id)).toEqual(['finish-0', 'finish-1']);
    for (const item of items) expect(item).toMatchObject({ part: 'line of the finish', role: 'finish-line' });
    expect(drawFinishLine([], 'right')).toEqual([]);
  });

  it('changes side with the hand', () => {
    const [first] = drawFinishLine(outlines, 'left');
    if (first?.kind !== 'path') throw new Error('no path');
    expect(pathBounds(first.path)).toEqual({ minX: -40, maxX: -10, minY: 600, maxY: 620 });
  });
});
