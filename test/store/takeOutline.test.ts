import { describe, expect, it } from 'vitest';
import { pathBounds } from '../../src/core/geom/pathBounds';
import { signedArea } from '../../src/core/geom/signedArea';
import type { Path, Point } from '../../src/core/geom/types';
import { demoProject } from '../../src/core/kinds/demo';
import { takeOutline } from '../../src/store/commands/takeOutline';
import { expectReversible } from './expectReversible';
import { MORNING } from './startStore';

const demo = demoProject('test', MORNING);
const left = { ...demo, instrument: { ...demo.instrument, hand: 'left' as const } };

const polygon = (...corners: readonly (readonly [number, number])[]): Path => {
  const [start = { x: 0, y: 0 }, ...rest] = corners.map(([x, y]): Point => ({ x, y }));
  return { start, segments: rest.map((to) => ({ kind: 'line', to })), closed: true };
};

/** The outline that a project has after taking a path. */
const taken = (path: Path, project = demo) => {
  const result = takeOutline(project, path);
  if (!result.ok) throw new Error(result.issues[0]?.message);
  const { outline } = result.value.bridge;
  if (outline.kind !== 'drawn') throw new Error('The outline is not a drawn one.');
  return outline;
};

/** 150 wide, its front edge dips to y = 47 on the middle and stands at 40 at both ends. */
const WAVE = polygon([20, 40], [95, 47], [170, 40], [170, 80], [20, 80]);

describe('takeOutline', () => {
  it('is one step that can be undone, and keeps in a file', () => {
    const after = expectReversible('Outline from a file', ({ change }) => {
      change('Outline from a file', (project) => takeOutline(project, WAVE));
    });
    expect(after.bridge).toEqual({ ...demo.bridge, outline: after.bridge.outline });
  });

  it('centres the outline, its front edge on the centreline at 0', () => {
    const { path, symmetric } = taken(WAVE);
    expect(pathBounds(path)).toEqual({ minX: -75, minY: -7, maxX: 75, maxY: 33 });
    expect(symmetric).toBe(true);
  });

  it('finds the front edge on arcs and cubics too', () => {
    const arc: Path = {
      start: { x: 0, y: 10 },
      segments: [
        { kind: 'arc', to: { x: 100, y: 10 }, centre: { x: 50, y: 10 }, clockwise: true },
        { kind: 'line', to: { x: 100, y: 90 } },
        { kind: 'line', to: { x: 0, y: 90 } },
      ],
      closed: true,
    };
    // Half a circle of radius 50 over y = 10: its crown stands at −40 and becomes 0, the corners 130.
    expect(pathBounds(taken(arc).path).minY).toBeCloseTo(0, 9);
    expect(pathBounds(taken(arc).path).maxY).toBeCloseTo(130, 9);
    const cubic: Path = {
      start: { x: 0, y: 0 },
      segments: [
        { kind: 'cubic', c1: { x: 30, y: 40 }, c2: { x: 70, y: 40 }, to: { x: 100, y: 0 } },
        { kind: 'line', to: { x: 100, y: 90 } },
        { kind: 'line', to: { x: 0, y: 90 } },
      ],
      closed: true,
    };
    // A cubic with both handles 40 deep is 30 deep in the middle: its ends stand at −30.
    expect(pathBounds(taken(cubic).path).minY).toBeCloseTo(-30, 9);
  });

  it('tells a symmetric outline from one that is off by more than 0.01 mm', () => {
    const off = (by: number) => polygon([0, 0], [150, 0], [150, 30 + by], [75, 35], [0, 30]);
    expect(taken(off(0)).symmetric).toBe(true);
    expect(taken(off(0.009)).symmetric).toBe(true);
    expect(taken(off(0.02)).symmetric).toBe(false);
  });

  it('runs clockwise whichever way it was drawn', () => {
    for (const path of [WAVE, polygon([20, 80], [170, 80], [170, 40], [95, 47], [20, 40])])
      expect(signedArea(taken(path).path)).toBeGreaterThan(0);
  });

  it('is turned over for a left hand, so that what is seen stays as seen', () => {
    // A horn on the right-hand side as seen; the project keeps it on its own left, which the drawing shows on the right.
    const horn = polygon([0, 0], [150, 0], [150, 60], [140, 30], [0, 30]);
    const lowest = (project: typeof demo): number | undefined =>
      taken(horn, project).path.segments.find(({ to }) => to.y === 60)?.to.x;
    expect(lowest(demo)).toBe(75);
    expect(lowest(left)).toBe(-75);
  });

  it('refuses an open line and one that encloses nothing', () => {
    const codeOf = (path: Path): string => {
      const result = takeOutline(demo, path);
      return result.ok ? '' : (result.issues[0]?.code ?? '');
    };
    expect(codeOf({ ...WAVE, closed: false })).toBe('path.open');
    expect(codeOf(polygon([0, 0], [150, 0]))).toBe('path.empty');
    expect(codeOf(polygon([0, 0], [150, Number.NaN]))).toBe('path.notFinite');
  });

  // A half disc whose curved side is cut in three on the left and not at all on the right: alike by shape alone.
  it('pairs the nodes of an outline that is alike on both sides by shape', () => {
    const at = (degrees: number): Point => ({
      x: 60 * Math.cos((degrees * Math.PI) / 180),
      y: 60 * Math.sin((degrees * Math.PI) / 180),
    });
    const to = (degrees: number) => ({
      kind: 'arc' as const,
      to: at(degrees),
      centre: { x: 0, y: 0 },
      clockwise: true,
    });
    const { path, symmetric } = taken({ start: at(0), segments: [to(110), to(150), to(180)], closed: true });
    expect(symmetric).toBe(true);
    const nodes = path.segments.map((segment) => segment.to);
    for (const node of nodes)
      expect(
        nodes.some(({ x, y }) => x === 0 - node.x && y === node.y),
        JSON.stringify(node),
      ).toBe(true);
    // Half of a disc of radius 60.
    expect(signedArea(path)).toBeCloseTo((Math.PI * 3600) / 2, 6);
  });
});
