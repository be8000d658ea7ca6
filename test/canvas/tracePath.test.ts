import { describe, expect, it } from 'vitest';
import { type PathTarget, tracePath } from '../../src/canvas/tracePath';
import type { Path } from '../../src/core/geom/types';

/** The calls that a path makes on a canvas, as the HTML standard names them (CanvasPath). */
const callsOf = (path: Path): readonly (readonly unknown[])[] => {
  const calls: (readonly unknown[])[] = [];
  const target = Object.fromEntries(
    (['moveTo', 'lineTo', 'bezierCurveTo', 'arc', 'closePath'] as const).map((name) => [
      name,
      (...given: unknown[]) => calls.push([name, ...given]),
    ]),
  ) as unknown as PathTarget;
  tracePath(target, path);
  return calls;
};

describe('tracePath', () => {
  it('draws lines and curves as they are, and closes what is closed', () => {
    const path: Path = {
      start: { x: 1, y: 2 },
      segments: [
        { kind: 'line', to: { x: 3, y: 4 } },
        { kind: 'cubic', c1: { x: 5, y: 6 }, c2: { x: 7, y: 8 }, to: { x: 9, y: 10 } },
      ],
      closed: true,
    };
    expect(callsOf(path)).toEqual([
      ['moveTo', 1, 2],
      ['lineTo', 3, 4],
      ['bezierCurveTo', 5, 6, 7, 8, 9, 10],
      ['closePath'],
    ]);
    expect(callsOf({ ...path, closed: false }).at(-1)?.[0]).toBe('bezierCurveTo');
  });

  it('draws a quarter of a circle as an arc, either way round; by hand, y down as on the page', () => {
    const quarter = (to: Path['start'], clockwise: boolean): Path => ({
      start: { x: 10, y: 0 },
      segments: [{ kind: 'arc', to, centre: { x: 0, y: 0 }, clockwise }],
      closed: false,
    });
    // Angles grow from + x toward + y, and the last argument says whether the arc runs against that.
    expect(callsOf(quarter({ x: 0, y: 10 }, true))[1]).toEqual(['arc', 0, 0, 10, 0, Math.PI / 2, false]);
    expect(callsOf(quarter({ x: 0, y: -10 }, false))[1]).toEqual(['arc', 0, 0, 10, 0, -Math.PI / 2, true]);
    expect(callsOf(quarter({ x: 0, y: 10 }, false))[1]).toEqual(['arc', 0, 0, 10, 0, (-3 * Math.PI) / 2, true]);
  });
});
