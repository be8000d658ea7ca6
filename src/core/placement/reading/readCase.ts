import type { BridgePlace, SaddlePlace, SlotPlace } from '../../bridge/types';
import type { Drop } from '../../document/buildTypes';
import type { Project } from '../../document/types';
import { boardWidthAt } from '../../instrument/boardOf';
import { fretDistance } from '../../instrument/fretDistance';
import type { Board, Scale, StringPlace } from '../../instrument/types';
import { ordinal } from '../../units/ordinal';
import { DATUM_NAME } from '../datumName';
import type { Pose } from '../poseTypes';
import { USUAL_DROP_HEIGHT } from './dropped';
import type { ReadPoint } from './types';

/** What a bridge is read against: the project and what was computed of it. */
export interface ReadCase {
  readonly project: Project;
  readonly scale: Scale;
  readonly board: Board;
  readonly strings: readonly StringPlace[];
  readonly saddle: SaddlePlace;
  readonly slot: SlotPlace;
  readonly bridge: BridgePlace;
}

/** Where the bridge is meant to sit: the origin of the bridge frame in the instrument frame. */
export const nominalPose = ({ saddle }: Pick<ReadCase, 'saddle'>): Pose => ({ x: 0, y: saddle.centre, angle: 0 });

/**
 * A usual neck against its top, radians: frets 7.5 mm over the top at the body (a board of 1/4 in and 1.1 mm of fret) and
 * 10 mm at a bridge 290 mm farther on, which is 0.5°; our own arithmetic, no source.
 */
const USUAL_ANGLE = Math.atan((USUAL_DROP_HEIGHT - 7.5) / 290);

/** How readings are carried down here: as the maker said, or a square on the top and the heights of Measure. */
export const dropOf = ({ build, bridge, height }: Project): Drop =>
  build?.drop ?? {
    by: 'top',
    angle: USUAL_ANGLE,
    height: height.straightedge === null ? USUAL_DROP_HEIGHT : Math.max(0, bridge.thickness + height.straightedge),
  };

/** How far the line of the fret tops stands over what is read there: the top itself, or the upper face of the bridge. mm */
export const frettopOver = ({ project }: Pick<ReadCase, 'project'>, place: 'top' | 'face'): number => {
  const { height } = dropOf(project);
  return place === 'top' ? height : height - project.bridge.thickness;
};

/** y of the last fret, and the board's width there as read, or its edges carried on. */
export const lastFret = ({ project, scale, board }: ReadCase): { readonly y: number; readonly width: number } => {
  const y = fretDistance(scale.scaleLength, project.instrument.frets.count) + scale.nutOffset;
  return { y, width: project.instrument.widths.last ?? boardWidthAt(board, y) };
};

const ends = (board: Board, y: number, id: string, label: string): readonly ReadPoint[] =>
  ([1, -1] as const).map((side) => ({
    id: `${id}-${side === 1 ? 'treble' : 'bass'}`,
    label: `${label}, ${side === 1 ? 'treble' : 'bass'}`,
    at: { x: (side * boardWidthAt(board, y)) / 2, y },
  }));

/** Places of the instrument that a rule can start from. */
export const instrumentPoints = ({ project, board }: ReadCase): readonly ReadPoint[] => {
  const { nut, frets } = project.instrument;
  return [
    ...ends(board, 0, 'nut', DATUM_NAME[nut.datum].end),
    ...ends(board, board.twelfth, 'twelfth', '12th fret end'),
    ...(frets.bodyJoin === 12 ? [] : ends(board, board.bodyJoin, 'join', `${ordinal(frets.bodyJoin)} fret end`)),
    { id: 'nut-centre', label: `${DATUM_NAME[nut.datum].short}, centre`, at: { x: 0, y: 0 } },
    { id: 'twelfth-centre', label: '12th fret, centre', at: { x: 0, y: board.twelfth } },
  ];
};

/** Places of the bridge that a rule can find, where they are meant to lie. */
export const bridgePoints = ({ bridge, slot }: ReadCase): readonly ReadPoint[] => [
  ...bridge.points,
  ...bridge.pins
    .filter((_, index, all) => index === 0 || index === all.length - 1)
    .map(({ id, label, centre }) => ({ id, label, at: centre })),
  { id: 'slot-end-treble', label: 'slot end, treble', at: slot.ends.treble },
  { id: 'slot-end-bass', label: 'slot end, bass', at: slot.ends.bass },
];
