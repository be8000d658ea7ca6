import type { Footprint } from '../../bridge/types';
import type { Point } from '../../geom/types';
import { arcBetween } from './arcBetween';
import type { Measure } from './types';

/** The edge that carries the leaders to the arcs; spans are told at the other one. */
export type LeaderEdge = 'front' | 'back';

interface Shape {
  readonly footprint: Footprint;
  readonly parameters: Readonly<Record<string, number>>;
  readonly leaders: LeaderEdge;
}

const pointAt = ({ points }: Footprint, id: string): Point => {
  const found = points.find((point) => point.id === id);
  if (found === undefined) throw new Error(`The outline has no point ${id}.`);
  return found.at;
};

/** The bass point and the treble point of a name. */
const span = ({ footprint }: Shape, id: string): Measure => ({
  kind: 'span',
  from: pointAt(footprint, `${id}-bass`),
  to: pointAt(footprint, `${id}-treble`),
});

/** A span about the centreline at the edge that carries the spans. */
const middleSpan = ({ parameters, leaders }: Shape, length: number): Measure => {
  const y = leaders === 'back' ? 0 : (parameters.full ?? 0);
  return { kind: 'span', from: { x: -length / 2, y }, to: { x: length / 2, y } };
};

/** Over all: from the tips, as far toward the spans as they are straight. */
const overAll = (shape: Shape): Measure => {
  const edge = shape.leaders === 'back' ? 'front' : 'back';
  const tip = `${edge}-tip`;
  return span(shape, shape.footprint.points.some(({ id }) => id === `${tip}-bass`) ? tip : edge);
};

/** Front to back on the centreline, told from the ends of the edges where these reach as far. */
const fullWidth = ({ footprint, parameters: { full = 0 } }: Shape): Measure => {
  const [front, back] = [pointAt(footprint, 'front-bass'), pointAt(footprint, 'back-bass')];
  return {
    kind: 'depth',
    from: front.y === 0 ? front : { x: 0, y: 0 },
    to: back.y === full ? back : { x: 0, y: full },
  };
};

const wingWidth = ({ footprint }: Shape): Measure => ({
  kind: 'depth',
  from: pointAt(footprint, 'front-bass'),
  to: pointAt(footprint, 'back-bass'),
});

/** The treble corner at the leaders' edge. */
const cornerArc = ({ footprint, leaders }: Shape): Measure => {
  const edge = pointAt(footprint, `${leaders}-treble`);
  const tip = footprint.points.find(({ id }) => id === `${leaders}-tip-treble`)?.at ?? edge;
  const arc = arcBetween(footprint.outline, edge, tip);
  const sharp = { centre: edge, radius: 0, angle: leaders === 'back' ? Math.PI / 4 : -Math.PI / 4 };
  return { kind: 'radius', hollow: false, ...(arc ?? sharp) };
};

/** The hollow between two named points of the treble side. */
const hollowArc = ({ footprint }: Shape, outer: string, inner: string): Measure => {
  const arc = arcBetween(footprint.outline, pointAt(footprint, outer), pointAt(footprint, inner));
  if (arc === null) throw new Error(`The outline has no arc from ${outer} to ${inner}.`);
  return { kind: 'radius', hollow: true, ...arc };
};

/** Where each parameter of a shape is measured. */
const MEASURES: Readonly<Record<string, (shape: Shape) => Measure>> = {
  length: overAll,
  full: fullWidth,
  wing: wingWidth,
  end: ({ parameters: { length = 0, end = 0 } }) => ({
    kind: 'depth',
    from: { x: -length / 2, y: 0 },
    to: { x: -length / 2, y: end },
  }),
  belly: (shape) => span(shape, 'belly'),
  waist: (shape) => span(shape, 'front-waist'),
  block: (shape) => middleSpan(shape, shape.parameters.block ?? 0),
  pyramid: ({ footprint }) => ({
    kind: 'span',
    from: pointAt(footprint, 'pyramid-front-treble'),
    to: pointAt(footprint, 'front-treble'),
  }),
  corner: cornerArc,
  shoulder: (shape) =>
    shape.footprint.points.some(({ id }) => id === 'belly-treble')
      ? hollowArc(shape, 'belly-treble', 'shoulder-treble')
      : hollowArc(shape, 'back-waist-treble', 'back-shoulder-treble'),
};

/**
 * What a parameter of a shape measures on its footprint, footprint frame.
 *
 * @throws Error when the shape has no such parameter
 */
export const measureParameter = (shape: Shape, name: string): Measure => {
  const measure = MEASURES[name];
  if (measure === undefined) throw new Error(`There is nothing to measure for ${name}.`);
  return measure(shape);
};
