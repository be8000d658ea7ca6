import type { Point } from '../../geom/types';
import type { Reading } from '../poseTypes';
import { ruleDistance } from '../ruleDistance';
import { leanOf } from './dropped';
import { bridgePoints, dropOf, frettopOver, instrumentPoints, nominalPose, type ReadCase } from './readCase';
import type { ReadLine, ReadPoint } from './types';

const SIDES = ['treble', 'bass'] as const;

/**
 * How far a point of the bridge lies below the plane of the fret tops, mm (corners on the top, holes on the bridge's face),
 * and where on that plane it lies: the bridge stands square to the top, so what is below the frets leans toward the nut.
 */
const below = (read: ReadCase, to: ReadPoint): { readonly rise: number; readonly at: Point } => {
  const rise = frettopOver(read, /^(locating|pin|slot)-/.test(to.id) ? 'face' : 'top');
  return { rise, at: { x: to.at.x, y: to.at.y - leanOf(rise, dropOf(read.project).angle) } };
};

const pairLine = (read: ReadCase, from: ReadPoint, to: ReadPoint, id: string, group: ReadLine['group']): ReadLine => {
  const pose = nominalPose(read);
  const { rise, at } = below(read, to);
  const plan = ruleDistance(from.at, to.at, 0);
  const expected = ruleDistance(from.at, at, rise);
  return {
    id,
    group,
    label: `${from.label} to ${to.label}`,
    how: `Straight from point to point, one end ${Math.abs(rise).toFixed(1)} mm ${rise < 0 ? 'lower' : 'higher'}: ${Math.abs(expected - plan).toFixed(2)} mm ${expected < plan ? 'shorter' : 'longer'} than on the plan, which is allowed for.`,
    expected,
    signed: false,
    tool: 'rule',
    correction: null,
    reading: (value, sigma): Reading => ({
      kind: 'distance',
      from: from.at,
      to: { x: at.x, y: at.y - pose.y },
      rise,
      value,
      sigma,
    }),
    drawn: [[from.at, to.at]],
  };
};

/** The four distances from the ends of the 12th fret, and of the fret at the body join, to each pair of the bridge's points. */
const cornersFrom = (read: ReadCase): readonly ReadLine[] => {
  const [instrument, bridge] = [instrumentPoints(read), bridgePoints(read)];
  const starts = ['twelfth', 'join', 'nut'];
  return starts.flatMap((start) =>
    ['front', 'locating'].flatMap((end) =>
      SIDES.flatMap((side) =>
        SIDES.flatMap((other): readonly ReadLine[] => {
          const from = instrument.find(({ id }) => id === `${start}-${side}`);
          const to = bridge.find(({ id }) => id === `${end}-${other}`);
          return from === undefined || to === undefined
            ? []
            : [pairLine(read, from, to, `${from.id}-to-${to.id}`, 'corners')];
        }),
      ),
    ),
  );
};

/** Bass against treble without a rule: "bass longer by", and corner to corner across. */
const compareLines = (read: ReadCase): readonly ReadLine[] => {
  const [instrument, bridge] = [instrumentPoints(read), bridgePoints(read)];
  const pose = nominalPose(read);
  const point = (list: readonly ReadPoint[], id: string): ReadPoint | undefined => list.find((each) => each.id === id);
  return (['straight', 'across'] as const).flatMap((way): readonly ReadLine[] => {
    const starts = { bass: point(instrument, 'twelfth-bass'), treble: point(instrument, 'twelfth-treble') };
    const corners = { bass: point(bridge, 'front-bass'), treble: point(bridge, 'front-treble') };
    if (!starts.bass || !starts.treble || !corners.bass || !corners.treble) return [];
    const [a, b] =
      way === 'straight'
        ? [
            { from: starts.bass, to: corners.bass },
            { from: starts.treble, to: corners.treble },
          ]
        : [
            { from: starts.bass, to: corners.treble },
            { from: starts.treble, to: corners.bass },
          ];
    const own = ({ from, to }: { from: ReadPoint; to: ReadPoint }) => ({
      from: from.at,
      to: { x: to.at.x, y: to.at.y - pose.y },
    });
    return [
      {
        id: `longer-${way}`,
        group: 'compare',
        label:
          way === 'straight'
            ? '12th fret ends to front corners, same side: bass longer by'
            : '12th fret ends to front corners, across: from the bass end longer by',
        how: 'Two lengths compared by trammel or dividers; − where the treble’s is the longer. Equal across proves nothing alone: sideways and turned at once look the same.',
        expected: ruleDistance(a.from.at, a.to.at, 0) - ruleDistance(b.from.at, b.to.at, 0),
        signed: true,
        tool: 'trammel',
        correction: null,
        reading: (value, sigma): Reading => ({ kind: 'difference', a: own(a), b: own(b), value, sigma }),
        drawn: [
          [a.from.at, a.to.at],
          [b.from.at, b.to.at],
        ],
      },
    ];
  });
};

export const cornerLines = (read: ReadCase): readonly ReadLine[] => [...cornersFrom(read), ...compareLines(read)];

const PAIR = /^pair:([^:]+):([^:]+)$/;

/** The name of a line between any point of the instrument and any of the bridge. */
export const pairName = (from: string, to: string): string => `pair:${from}:${to}`;

/** The line of that name; null when this instrument has no such points. */
export const namedPair = (read: ReadCase, id: string): ReadLine | null => {
  const [, start, end] = PAIR.exec(id) ?? [];
  const from = instrumentPoints(read).find((each) => each.id === start);
  const to = bridgePoints(read).find((each) => each.id === end);
  return from === undefined || to === undefined ? null : pairLine(read, from, to, id, 'pair');
};
