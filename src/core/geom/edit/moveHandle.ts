import { fail, ok, type Result } from '../../result';
import { add, distance, dot, scale, subtract } from '../points';
import { segmentDirections } from '../snap/segmentDirections';
import { COINCIDENT_MM } from '../tolerances';
import type { Path, Point, Segment } from '../types';
import { editBothSides } from './editBothSides';
import { around, type Loop, loopOf, nodeOf, segmentOf } from './loop';
import { isSmooth } from './nodesOf';
import { mirrorPoint, pairingOf, partnerNode, SAME_MM } from './pairing';

/** Which handle of a node: of the curve that arrives, or of the one that leaves. */
export type HandleSide = 'before' | 'after';

/** The shortest handle that still tells a direction, mm. */
const LEAST_HANDLE = 0.01;

/**
 * A handle of node `index` moved to a place, mm. At a smooth node the handle across stays in line at its own length; beside
 * a line or an arc the handle stays on its tangent, as near to the place as that goes. When symmetric, the partner does the
 * same mirrored, and the handles of a node on the centreline mirror one another.
 *
 * Codes: outline.noHandle (no curve on that side), outline.place (not finite), those of editBothSides.
 */
export function moveHandle(path: Path, index: number, side: HandleSide, to: Point, symmetric = false): Result<Path> {
  if (!Number.isFinite(to.x) || !Number.isFinite(to.y))
    return fail('bridge.outline', 'outline.place', `Expected a place for the handle, got ${to.x}, ${to.y}.`);
  const centred = symmetric && isOnAxis(path, index);
  const edited = editBothSides(
    path,
    symmetric,
    { kind: 'node', index },
    (loop, node, mirrored) =>
      mirrored
        ? handled(loop, node, side === 'before' ? 'after' : 'before', mirrorPoint(to), false)
        : handled(loop, node, side, to, centred),
    side === 'before' ? 2 * index - 1 : 2 * index + 1,
  );
  return edited.ok ? ok(edited.value.path) : edited;
}

function isOnAxis(path: Path, index: number): boolean {
  const loop = loopOf(path);
  if (!loop.ok) return false;
  const pairing = pairingOf(loop.value, SAME_MM);
  return pairing !== null && partnerNode(loop.value, pairing, index) === index;
}

function handled(loop: Loop, index: number, side: HandleSide, wanted: Point, centred: boolean): Result<Loop> {
  const node = nodeOf(loop, index);
  const last = around(index - 1, loop.nodes.length);
  const own = side === 'before' ? last : index;
  const other = side === 'before' ? index : last;
  const [segment, across] = [segmentOf(loop, own), segmentOf(loop, other)];
  if (segment.kind !== 'cubic')
    return fail('bridge.outline', 'outline.noHandle', `Node ${index + 1} has no curve on that side, so no handle.`);
  const smooth = isSmooth(nodeOf(loop, last), segmentOf(loop, last), segmentOf(loop, index));
  const segments = [...loop.segments];
  const put = (at: number, one: Segment, which: HandleSide, place: Point): void => {
    if (one.kind === 'cubic') segments[at] = which === 'before' ? { ...one, c2: place } : { ...one, c1: place };
  };
  if (!smooth) put(own, segment, side, wanted);
  else if (across.kind !== 'cubic') {
    // The way out of the node to this side, along the tangent of the line or arc.
    const { arriving, leaving } = segmentDirections(nodeOf(loop, other), across);
    put(own, segment, side, onRay(node, side === 'before' ? scale(leaving, -1) : arriving, wanted));
  } else {
    const place = centred ? { x: wanted.x, y: node.y } : wanted;
    put(own, segment, side, place);
    const [opposite, reach] = [side === 'before' ? across.c1 : across.c2, distance(place, node)];
    const length = distance(opposite, node);
    const atHand = segments[other] as Segment;
    if (reach > COINCIDENT_MM)
      put(
        other,
        atHand,
        side === 'before' ? 'after' : 'before',
        add(node, scale(subtract(node, place), length / reach)),
      );
  }
  return ok({ ...loop, segments });
}

/** The point of a ray from `node` nearest to a place. */
function onRay(node: Point, direction: Point, place: Point): Point {
  const length = Math.hypot(direction.x, direction.y);
  const along = Math.max(LEAST_HANDLE, dot(subtract(place, node), direction) / length);
  return add(node, scale(direction, along / length));
}
