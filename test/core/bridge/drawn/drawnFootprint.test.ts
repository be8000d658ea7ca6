import { describe, expect, it } from 'vitest';
import { drawnFootprint } from '../../../../src/core/bridge/drawn/drawnFootprint';
import { drawnFrom } from '../../../../src/core/bridge/drawn/drawnFrom';
import { footprintOf } from '../../../../src/core/bridge/footprintOf';
import { SHAPE_NAMES } from '../../../../src/core/document/shapeNames';
import { usualParameters } from '../../../../src/core/document/shapeParameters';
import type { ShapeName } from '../../../../src/core/document/types';
import { isSymmetric } from '../../../../src/core/geom/edit/isSymmetric';
import { outlineFaults } from '../../../../src/core/geom/edit/outlineFaults';
import type { Path } from '../../../../src/core/geom/types';
import { arched, at, box, codeOf, swelled, value } from '../../geom/edit/outlines';
import { polygon } from '../../geom/paths';

const SHAPES = Object.keys(SHAPE_NAMES) as ShapeName[];

const shape = (name: ShapeName, changes = {}) => ({
  shape: name,
  parameters: { ...usualParameters(name), ...changes },
});

const drawn = (path: Path) => ({ kind: 'drawn', path, symmetric: false }) as const;

const pointsOf = (path: Path) =>
  Object.fromEntries(value(drawnFootprint(drawn(path))).points.map(({ id, label, at: place }) => [id, [label, place]]));

describe('drawnFrom', () => {
  it.each(SHAPES)('takes the very path of the shape %s', (name) => {
    const outline = value(drawnFrom(shape(name)));
    expect(outline).toEqual({ kind: 'drawn', path: value(footprintOf(shape(name))).outline, symmetric: true });
    expect(isSymmetric(outline.path, 1e-9)).toBe(true);
    expect(outlineFaults(outline.path)).toEqual([]);
  });

  it('says what is wrong with a shape', () => {
    expect(codeOf(drawnFrom(shape('rectangular', { corner: 999 })))).toBe('rectangular.corner');
  });
});

/** All expected places by hand. */
describe('drawnFootprint', () => {
  it('names the corners of a box, its tips and where it crosses the centreline', () => {
    const footprint = value(drawnFootprint(drawn(box)));
    expect(footprint.outline).toBe(box);
    expect(footprint.faceLines).toEqual([]);
    expect(pointsOf(box)).toEqual({
      'front-treble': ['front corner, treble', at(20, 0)],
      'front-bass': ['front corner, bass', at(-20, 0)],
      'back-treble': ['back corner, treble', at(20, 20)],
      'back-bass': ['back corner, bass', at(-20, 20)],
      'tip-treble': ['tip, treble', at(20, 10)],
      'tip-bass': ['tip, bass', at(-20, 10)],
      'front-crossing': ['front edge on the centreline', at(0, 0)],
      'back-crossing': ['back edge on the centreline', at(0, 20)],
    });
  });

  it('names the ends of the edges where corners are rounded', () => {
    expect(pointsOf(swelled)).toMatchObject({
      'front-treble': ['front edge end, treble', at(30, 0)],
      'front-bass': ['front edge end, bass', at(-30, 0)],
      'back-treble': ['back edge end, treble', at(30, 20)],
      'back-bass': ['back edge end, bass', at(-30, 20)],
      'tip-treble': ['tip, treble', at(35, 10)],
      'back-crossing': ['back edge on the centreline', at(0, 28)],
    });
  });

  it('names other corners by their numbers and sides', () => {
    const path = polygon([
      [-20, 0],
      [0, -2],
      [20, 0],
      [20, 20],
      [8, 14],
      [-8, 16],
      [-20, 20],
    ]);
    expect(pointsOf(path)).toMatchObject({
      'node-2': ['node 2, on the centreline', at(0, -2)],
      'node-5': ['node 5, treble', at(8, 14)],
      'node-6': ['node 6, bass', at(-8, 16)],
      'front-crossing': ['front edge on the centreline', at(0, -2)],
      'back-crossing': ['back edge on the centreline', at(0, 15)],
    });
  });

  it('finds the tips of arcs and curves between nodes', () => {
    const path: Path = {
      start: at(-10, 0),
      segments: [
        { kind: 'line', to: at(8, 0) },
        // About (4, 3), r 5: out to (9, 3).
        { kind: 'arc', to: at(8, 6), centre: at(4, 3), clockwise: true },
        { kind: 'line', to: at(-10, 6) },
        // x = −10 − 3·4·t(1 − t) is least at ½: −13.
        { kind: 'cubic', c1: at(-14, 4), c2: at(-14, 2), to: at(-10, 0) },
      ],
      closed: true,
    };
    expect(pointsOf(path)['tip-treble']).toEqual(['tip, treble', at(9, 3)]);
    const [, bass] = pointsOf(path)['tip-bass'] ?? [];
    expect(bass).toEqual({ x: expect.closeTo(-13, 12), y: expect.closeTo(3, 9) });
  });

  it.each(SHAPES)('names the same edge ends as the shape %s does', (name) => {
    const named = value(footprintOf(shape(name))).points;
    const points = value(footprintOf(value(drawnFrom(shape(name))))).points;
    const ends = named.filter(({ id }) => ['front-treble', 'front-bass', 'back-treble', 'back-bass'].includes(id));
    expect(ends.length).toBe(4);
    for (const { id, at: place } of ends) {
      const own = points.find((point) => point.id === id)?.at;
      expect(own?.x).toBeCloseTo(place.x, 9);
      expect(own?.y).toBeCloseTo(place.y, 9);
    }
  });

  it('has each id once', () => {
    for (const path of [
      box,
      swelled,
      polygon([
        [-9, 0],
        [9, 0],
        [0, 20],
      ]),
    ]) {
      const ids = value(drawnFootprint(drawn(path))).points.map(({ id }) => id);
      expect(new Set(ids).size).toBe(ids.length);
    }
  });

  it('says why there is none', () => {
    expect(codeOf(drawnFootprint(drawn({ ...box, closed: false })))).toBe('path.open');
    expect(
      codeOf(
        drawnFootprint(
          drawn(
            polygon([
              [5, 0],
              [20, 0],
              [20, 20],
            ]),
          ),
        ),
      ),
    ).toBe('outline.offCentre');
    expect(
      codeOf(
        drawnFootprint(
          drawn(
            polygon([
              [5, 0],
              [Number.NaN, 0],
              [20, 20],
            ]),
          ),
        ),
      ),
    ).toBe('path.notFinite');
    expect(value(drawnFootprint(drawn(arched))).points.length).toBeGreaterThan(0);
  });
});
