import { closedSegments, type StartedSegment } from '../closedSegments';
import { distance } from '../points';
import { signedArea } from '../signedArea';
import { COINCIDENT_MM } from '../tolerances';
import type { Path, Segment } from '../types';

/**
 * The segments of a closed path in clockwise order as seen on the page, the closing line among them and segments without
 * length left out.
 *
 * @throws RangeError when the path is open or not valid
 */
export function clockwiseSegments(path: Path): StartedSegment[] {
  const started = closedSegments(path).filter(({ start, segment }) => reaches(start, segment));
  return signedArea(path) < 0 ? started.reverse().map(reversed) : started;
}

function reaches(start: StartedSegment['start'], segment: Segment): boolean {
  const points = segment.kind === 'cubic' ? [segment.c1, segment.c2, segment.to] : [segment.to];
  return points.some((point) => distance(start, point) > COINCIDENT_MM);
}

function reversed({ start, segment }: StartedSegment): StartedSegment {
  switch (segment.kind) {
    case 'line':
      return { start: segment.to, segment: { kind: 'line', to: start } };
    case 'arc':
      return { start: segment.to, segment: { ...segment, to: start, clockwise: !segment.clockwise } };
    case 'cubic':
      return { start: segment.to, segment: { kind: 'cubic', to: start, c1: segment.c2, c2: segment.c1 } };
  }
}
