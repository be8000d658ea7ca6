import type { Footprint } from '../../bridge/types';
import { scale } from '../../geom/points';
import type { Path, Segment } from '../../geom/types';

const scaleSegment = (segment: Segment, factor: number): Segment => {
  const to = scale(segment.to, factor);
  switch (segment.kind) {
    case 'line':
      return { ...segment, to };
    case 'arc':
      return { ...segment, to, centre: scale(segment.centre, factor) };
    case 'cubic':
      return { ...segment, to, c1: scale(segment.c1, factor), c2: scale(segment.c2, factor) };
  }
};

const scalePath = (path: Path, factor: number): Path => ({
  ...path,
  start: scale(path.start, factor),
  segments: path.segments.map((segment) => scaleSegment(segment, factor)),
});

/** A footprint drawn to scale: every length `factor` times as long. */
export const scaleFootprint = ({ outline, points, faceLines }: Footprint, factor: number): Footprint => ({
  outline: scalePath(outline, factor),
  points: points.map((point) => ({ ...point, at: scale(point.at, factor) })),
  faceLines: faceLines.map((path) => scalePath(path, factor)),
});
