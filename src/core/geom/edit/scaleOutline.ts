import { fail, ok, type Result } from '../../result';
import { pathBounds } from '../pathBounds';
import { pathToCubics } from '../pathToCubics';
import type { Path, Point, Segment } from '../types';
import { unpaired } from './editBothSides';
import { editOf, type Loop, loopOf, type PathEdit } from './loop';
import { mirrorHalf, pairingOf, SAME_MM } from './pairing';

/** What an outline is to be over all, mm: length across the instrument (x), width along it (y). */
export interface OutlineSize {
  readonly length?: number;
  readonly width?: number;
  /** One figure scales both ways alike; else the way that has no figure stays. */
  readonly proportional: boolean;
}

/** Both ways are scaled alike when they differ by less than this share: rounding alone. */
const ALIKE = 1e-12;

/**
 * The whole of a closed path scaled about the point where the front edge crosses the centreline, the origin, to an over-all
 * length or width. Scaled alike both ways it keeps its arcs; else they become cubics of 30° at most, with new nodes.
 *
 * Codes: outline.scale (no figure, two while proportional, or not more than 0), outline.unpaired, path.open, those of validatePath.
 */
export function scaleOutline(path: Path, size: OutlineSize, symmetric = false): Result<PathEdit> {
  const made = loopOf(path);
  if (!made.ok) return made;
  const factors = factorsFor(path, size);
  if (!factors.ok) return factors;
  const { x: across, y: along } = factors.value;
  const alike = Math.abs(across / along - 1) <= ALIKE;
  const loop = alike ? made.value : withoutArcs(made.value);
  const place = ({ x, y }: Point): Point => ({ x: x * across, y: y * along });
  const scaled: Loop = {
    nodes: loop.nodes.map(place),
    segments: loop.segments.map((segment) => scaledSegment(segment, place)),
    from: loop.from,
  };
  const before = made.value.nodes.length;
  if (!symmetric) return editOf(scaled, before);
  const pairing = pairingOf(scaled, SAME_MM);
  return pairing === null ? unpaired() : editOf(mirrorHalf(scaled, pairing, 1), before);
}

function factorsFor(path: Path, { length, width, proportional }: OutlineSize): Result<Point> {
  const given = [length, width].filter((figure) => figure !== undefined);
  if (given.length === 0 || (proportional && given.length > 1))
    return fail(
      'bridge.outline',
      'outline.scale',
      'Scaling in proportion goes by a length or by a width, by one of them.',
    );
  if (!given.every((figure) => figure > 0 && Number.isFinite(figure)))
    return fail('bridge.outline', 'outline.scale', 'A length or width to scale to is more than 0.');
  const { minX, maxX, minY, maxY } = pathBounds(path);
  const across = length === undefined ? null : length / (maxX - minX);
  const along = width === undefined ? null : width / (maxY - minY);
  const other = proportional ? (across ?? along ?? 1) : 1;
  return ok({ x: across ?? other, y: along ?? other });
}

function scaledSegment(segment: Segment, place: (point: Point) => Point): Segment {
  const to = place(segment.to);
  switch (segment.kind) {
    case 'line':
      return { kind: 'line', to };
    case 'arc':
      return { ...segment, centre: place(segment.centre), to };
    case 'cubic':
      return { kind: 'cubic', c1: place(segment.c1), c2: place(segment.c2), to };
  }
}

/** The loop with its arcs drawn by cubics. */
function withoutArcs(loop: Loop): Loop {
  const nodes: Point[] = [];
  const segments: Segment[] = [];
  const from: number[] = [];
  for (const [index, node] of loop.nodes.entries()) {
    const segment = loop.segments[index] as Segment;
    let start = node;
    for (const [piece, cubic] of pathToCubics({ start: node, segments: [segment], closed: false }).segments.entries()) {
      nodes.push(start);
      segments.push(cubic);
      from.push(piece === 0 ? (loop.from[index] ?? -1) : -1);
      start = cubic.to;
    }
  }
  return { nodes, segments, from };
}
