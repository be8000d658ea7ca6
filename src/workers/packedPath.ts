import type { Path, Point, Segment } from '../core/geom/types';

/** A path as numbers alone, which reach a worker in a fraction of the time: closed or not, the start, then the segments. */
export type PackedPath = Float64Array;

const KINDS = ['line', 'arc', 'cubic'] as const;

/** A path made ready for a worker. */
export const packPath = ({ start, segments, closed }: Path): PackedPath => {
  const numbers: number[] = [closed ? 1 : 0, start.x, start.y];
  for (const segment of segments) {
    const { kind, to } = segment;
    numbers.push(KINDS.indexOf(kind), to.x, to.y);
    if (kind === 'arc') numbers.push(segment.centre.x, segment.centre.y, segment.clockwise ? 1 : 0);
    if (kind === 'cubic') numbers.push(segment.c1.x, segment.c1.y, segment.c2.x, segment.c2.y);
  }
  return Float64Array.from(numbers);
};

/** The path that was packed. */
export const unpackPath = (packed: PackedPath): Path => {
  let next = 0;
  const number = (): number => packed[next++] ?? Number.NaN;
  const point = (): Point => ({ x: number(), y: number() });
  const closed = number() === 1;
  const start = point();
  const segments: Segment[] = [];
  while (next < packed.length) {
    const kind = KINDS[number()] ?? 'line';
    const to = point();
    if (kind === 'line') segments.push({ kind, to });
    else if (kind === 'arc') segments.push({ kind, to, centre: point(), clockwise: number() === 1 });
    else segments.push({ kind, to, c1: point(), c2: point() });
  }
  return { start, segments, closed };
};
