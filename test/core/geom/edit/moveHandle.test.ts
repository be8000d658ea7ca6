import { describe, expect, it } from 'vitest';
import { moveHandle } from '../../../../src/core/geom/edit/moveHandle';
import { moveNode } from '../../../../src/core/geom/edit/moveNode';
import { nodesOf } from '../../../../src/core/geom/edit/nodesOf';
import { setSegmentKind } from '../../../../src/core/geom/edit/setSegmentKind';
import type { Path } from '../../../../src/core/geom/types';
import { at, box, codeOf, expectMirrored, flowing, swelled, value } from './outlines';

const handles = (path: Path, index: number) => {
  const node = nodesOf(path)[index];
  return [node?.before, node?.after];
};

/** All expected places by hand arithmetic. */
describe('moveHandle', () => {
  it('keeps the handle across in line, at its own length', () => {
    // At (20, 10) the handles are 4 long before and 3 after.
    expect(handles(value(moveHandle(flowing, 2, 'after', at(26, 10))), 2)).toEqual([at(16, 10), at(26, 10)]);
    expect(handles(value(moveHandle(flowing, 2, 'before', at(20, 2))), 2)).toEqual([at(20, 2), at(20, 13)]);
  });

  it('moves the handle at a corner alone', () => {
    const kinked: Path = {
      ...flowing,
      segments: flowing.segments.map((segment, index) =>
        index === 2 && segment.kind === 'cubic' ? { ...segment, c1: at(24, 14) } : segment,
      ),
    };
    expect(handles(value(moveHandle(kinked, 2, 'before', at(19, 3))), 2)).toEqual([at(19, 3), at(24, 14)]);
  });

  it('keeps a handle beside a line on its tangent, and away from the node', () => {
    expect(handles(value(moveHandle(flowing, 1, 'after', at(16, 7))), 1)).toEqual([null, at(16, 0)]);
    expect(handles(value(moveHandle(flowing, 1, 'after', at(3, 7))), 1)).toEqual([null, at(10.01, 0)]);
    expect(handles(value(moveHandle(flowing, 3, 'before', at(15, 1))), 3)).toEqual([at(15, 20), null]);
  });

  it('keeps a handle beside an arc on its tangent', () => {
    expect(handles(value(moveHandle(swelled, 4, 'after', at(18, 25))), 4)).toEqual([null, at(18, 20)]);
  });

  it('lets a handle of no length lie', () => {
    expect(handles(value(moveHandle(flowing, 2, 'after', at(20, 10))), 2)).toEqual([at(20, 6), at(20, 10)]);
  });

  it('does the same mirrored at the partner', () => {
    const moved = value(moveHandle(swelled, 4, 'after', at(18, 25), true));
    expect(handles(moved, 6)).toEqual([at(-18, 20), null]);
    expectMirrored(moved);
  });

  it('keeps both handles of a node on the centreline mirror images', () => {
    for (const side of ['before', 'after'] as const) {
      const sign = side === 'before' ? 1 : -1;
      const moved = value(moveHandle(swelled, 5, side, at(sign * 9, 33), true));
      expect(handles(moved, 5)).toEqual([at(9, 28), at(-9, 28)]);
      expectMirrored(moved);
    }
  });

  it('keeps both handles of a curve across the centreline mirror images', () => {
    const bowed = value(setSegmentKind(box, 2, 'curve', {}, true)).path;
    for (const moved of [
      value(moveHandle(bowed, 2, 'after', at(9, 26), true)),
      value(moveHandle(bowed, 3, 'before', at(-9, 26), true)),
    ])
      expect(moved.segments[2]).toEqual({ kind: 'cubic', c1: at(9, 26), c2: at(-9, 26), to: at(-20, 20) });
    const carried = [value(moveNode(bowed, 2, at(22, 21), true)), value(moveNode(bowed, 3, at(-22, 21), true))];
    for (const moved of carried) expectMirrored(moved);
    expect(carried[0]).toEqual(carried[1]);
  });

  it('keeps them so at a corner on the centreline', () => {
    const pointed: Path = {
      ...swelled,
      segments: swelled.segments.map((segment, index) => {
        if (segment.kind !== 'cubic') return segment;
        return index === 4 ? { ...segment, c2: at(12, 24) } : { ...segment, c1: at(-12, 24) };
      }),
    };
    const moved = value(moveHandle(pointed, 5, 'after', at(-7, 20), true));
    expect(handles(moved, 5)).toEqual([at(7, 20), at(-7, 20)]);
  });

  it('is refused where there is no curve, no node or no place', () => {
    expect(codeOf(moveHandle(flowing, 1, 'before', at(0, 0)))).toBe('outline.noHandle');
    expect(codeOf(moveHandle(box, 9, 'before', at(0, 0)))).toBe('outline.noNode');
    expect(codeOf(moveHandle(flowing, 1, 'after', at(Number.POSITIVE_INFINITY, 0)))).toBe('outline.place');
  });
});
