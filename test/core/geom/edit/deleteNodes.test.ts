import { describe, expect, it } from 'vitest';
import { deleteNode, deleteNodes } from '../../../../src/core/geom/edit/deleteNodes';
import { mergeSegments } from '../../../../src/core/geom/edit/mergeSegments';
import { nodesOf } from '../../../../src/core/geom/edit/nodesOf';
import type { Path, Point } from '../../../../src/core/geom/types';
import { polygon } from '../paths';
import { at, box, codeOf, expectMirrored, flowing, swelled, value } from './outlines';

/** A circle of 10 by four arcs. */
const circle: Path = {
  start: at(10, 0),
  segments: [at(0, 10), at(-10, 0), at(0, -10), at(10, 0)].map((to) => ({
    kind: 'arc',
    to,
    centre: at(0, 0),
    clockwise: true,
  })),
  closed: true,
};

describe('mergeSegments', () => {
  const arc = (to: Point, clockwise = true) => ({ kind: 'arc', to, centre: at(0, 0), clockwise }) as const;

  it('makes an arc of two arcs of one circle alone', () => {
    expect(mergeSegments(at(10, 0), arc(at(0, 10)), arc(at(-10, 0)))).toEqual(arc(at(-10, 0)));
    const beside = { ...arc(at(-10, 0)), centre: at(0, 1e-5) };
    expect(mergeSegments(at(10, 0), arc(at(0, 10)), beside).kind).toBe('cubic');
  });

  it('makes none of an arc that turns back, or of two that go round more than once', () => {
    expect(mergeSegments(at(10, 0), arc(at(0, 10)), arc(at(6, 8), false)).kind).toBe('cubic');
    expect(mergeSegments(at(10, 0), arc(at(0, -10)), arc(at(0, 10))).kind).toBe('cubic');
  });
});

describe('deleteNodes', () => {
  it('joins two lines by a line', () => {
    const { path, went, added } = value(deleteNode(box, 1));
    expect(nodesOf(path).map((node) => node.at)).toEqual([at(-20, 0), at(20, 20), at(-20, 20)]);
    expect(path.segments.every(({ kind }) => kind === 'line')).toBe(true);
    expect([went, added]).toEqual([[0, null, 1, 2], []]);
  });

  it('takes node 0 away as any other', () => {
    expect(nodesOf(value(deleteNode(box, 0)).path).map((node) => node.at)).toEqual([
      at(20, 0),
      at(20, 20),
      at(-20, 20),
    ]);
  });

  it('joins two arcs of one circle by their arc, and by no whole circle', () => {
    const once = value(deleteNode(circle, 1)).path;
    expect(once.segments[0]).toEqual({ kind: 'arc', to: at(-10, 0), centre: at(0, 0), clockwise: true });
    const twice = value(deleteNode(once, 1)).path;
    expect(twice.segments[0]).toMatchObject({ kind: 'arc', to: at(0, -10) });
    expect(codeOf(deleteNode(twice, 1))).toBe('outline.fewest');
  });

  it('joins anything else by a curve that leaves and arrives as they did', () => {
    // The line is drawn by handles at its thirds: 10/3 before node 1, 4 after it. Its share is (10/3) / (22/3) = 5/11,
    // so its own first handle of 10/3 becomes 22/3; the curve's last one, 4 before (20, 10), becomes 4·11/6 = 22/3.
    const merged = value(deleteNode(flowing, 1)).path.segments[0];
    if (merged?.kind !== 'cubic') throw new Error('Expected a curve.');
    expect(merged.to).toEqual(at(20, 10));
    expect([merged.c1.x, merged.c1.y]).toEqual([expect.closeTo(22 / 3, 9), 0]);
    expect([merged.c2.x, merged.c2.y]).toEqual([20, expect.closeTo(10 - 22 / 3, 9)]);
  });

  it('takes partners away too', () => {
    const { path, went } = value(deleteNode(swelled, 2, true));
    expect(went).toEqual([0, 1, null, 2, 3, 4, 5, 6, null]);
    expectMirrored(path);
    const centre = value(deleteNode(swelled, 5, true)).path;
    expect(nodesOf(centre)).toHaveLength(8);
    expectMirrored(centre);
  });

  it('takes several away at once', () => {
    const { path, went } = value(deleteNodes(swelled, [1, 2, 6]));
    expect(nodesOf(path).map((node) => node.at)).toEqual([
      at(-30, 0),
      at(35, 15),
      at(30, 20),
      at(0, 28),
      at(-35, 15),
      at(-35, 5),
    ]);
    expect(went).toEqual([0, null, null, 1, 2, 3, null, 4, 5]);
  });

  it('leaves something enclosed', () => {
    const triangle = polygon([
      [0, 0],
      [9, 0],
      [0, 9],
    ]);
    expect(codeOf(deleteNode(triangle, 0))).toBe('outline.fewest');
    expect(codeOf(deleteNodes(box, [0, 1, 2]))).toBe('outline.fewest');
    expect(codeOf(deleteNodes(box, [0, 1], true))).toBe('outline.fewest');
    // Four corners of which the one that is left after node 1 lies between the others.
    const dart = polygon([
      [0, 0],
      [5, 9],
      [10, 0],
      [5, 0],
    ]);
    expect(codeOf(deleteNode(dart, 1))).toBe('outline.fewest');
    expect(codeOf(deleteNode(box, 4))).toBe('outline.noNode');
  });
});
