import { describe, expect, it } from 'vitest';
import { nodesOf } from '../../../../src/core/geom/edit/nodesOf';
import { polygon } from '../paths';
import { at, box, flowing, swelled } from './outlines';

/** A way that turns by so many degrees at node 1. */
const bent = (degrees: number) => {
  const angle = (degrees * Math.PI) / 180;
  return polygon([
    [0, 0],
    [10, 0],
    [10 + 10 * Math.cos(angle), 10 * Math.sin(angle)],
    [5, 20],
  ]);
};

describe('nodesOf', () => {
  it('counts the implied closing line, and starts each segment at the node of its number', () => {
    expect(nodesOf(box).map((node) => [node.index, node.at])).toEqual([
      [0, at(-20, 0)],
      [1, at(20, 0)],
      [2, at(20, 20)],
      [3, at(-20, 20)],
    ]);
  });

  it('does not count a repeated start twice', () => {
    expect(nodesOf({ ...box, segments: [...box.segments, { kind: 'line', to: box.start }] })).toEqual(nodesOf(box));
  });

  it('has the handles of curves and none beside lines and arcs', () => {
    expect(nodesOf(flowing).map(({ before, after }) => [before, after])).toEqual([
      [null, null],
      [null, at(14, 0)],
      [at(20, 6), at(20, 13)],
      [at(17, 20), null],
      [null, null],
    ]);
  });

  it('tells smooth from corner by the shape', () => {
    expect(nodesOf(flowing).map(({ join }) => join)).toEqual(['corner', 'smooth', 'smooth', 'smooth', 'corner']);
    expect(nodesOf(swelled).every(({ join }) => join === 'smooth')).toBe(true);
    expect(nodesOf(box).every(({ join }) => join === 'corner')).toBe(true);
  });

  it('takes half a degree as smooth and no more', () => {
    expect(nodesOf(bent(0.49))[1]?.join).toBe('smooth');
    expect(nodesOf(bent(-0.49))[1]?.join).toBe('smooth');
    expect(nodesOf(bent(0.51))[1]?.join).toBe('corner');
    expect(nodesOf(bent(-0.51))[1]?.join).toBe('corner');
  });
});
