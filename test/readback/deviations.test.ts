import { describe, expect, it } from 'vitest';
import { circlePath } from '../../src/core/geom/circlePath';
import { pathToCubics } from '../../src/core/geom/pathToCubics';
import type { ExpectedTemplate } from '../reference/templates-expected';
import { deviations } from './deviations';

// The measure is measured: one corner and one hole, drawn where they belong, then a little off.

const EXPECTED: ExpectedTemplate = {
  instrument: 'steel',
  paper: 'a4',
  unit: 'mm',
  width: 210,
  height: 297,
  pages: [{ points: [['corner', 10, 20]], holes: [['pin', 50, 60, 2.4]] }],
  figures: [],
  squareLine: [],
};

const lineTo = (x: number, y: number) => {
  const [start, to] = [
    { x: 0, y: 0 },
    { x, y },
  ];
  return { start, segments: [{ kind: 'line' as const, to }], points: [start, to] };
};

const circle = (x: number, y: number, radius: number) => {
  const { start, segments } = pathToCubics(circlePath({ x, y }, radius));
  return { start, segments, points: [start, ...segments.map(({ to }) => to)] };
};

const by = (...paths: ReturnType<typeof circle | typeof lineTo>[]) =>
  deviations(EXPECTED, [{ paths }]).map((each) => Number(each.by.toFixed(9)));

describe('deviations', () => {
  it('are nothing where every mark stands in its place', () => {
    expect(by(lineTo(10, 20), circle(50, 60, 2.4))).toEqual([0, 0]);
  });

  it('tell how far a corner and the centre of a hole are off', () => {
    expect(by(lineTo(10.003, 20.004), circle(50, 60.002, 2.4))).toEqual([0.005, 0.002]);
  });

  it('tell how far a radius is off', () => {
    expect(by(lineTo(10, 20), circle(50, 60, 2.41))).toEqual([0, 0.01]);
  });

  it('are infinite where there is no hole, and where the page is missing', () => {
    expect(by(lineTo(10, 20))).toEqual([0, Number.POSITIVE_INFINITY]);
    expect(deviations(EXPECTED, []).map((each) => each.by)).toEqual([Infinity, Infinity]);
  });
});
