import { closedSegments } from '../../geom/closedSegments';
import { segmentDirections } from '../../geom/snap/segmentDirections';
import type { SnapLine } from '../../geom/snap/types';
import { COINCIDENT_MM } from '../../geom/tolerances';
import type { Path, Point } from '../../geom/types';
import type { BridgeMarks } from './bridgeMarks';
import { nodePart } from './nodePart';

/** What a node of the outline may come to lie on. */
export interface NodeSnapping {
  /** As it was when the drag began, footprint frame. */
  readonly path: Path;
  /** The node that is moved. */
  readonly index: number;
  /** Nodes that move along with it, to which nothing is lined up. */
  readonly along: readonly number[];
  readonly marks: BridgeMarks;
  /** A length in words. */
  readonly show: (mm: number) => string;
}

const sameLine = (one: SnapLine, other: SnapLine): boolean =>
  one.kind !== 'line' && one.kind === other.kind && Math.abs(one.value - other.value) <= COINCIDENT_MM;

/** Where several lines are one, the first of them says why. */
export const eachOnce = (lines: readonly SnapLine[]): readonly SnapLine[] =>
  lines.filter((line, index) => lines.findIndex((other) => sameLine(line, other)) === index || line.kind === 'line');

const ofOthers = (nodes: readonly Point[], { index, along }: NodeSnapping): readonly SnapLine[] =>
  nodes.flatMap(({ x, y }, other): readonly SnapLine[] => {
    if (other === index || along.includes(other)) return [];
    const name = nodePart(other);
    return [
      { kind: 'y', value: y, reason: `level with ${name}` },
      { kind: 'x', value: x, reason: `straight ahead or behind ${name}` },
      { kind: 'x', value: 0 - x, reason: `as far out as ${name}` },
    ];
  });

/** A corner stays in line with what comes before or after its neighbour. */
const tangents = ({ path, index }: NodeSnapping): readonly SnapLine[] => {
  const sides = closedSegments(path);
  const count = sides.length;
  const side = (at: number) => sides[((at % count) + count) % count];
  const carriedOn = (through: Point | undefined, direction: Point | undefined, neighbour: number) =>
    through === undefined || direction === undefined
      ? []
      : [
          {
            kind: 'line',
            through,
            direction,
            reason: `straight on from ${nodePart((neighbour + count) % count)}`,
          } as const,
        ];
  const [before, after] = [side(index - 2), side(index + 1)];
  return [
    ...carriedOn(side(index - 1)?.start, before && segmentDirections(before.start, before.segment).arriving, index - 1),
    ...carriedOn(after?.start, after && segmentDirections(after.start, after.segment).leaving, (index + 1) % count),
  ];
};

const margins = (nodes: readonly Point[], { index, along, marks, show }: NodeSnapping): readonly SnapLine[] => {
  const others = nodes.filter((_, other) => other !== index && !along.includes(other)).map(({ x }) => x);
  if (others.length === 0) return [];
  const { slotEnds, slotFront, slotBack } = marks;
  const words = (margin: number): string => `margins equal: ${show(margin)} both sides`;
  const bass = slotEnds.bass.x - Math.min(...others);
  const treble = Math.max(...others) - slotEnds.treble.x;
  return [
    ...(bass > 0 ? [{ kind: 'x', value: slotEnds.treble.x + bass, reason: words(bass) } as const] : []),
    ...(treble > 0 ? [{ kind: 'x', value: slotEnds.bass.x - treble, reason: words(treble) } as const] : []),
    ...(slotFront > 0 ? [{ kind: 'y', value: slotBack + slotFront, reason: words(slotFront) } as const] : []),
  ];
};

/** All lines that a moved node may snap to, footprint frame, the weightier reasons first. */
export const nodeSnaps = (snapping: NodeSnapping): readonly SnapLine[] => {
  const sides = closedSegments(snapping.path);
  const nodes = sides.map(({ start }) => start);
  const { slotEnds } = snapping.marks;
  const lines: readonly SnapLine[] = [
    { kind: 'x', value: 0, reason: 'on the centreline' },
    { kind: 'y', value: 0, reason: 'in line with the front edge' },
    ...margins(nodes, snapping),
    { kind: 'x', value: slotEnds.treble.x, reason: 'in line with the treble end of the slot' },
    { kind: 'x', value: slotEnds.bass.x, reason: 'in line with the bass end of the slot' },
    ...tangents(snapping),
    ...ofOthers(nodes, snapping),
  ];
  return eachOnce(lines);
};
