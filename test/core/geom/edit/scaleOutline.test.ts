import { describe, expect, it } from 'vitest';
import { nodesOf } from '../../../../src/core/geom/edit/nodesOf';
import { scaleOutline } from '../../../../src/core/geom/edit/scaleOutline';
import { shiftPath } from '../../../../src/core/geom/edit/shiftPath';
import { pathArea } from '../../../../src/core/geom/pathArea';
import { pathBounds } from '../../../../src/core/geom/pathBounds';
import { jstsArea } from './jstsArea';
import { arched, at, box, codeOf, expectMirrored, flowing, swelled, value } from './outlines';

/** swelled is 70 across and 28 along; all figures by hand. */
describe('scaleOutline', () => {
  it('scales both ways alike, and keeps arcs', () => {
    const { path, added } = value(scaleOutline(swelled, { length: 140, proportional: true }, true));
    expect(added).toEqual([]);
    expect(path.segments[1]).toEqual({ kind: 'arc', to: at(70, 10), centre: at(60, 10), clockwise: true });
    expect(path.segments[4]).toEqual({ kind: 'cubic', c1: at(40, 40), c2: at(24, 56), to: at(0, 56) });
    expectMirrored(path);
    expect(value(scaleOutline(swelled, { width: 56, proportional: true })).path).toEqual(path);
  });

  it('scales one way and leaves the other', () => {
    const { path } = value(scaleOutline(box, { length: 60, proportional: false }));
    expect(nodesOf(path).map((node) => node.at)).toEqual([at(-30, 0), at(30, 0), at(30, 20), at(-30, 20)]);
    const { path: deeper } = value(scaleOutline(box, { width: 25, proportional: false }));
    expect(nodesOf(deeper)[2]?.at).toEqual(at(20, 25));
  });

  it('scales both ways by their own figures', () => {
    const { minX, maxX, minY, maxY } = pathBounds(
      value(scaleOutline(swelled, { length: 150, width: 30, proportional: false }, true)).path,
    );
    expect([minX, maxX, minY, maxY]).toEqual([
      expect.closeTo(-75, 6),
      expect.closeTo(75, 6),
      expect.closeTo(0, 6),
      expect.closeTo(30, 6),
    ]);
  });

  it('draws arcs by cubics of 30° when the ways differ', () => {
    const { path, went, added } = value(scaleOutline(swelled, { length: 140, proportional: false }, true));
    // Four quarter turns of three cubics each: two new nodes in each.
    expect(went).toEqual([0, 1, 4, 5, 8, 9, 10, 13, 14]);
    expect(added).toEqual([2, 3, 6, 7, 11, 12, 15, 16]);
    expect(path.segments.some(({ kind }) => kind === 'arc')).toBe(false);
    expectMirrored(path);
    // 30° round the corner about (30, 5): 5·sin 30° across, doubled, and 5·cos 30° along.
    expect(nodesOf(path)[2]?.at.x).toBeCloseTo(2 * (30 + 2.5), 9);
    expect(nodesOf(path)[2]?.at.y).toBeCloseTo(5 - 5 * Math.cos(Math.PI / 6), 9);
    // Scaling one way scales the area alike; the cubics stray by a share of 4e-7.
    expect(pathArea(path) / (2 * pathArea(swelled))).toBeCloseTo(1, 7);
    expect(Math.abs(pathArea(path) - jstsArea(path))).toBeLessThan(1e-5);
  });

  it('counts from the origin: the front edge and the centreline stay', () => {
    const behind = shiftPath(arched, at(2, 3));
    const { path } = value(scaleOutline(behind, { length: 12, proportional: true }));
    expect(path.start).toEqual(at(4, 6));
  });

  it('wants a size, one in proportion', () => {
    expect(codeOf(scaleOutline(box, { proportional: true }))).toBe('outline.scale');
    expect(codeOf(scaleOutline(box, { length: 60, width: 30, proportional: true }))).toBe('outline.scale');
    for (const none of [0, -1, Number.NaN, Number.POSITIVE_INFINITY])
      expect(codeOf(scaleOutline(box, { width: none, proportional: false }))).toBe('outline.scale');
    expect(codeOf(scaleOutline(flowing, { length: 30, proportional: true }, true))).toBe('outline.unpaired');
  });
});

describe('shiftPath', () => {
  it('moves every figure of a path', () => {
    expect(shiftPath(arched, at(1, -2))).toEqual({
      start: at(1, -2),
      segments: [
        { kind: 'arc', to: at(7, -2), centre: at(4, 2), clockwise: true },
        { kind: 'line', to: at(7, 18) },
        { kind: 'line', to: at(1, 18) },
      ],
      closed: true,
    });
    expect(shiftPath(flowing, at(0, 5)).segments[1]).toEqual({
      kind: 'cubic',
      c1: at(14, 5),
      c2: at(20, 11),
      to: at(20, 15),
    });
  });
});
