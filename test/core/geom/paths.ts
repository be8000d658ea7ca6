import type { Path } from '../../../src/core/geom/types';

/** A closed polygon through corners given as pairs; its last side is implied. */
export function polygon(corners: readonly (readonly number[])[]): Path {
  const [start = { x: 0, y: 0 }, ...rest] = corners.map(([x = Number.NaN, y = Number.NaN]) => ({ x, y }));
  return { start, segments: rest.map((to) => ({ kind: 'line', to })), closed: true };
}

/** A circle of radius 1 about the origin by four cubics with handles of length k. */
export function cubicCircle(k: number): Path {
  return {
    start: { x: 1, y: 0 },
    segments: [
      { kind: 'cubic', c1: { x: 1, y: k }, c2: { x: k, y: 1 }, to: { x: 0, y: 1 } },
      { kind: 'cubic', c1: { x: -k, y: 1 }, c2: { x: -1, y: k }, to: { x: -1, y: 0 } },
      { kind: 'cubic', c1: { x: -1, y: -k }, c2: { x: -k, y: -1 }, to: { x: 0, y: -1 } },
      { kind: 'cubic', c1: { x: k, y: -1 }, c2: { x: 1, y: -k }, to: { x: 1, y: 0 } },
    ],
    closed: true,
  };
}

/** The closed loop with two cubics that the reference figures are for. */
export const cubicLoop: Path = {
  start: { x: 0, y: 0 },
  segments: [
    { kind: 'cubic', c1: { x: 30, y: -25 }, c2: { x: 70, y: 40 }, to: { x: 100, y: 10 } },
    { kind: 'line', to: { x: 100, y: 60 } },
    { kind: 'cubic', c1: { x: 60, y: 90 }, c2: { x: 20, y: 20 }, to: { x: 0, y: 60 } },
  ],
  closed: true,
};

/** The flat piece between a chord on the x axis, from 0 to `chord`, and the shorter arc over it, toward −y. */
export function arcSegmentPath(chord: number, radius: number): Path {
  const centre = { x: chord / 2, y: Math.sqrt(radius ** 2 - (chord / 2) ** 2) };
  return {
    start: { x: 0, y: 0 },
    segments: [{ kind: 'arc', to: { x: chord, y: 0 }, centre, clockwise: true }],
    closed: true,
  };
}
