import { fail, ok, type Result } from '../../result';
import { segmentPoint } from '../snap/segmentPoint';
import type { Path, Point, Segment } from '../types';
import { centrelineCrossings } from './centrelineCrossings';
import { around, editOf, type Loop, loopOf, nodeOf, type PathEdit, pathOf, segmentOf } from './loop';
import { mirrorHalf, mirrorPoint, pairingOf, SAME_MM } from './pairing';
import { splitSegment } from './splitSegment';

export type OutlineSide = 'treble' | 'bass';

/** The share of a segment within which a crossing is at its end. */
const AT_NODE = 1e-9;

/**
 * The half of a closed path on one side of the centreline mirrored to the other. Both sides agree already, node by node
 * within 0.01 mm: they become exact mirror images and every node stays. Else the outline gets a node wherever it crosses the
 * centreline (nodes within 0.01 mm of it come to lie on it), the nodes of that side stay, and those of the other are new.
 *
 * Codes: outline.crossings (it does not cross the centreline just twice), path.open, those of validatePath.
 */
export function makeSymmetric(path: Path, side: OutlineSide): Result<PathEdit> {
  const made = loopOf(path);
  if (!made.ok) return made;
  const loop = made.value;
  const pairing = pairingOf(loop, SAME_MM);
  if (pairing !== null) return editOf(mirrorHalf(loop, pairing, masterOn(loop, side)), loop.nodes.length);
  const cut = cutAtCentreline(loop);
  if (!cut.ok) return cut;
  const half = halfOn(cut.value, side);
  return half === null ? notTwice(centrelineCrossings(path).length) : editOf(half, loop.nodes.length);
}

const notTwice = <T>(times: number): Result<T> =>
  fail(
    'bridge.outline',
    'outline.crossings',
    `An outline that is to be made symmetric crosses the centreline twice, at its front and at its back; this one meets it ${times} times.`,
  );

const sign = (side: OutlineSide): 1 | -1 => (side === 'treble' ? 1 : -1);

/** The place, in half steps, of the node farthest out on a side. */
function masterOn(loop: Loop, side: OutlineSide): number {
  let best = 0;
  for (const [index, { x }] of loop.nodes.entries())
    if (x * sign(side) > nodeOf(loop, best).x * sign(side)) best = index;
  return 2 * best;
}

/** The loop with a node wherever it crosses the centreline. */
function cutAtCentreline(loop: Loop): Result<Loop> {
  const nodes = loop.nodes.map((node) => (Math.abs(node.x) <= SAME_MM ? { x: 0, y: node.y } : node));
  const path = pathOf({ ...loop, nodes });
  // An arc may not bear its end being moved by a hundredth: it is then taken as it was.
  const [kept, asWas] = path.ok ? [{ ...loop, nodes }, path] : [loop, pathOf(loop)];
  if (!asWas.ok) return asWas;
  const crossings = centrelineCrossings(asWas.value);
  const out: { node: Point; segment: Segment; from: number }[] = [];
  for (const [index, node] of kept.nodes.entries()) {
    let [start, rest, used] = [node, segmentOf(kept, index), 0];
    let from = kept.from[index] ?? -1;
    for (const { segment, t } of crossings) {
      if (segment !== index || t <= AT_NODE || t >= 1 - AT_NODE) continue;
      const [first, second] = splitSegment(start, rest, (t - used) / (1 - used));
      const at = { x: 0, y: first.to.y };
      out.push({ node: start, segment: { ...first, to: at }, from });
      [start, rest, used, from] = [at, second, t, -1];
    }
    out.push({ node: start, segment: rest, from });
  }
  return ok({
    nodes: out.map(({ node }) => node),
    segments: out.map(({ segment }) => segment),
    from: out.map(({ from }) => from),
  });
}

/** One half, from where it leaves the centreline to where it comes back, and its mirror image; null unless that is once. */
function halfOn(loop: Loop, side: OutlineSide): Loop | null {
  const count = loop.nodes.length;
  const [one, other, ...more] = loop.nodes.flatMap(({ x }, index) => (x === 0 ? [index] : []));
  if (one === undefined || other === undefined || more.length > 0) return null;
  const runs = [runOf(one, other, count), runOf(other, one, count)];
  const near = runs.find((run) => Math.sign(farthestOut(loop, run)) === sign(side));
  if (near === undefined) return null;
  const back = near.slice(1).reverse();
  const [last, end] = [near.at(-1) ?? 0, near[0] === one ? other : one];
  const half: Loop = {
    nodes: [...near, end].map((at) => nodeOf(loop, at)).concat(back.map((at) => mirrorPoint(nodeOf(loop, at)))),
    segments: [...near, last, ...back].map((at) => segmentOf(loop, at)),
    from: [...near, end].map((at) => loop.from[at] ?? -1).concat(back.map(() => -1)),
  };
  // Its first node and `end` lie on the centreline: node i pairs with node −i. Segments of the far half are drawn anew.
  return mirrorHalf(half, 0, 1);
}

/** The segments from one node on to another. */
const runOf = (from: number, to: number, count: number): readonly number[] =>
  Array.from({ length: around(to - from, count) }, (_, step) => around(from + step, count));

/** The x, of nodes and middles of segments, that lies farthest from the centreline. */
function farthestOut(loop: Loop, run: readonly number[]): number {
  let most = 0;
  for (const index of run)
    for (const { x } of [nodeOf(loop, index), segmentPoint(nodeOf(loop, index), segmentOf(loop, index), 0.5)])
      if (Math.abs(x) > Math.abs(most)) most = x;
  return most;
}
