import { describe, expect, it } from 'vitest';
import { distanceToPath } from '../../../../src/core/geom/distanceToPath';
import { nodesOf } from '../../../../src/core/geom/edit/nodesOf';
import { roundCorner } from '../../../../src/core/geom/edit/roundCorner';
import { setSegmentKind } from '../../../../src/core/geom/edit/setSegmentKind';
import { pathArea } from '../../../../src/core/geom/pathArea';
import type { Path } from '../../../../src/core/geom/types';
import { polygon } from '../paths';
import { jstsArea } from './jstsArea';
import { at, box, codeOf, expectMirrored, swelled, value, wordsOf } from './outlines';

const places = (path: Path) => nodesOf(path).map((node) => node.at);

/** A half disc of 10, its straight side from (−10, 0) to (10, 0). */
const disc: Path = {
  start: at(-10, 0),
  segments: [
    { kind: 'line', to: at(10, 0) },
    { kind: 'arc', to: at(0, 10), centre: at(0, 0), clockwise: true },
    { kind: 'arc', to: at(-10, 0), centre: at(0, 0), clockwise: true },
  ],
  closed: true,
};

const near = (x: number, y: number) => ({ x: expect.closeTo(x, 9), y: expect.closeTo(y, 9) });

/** On straight sides the arc begins r·tan(turn/2) from the corner (elementary geometry); the rest by hand. */
describe('roundCorner', () => {
  it('rounds a square corner', () => {
    const { path, went, added } = value(roundCorner(box, 1, 5));
    expect(places(path)).toEqual([at(-20, 0), near(15, 0), near(20, 5), at(20, 20), at(-20, 20)]);
    expect(path.segments[1]).toMatchObject({ kind: 'arc', centre: near(15, 5), clockwise: true });
    expect([went, added]).toEqual([
      [0, null, 3, 4],
      [1, 2],
    ]);
    expect(nodesOf(path).map(({ join }) => join)).toEqual(['corner', 'smooth', 'smooth', 'corner', 'corner']);
    // A square corner loses (1 − π/4)·r².
    expect(pathArea(path)).toBeCloseTo(800 - (1 - Math.PI / 4) * 25, 9);
  });

  it('rounds node 0, and a corner that turns the other way', () => {
    const { path } = value(roundCorner(box, 0, 4));
    expect(path.segments[0]).toMatchObject({ kind: 'arc', centre: near(-16, 4), clockwise: true });
    const hooked = polygon([
      [0, 0],
      [20, 0],
      [20, 10],
      [10, 10],
      [10, 20],
      [0, 20],
    ]);
    const inner = value(roundCorner(hooked, 3, 2)).path;
    expect(inner.segments[3]).toMatchObject({ kind: 'arc', centre: near(12, 12), clockwise: false });
    expect(pathArea(inner)).toBeCloseTo(300 + (1 - Math.PI / 4) * 4, 9);
  });

  it('rounds a sharp corner by its angle', () => {
    // 60° at each corner of a triangle of 20: the arc begins 3·tan 60° = 5.196… from it.
    const triangle = polygon([
      [0, 0],
      [20, 0],
      [10, 10 * Math.sqrt(3)],
    ]);
    const { path } = value(roundCorner(triangle, 0, 3));
    expect(places(path)[1]).toEqual(near(5.196152422706632, 0));
    expect(path.segments[0]).toMatchObject({ centre: near(5.196152422706632, 3) });
    // The whole side of 20 gives 20 / tan 60° = 11.547.
    const large = roundCorner(triangle, 0, 12);
    expect(codeOf(large)).toBe('outline.radiusLarge');
    expect(wordsOf(large)).toContain('12.00 mm');
    expect(wordsOf(large)).toContain('11.54 mm');
  });

  it('rounds the corner of a line and an arc', () => {
    // Centre at r from the line and 10 − r from the arc's: for r = 3.2 at (6, 3.2), as 36 + 10.24 = 6.8².
    const { path } = value(roundCorner(disc, 1, 3.2));
    expect(path.segments[1]).toMatchObject({ kind: 'arc', centre: near(6, 3.2), clockwise: true });
    expect(places(path).slice(1, 3)).toEqual([near(6, 0), near((6 * 10) / 6.8, (3.2 * 10) / 6.8)]);
    expect(Math.abs(pathArea(path) - jstsArea(path))).toBeLessThan(1e-6);
  });

  it('rounds the corner of a line and a curve', () => {
    const path: Path = {
      start: at(-20, 0),
      segments: [
        { kind: 'line', to: at(20, 0) },
        { kind: 'cubic', c1: at(24, 8), c2: at(26, 16), to: at(14, 24) },
        { kind: 'line', to: at(-20, 20) },
      ],
      closed: true,
    };
    const rounded = value(roundCorner(path, 1, 4)).path;
    const arc = rounded.segments[1];
    if (arc?.kind !== 'arc') throw new Error('Expected an arc.');
    // Tangent to both: its centre is as far from each side as the radius.
    const line: Path = { start: path.start, segments: path.segments.slice(0, 1), closed: false };
    const curve: Path = { start: at(20, 0), segments: path.segments.slice(1, 2), closed: false };
    expect(distanceToPath(line, arc.centre)).toBeCloseTo(4, 9);
    expect(distanceToPath(curve, arc.centre)).toBeCloseTo(4, 9);
    expect(distanceToPath(curve, arc.to)).toBeLessThan(1e-9);
    expect(
      nodesOf(rounded)
        .map(({ join }) => join)
        .slice(1, 3),
    ).toEqual(['smooth', 'smooth']);
  });

  it('uses a side up wholly, and then says what still fits', () => {
    const once = value(roundCorner(box, 1, 10)).path;
    const { path, went, added } = value(roundCorner(once, 3, 10));
    // The end of 20 is two quarter rounds of 10.
    expect(places(path)).toEqual([at(-20, 0), near(10, 0), near(20, 10), near(10, 20), at(-20, 20)]);
    expect(path.segments.map(({ kind }) => kind)).toEqual(['line', 'arc', 'arc', 'line', 'line']);
    expect([went, added]).toEqual([[0, 1, 2, null, 4], [3]]);
    expect(wordsOf(roundCorner(once, 3, 10.1))).toContain('10.00 mm');
    const whole = value(roundCorner(box, 1, 20)).path;
    expect(places(whole)).toEqual([at(-20, 0), near(0, 0), near(20, 20), at(-20, 20)]);
    expect(wordsOf(roundCorner(box, 1, 20.5))).toContain('20.00 mm');
  });

  it('rounds the partner too, on the side that both share as well', () => {
    const both = value(roundCorner(box, 1, 5, true));
    expect(both.went).toEqual([null, null, 4, 5]);
    expect(both.added).toEqual([0, 1, 2, 3]);
    expectMirrored(both.path);
    // Arcs of 5 in the half disc meet one another on the line and on the arc: 100 = 20·r.
    expect(codeOf(roundCorner(disc, 1, 5.01, true))).toBe('outline.radiusLarge');
    expect(wordsOf(roundCorner(disc, 1, 5.01, true))).toMatch(/largest that does is (4\.99|5\.00) mm/);
    expectMirrored(value(roundCorner(disc, 1, 4.9, true)).path);
  });

  it('rounds a corner on the centreline evenly', () => {
    const pointed = value(setSegmentKind(value(setSegmentKind(swelled, 4, 'line', {}, true)).path, 0, 'line')).path;
    const { path } = value(roundCorner(pointed, 5, 12, true));
    expectMirrored(path);
    expect(path.segments[5]).toMatchObject({ kind: 'arc', centre: { x: 0 } });
  });

  it('is refused at a smooth node, without a radius, and without a node', () => {
    expect(codeOf(roundCorner(swelled, 1, 2))).toBe('outline.noCorner');
    for (const none of [0, -1, Number.NaN, Number.POSITIVE_INFINITY])
      expect(codeOf(roundCorner(box, 1, none))).toBe('outline.radius');
    expect(codeOf(roundCorner(box, 4, 1))).toBe('outline.noNode');
  });
});
