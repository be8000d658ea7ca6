import { describe, expect, it } from 'vitest';
import { closedSegments } from '../../../src/core/geom/closedSegments';
import type { Arc, Path } from '../../../src/core/geom/types';
import { validatePath } from '../../../src/core/geom/validatePath';
import { cubicLoop, polygon } from './paths';

const arc: Arc = { kind: 'arc', to: { x: 0, y: 1 }, centre: { x: 0, y: 0 }, clockwise: true };
const withArc = (change: Partial<Arc>): Path => ({
  start: { x: 1, y: 0 },
  segments: [{ ...arc, ...change }],
  closed: true,
});
const found = (path: Path): string[] => {
  const checked = validatePath(path);
  return checked.ok ? [] : checked.issues.map((one) => `${one.path} ${one.code}`);
};

describe('validatePath', () => {
  it('passes good paths on as they are', () => {
    const checked = validatePath(cubicLoop);
    expect(checked.ok && checked.value).toBe(cubicLoop);
    expect(found(withArc({}))).toEqual([]);
    expect(found(withArc({ to: { x: 0, y: 1.0000009 } }))).toEqual([]);
  });

  it('names every coordinate that is not finite', () => {
    const bad = { x: 0, y: Number.NaN };
    const path: Path = {
      start: { x: Number.NEGATIVE_INFINITY, y: 0 },
      segments: [
        { kind: 'line', to: bad },
        { kind: 'cubic', c1: bad, c2: bad, to: { x: 1, y: 1 } },
        { ...arc, centre: bad, to: bad },
      ],
      closed: false,
    };
    expect(found(path)).toEqual([
      'start path.notFinite',
      'segments.0.to path.notFinite',
      'segments.1.c1 path.notFinite',
      'segments.1.c2 path.notFinite',
      'segments.2.to path.notFinite',
      'segments.2.centre path.notFinite',
    ]);
  });

  it('refuses arcs with two radii, or none, or a full turn', () => {
    expect(found(withArc({ to: { x: 0, y: 1.0000011 } }))).toEqual(['segments.0 path.arcRadii']);
    expect(found(withArc({ to: { x: 1, y: 0 } }))).toEqual(['segments.0 path.arcEnds']);
    expect(found(withArc({ to: { x: 1, y: 0 }, centre: { x: 1, y: 0 } }))).toEqual(['segments.0 path.arcEnds']);
  });
});

describe('closedSegments', () => {
  const triangle = polygon([
    [0, 0],
    [4, 0],
    [4, 3],
  ]);
  const ends = (path: Path) =>
    closedSegments(path).map(({ start, segment }) => [start.x, start.y, segment.to.x, segment.to.y]);

  it('adds the implied side of a closed path only', () => {
    expect(ends(triangle)).toEqual([
      [0, 0, 4, 0],
      [4, 0, 4, 3],
      [4, 3, 0, 0],
    ]);
    expect(ends({ ...triangle, closed: false })).toEqual([
      [0, 0, 4, 0],
      [4, 0, 4, 3],
    ]);
  });

  it('adds none where the start is repeated or the path is empty', () => {
    expect(
      ends(
        polygon([
          [0, 0],
          [4, 0],
          [4, 3],
          [0, 0],
        ]),
      ),
    ).toHaveLength(3);
    expect(ends(polygon([[0, 0]]))).toEqual([]);
  });
});
