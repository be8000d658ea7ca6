import { describe, expect, it } from 'vitest';
import { nodesOf } from '../../../../src/core/geom/edit/nodesOf';
import { setJoin } from '../../../../src/core/geom/edit/setJoin';
import type { Path, Point } from '../../../../src/core/geom/types';
import { at, box, codeOf, expectMirrored, flowing, swelled, value } from './outlines';

const handles = (path: Path, index: number) => {
  const node = nodesOf(path)[index];
  return [node?.before, node?.after];
};

/** flowing with other handles at node 2, which lies at (20, 10). */
const kinked = (c2: Point, c1: Point): Path => ({
  ...flowing,
  segments: flowing.segments.map((segment, index) => {
    if (segment.kind !== 'cubic') return segment;
    return index === 1 ? { ...segment, c2 } : { ...segment, c1 };
  }),
});

/** All expected places by hand arithmetic. */
describe('setJoin', () => {
  it('lays the handles of a corner to a third of their chords', () => {
    // Chords of node 2: from (10, 0) and to (10, 20).
    const [before, after] = handles(value(setJoin(flowing, 2, 'corner')), 2);
    expect([before?.x, before?.y]).toEqual([expect.closeTo(50 / 3, 12), expect.closeTo(20 / 3, 12)]);
    expect([after?.x, after?.y]).toEqual([expect.closeTo(50 / 3, 12), expect.closeTo(40 / 3, 12)]);
    expect(nodesOf(value(setJoin(flowing, 2, 'corner')))[2]?.join).toBe('corner');
  });

  it('makes a corner beside a line of the curve alone', () => {
    const cornered = value(setJoin(flowing, 1, 'corner'));
    expect(cornered.segments[0]).toEqual(flowing.segments[0]);
    expect(handles(cornered, 1)[1]?.y).toBeCloseTo(10 / 3, 12);
  });

  it('turns the handles of two curves half-way, each by its own length', () => {
    // Arriving along +x over 4, leaving along +y over 3: the tangent is the diagonal.
    const smooth = value(setJoin(kinked(at(16, 10), at(20, 13)), 2, 'smooth'));
    const root = Math.SQRT1_2;
    const [before, after] = handles(smooth, 2);
    expect([before?.x, before?.y]).toEqual([expect.closeTo(20 - 4 * root, 12), expect.closeTo(10 - 4 * root, 12)]);
    expect([after?.x, after?.y]).toEqual([expect.closeTo(20 + 3 * root, 12), expect.closeTo(10 + 3 * root, 12)]);
    expect(nodesOf(smooth)[2]?.join).toBe('smooth');
  });

  it('smooths a point that turns right back along the line between its neighbours', () => {
    // Both handles at (16, 10); the neighbours lie at (10, 0) and (10, 20).
    expect(handles(value(setJoin(kinked(at(16, 10), at(16, 10)), 2, 'smooth')), 2)).toEqual([at(20, 6), at(20, 14)]);
  });

  it('gives a handle without length a third of its chord', () => {
    const [before, after] = handles(value(setJoin(kinked(at(16, 10), at(20, 10)), 2, 'smooth')), 2);
    const reach = Math.hypot((after?.x ?? 0) - 20, (after?.y ?? 0) - 10);
    expect(reach).toBeCloseTo(Math.hypot(10, 10) / 3, 12);
    expect(Math.hypot((before?.x ?? 0) - 20, (before?.y ?? 0) - 10)).toBeCloseTo(4, 12);
  });

  it('lays a handle along the line or arc beside it', () => {
    const cornered = value(setJoin(flowing, 1, 'corner'));
    const smooth = value(setJoin(cornered, 1, 'smooth'));
    const chord = Math.hypot(10, 10) / 3;
    expect(handles(smooth, 1)).toEqual([null, { x: expect.closeTo(10 + chord, 12), y: 0 }]);
    const into = value(setJoin(value(setJoin(flowing, 3, 'corner')), 3, 'smooth'));
    expect(handles(into, 3)).toEqual([{ x: expect.closeTo(10 + chord, 12), y: 20 }, null]);
    const beside = value(setJoin(value(setJoin(swelled, 4, 'corner', true)), 4, 'smooth', true));
    expect(handles(beside, 4)[1]?.y).toBeCloseTo(20, 12);
    expectMirrored(beside);
  });

  it('does the partner too, and a node on the centreline evenly', () => {
    const cornered = value(setJoin(swelled, 5, 'corner', true));
    expect(handles(cornered, 5)[0]).toEqual(at(10, 28 - 8 / 3));
    expectMirrored(cornered);
    const smooth = value(setJoin(cornered, 5, 'smooth', true));
    expect(handles(smooth, 5)[0]?.y).toBeCloseTo(28, 12);
    expectMirrored(smooth);
  });

  it('leaves what is so already', () => {
    expect(value(setJoin(box, 1, 'corner'))).toEqual({
      ...box,
      segments: [...box.segments, { kind: 'line', to: box.start }],
    });
    expect(value(setJoin(swelled, 2, 'smooth'))).toEqual(swelled);
  });

  it('is refused without a curve to turn', () => {
    expect(codeOf(setJoin(box, 1, 'smooth'))).toBe('outline.noCurve');
    expect(codeOf(setJoin(swelled, 2, 'corner'))).toBe('outline.noCurve');
    expect(codeOf(setJoin(box, 4, 'smooth'))).toBe('outline.noNode');
  });
});
