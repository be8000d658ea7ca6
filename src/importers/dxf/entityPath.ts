import type { Path, Point } from '../../core/geom/types';
import { ellipseArc } from '../ellipseArc';
import { isFinitePath } from '../isFinitePath';
import { mapPath } from '../mapPath';
import { applyMatrix, compose, type Matrix, moved, scaled } from '../matrix';
import { polylinePath, type Vertex } from './polylinePath';
import { type Entity, numberOf, textOf, toNumber } from './readDocument';
import type { Group } from './readGroups';
import { splinePath } from './splinePath';

/** A path, or why there is none, in words; null for an entity that draws no line. */
export type EntityPath = Path | string | null;

export const DAMAGED = 'piece with damaged numbers';

const RADIANS = Math.PI / 180;
const FULL = 2 * Math.PI;

const pointOf = (groups: readonly Group[], code: number): Point => ({
  x: numberOf(groups, code, Number.NaN),
  y: numberOf(groups, code + 10, Number.NaN),
});

/** All points with a code, each with the numbers that follow it. */
const pointsOf = (groups: readonly Group[], code: number): Point[] => {
  const points: { x: number; y: number }[] = [];
  for (const group of groups) {
    if (group.code === code) points.push({ x: toNumber(group.value), y: Number.NaN });
    const last = points.at(-1);
    if (group.code === code + 10 && last !== undefined) last.y = toNumber(group.value);
  }
  return points;
};

/** Part of the image of the unit circle, from one angle to the other as they grow; equal angles: all of it. */
const round = (matrix: Matrix, from: number, to: number): Path => {
  const turn = to - from;
  const sweep = turn - FULL * Math.floor(turn / FULL);
  const whole = sweep < 1e-9 || sweep > FULL - 1e-9;
  const start = applyMatrix(matrix, { x: Math.cos(from), y: Math.sin(from) });
  const segments = whole ? ellipseArc(matrix, from, FULL, start) : ellipseArc(matrix, from, sweep);
  return { start, segments, closed: whole };
};

const circle = (groups: readonly Group[]): Matrix => {
  const { x, y } = pointOf(groups, 10);
  const radius = numberOf(groups, 40, Number.NaN);
  return compose(moved(x, y), scaled(radius, radius));
};

/** The minor axis stands a quarter turn counter-clockwise of the major one, seen from where the extrusion points. */
const ellipse = (groups: readonly Group[]): Matrix => {
  const [centre, major] = [pointOf(groups, 10), pointOf(groups, 11)];
  const ratio = numberOf(groups, 40, Number.NaN) * (numberOf(groups, 230, 1) < 0 ? -1 : 1);
  return [major.x, major.y, -major.y * ratio, major.x * ratio, centre.x, centre.y];
};

const lightPolyline = (groups: readonly Group[]): Path | null => {
  const vertices: { at: { x: number; y: number }; bulge: number }[] = [];
  for (const { code, value } of groups) {
    if (code === 10) vertices.push({ at: { x: toNumber(value), y: Number.NaN }, bulge: 0 });
    const last = vertices.at(-1);
    if (last === undefined) continue;
    if (code === 20) last.at.y = toNumber(value);
    if (code === 42) last.bulge = toNumber(value);
  }
  return polylinePath(vertices, (numberOf(groups, 70, 0) & 1) === 1);
};

/** Flags of a polyline (70) and of its vertices. */
const POLYLINE = { closed: 1, mesh: 16 | 64 };
const FRAME_VERTEX = 16;

const oldPolyline = ({ groups, vertices }: Entity): EntityPath => {
  const flags = numberOf(groups, 70, 0);
  if ((flags & POLYLINE.mesh) !== 0) return 'mesh';
  const drawn = vertices.filter((vertex) => (numberOf(vertex.groups, 70, 0) & FRAME_VERTEX) === 0);
  const points = drawn.map(
    (vertex): Vertex => ({ at: pointOf(vertex.groups, 10), bulge: numberOf(vertex.groups, 42, 0) }),
  );
  return polylinePath(points, (flags & POLYLINE.closed) === 1);
};

const numbersOf = (groups: readonly Group[], code: number): number[] =>
  groups.filter((group) => group.code === code).map(({ value }) => toNumber(value));

/** What is drawn and not a line that an outline could be made of, by its kind. */
const OTHERS: Readonly<Record<string, string>> = {
  TEXT: 'text',
  MTEXT: 'text',
  DIMENSION: 'dimension',
  HATCH: 'hatch',
  SOLID: 'solid',
  '3DFACE': '3D face',
  '3DSOLID': '3D body',
  REGION: 'region',
  BODY: '3D body',
  IMAGE: 'picture',
  LEADER: 'leader',
  MLINE: 'multiple line',
  TRACE: 'trace',
  MESH: 'mesh',
};

/** The line that an entity of straight pieces, bulges or splines draws, in its own plane with y up. */
const ownPath = (entity: Entity): EntityPath => {
  const { kind, groups } = entity;
  switch (kind) {
    case 'LINE':
      return { start: pointOf(groups, 10), segments: [{ kind: 'line', to: pointOf(groups, 11) }], closed: false };
    case 'LWPOLYLINE':
      return lightPolyline(groups);
    case 'POLYLINE':
      return oldPolyline(entity);
    case 'SPLINE':
      return splinePath({
        degree: numberOf(groups, 71, 3),
        knots: numbersOf(groups, 40),
        points: pointsOf(groups, 10),
        weights: numbersOf(groups, 41),
      });
    default:
      return OTHERS[kind] ?? null;
  }
};

/**
 * The line that an entity draws, under a matrix from its own plane with y up: Autodesk's DXF reference, entities section.
 */
export const entityPath = (entity: Entity, matrix: Matrix): EntityPath => {
  const { kind, groups } = entity;
  const angle = (code: number, usual: number): number => numberOf(groups, code, usual) * RADIANS;
  switch (kind) {
    case 'CIRCLE':
      return round(compose(matrix, circle(groups)), 0, FULL);
    case 'ARC':
      return round(compose(matrix, circle(groups)), angle(50, 0), angle(51, 360));
    case 'ELLIPSE':
      return round(compose(matrix, ellipse(groups)), numberOf(groups, 41, 0), numberOf(groups, 42, FULL));
    default: {
      const path = ownPath(entity);
      if (path === null || typeof path === 'string') return path;
      return isFinitePath(path) ? mapPath(path, matrix) : DAMAGED;
    }
  }
};

/** Whether an entity's points are told in the plane that its extrusion gives, and not in the world's. */
export const isInOwnPlane = ({ kind, groups }: Entity): boolean =>
  kind === 'POLYLINE'
    ? (Number(textOf(groups, 70) ?? 0) & 8) === 0
    : ['CIRCLE', 'ARC', 'LWPOLYLINE', 'INSERT'].includes(kind);
