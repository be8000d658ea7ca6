import type { Point } from '../../geom/types';
import { boardWidthAt } from '../../instrument/boardOf';
import type { Reading } from '../poseTypes';
import { lastFret, nominalPose, type ReadCase } from './readCase';
import type { ReadLine } from './types';

const SIDES = [
  { side: 'treble', sign: 1 },
  { side: 'bass', sign: -1 },
] as const;

/** Board edge to the outside of both outer strings at the last fret, strings held in the nut and over the saddle. */
const marginLines = (read: ReadCase): readonly ReadLine[] => {
  const { project, strings, saddle } = read;
  const { y, width } = lastFret(read);
  const pose = nominalPose(read);
  const [treble, bass] = [strings[0], strings.at(-1)];
  const [thin, thick] = [project.strings[0], project.strings.at(-1)];
  if (treble === undefined || bass === undefined || thin === undefined || thick === undefined) return [];
  return SIDES.map(({ side, sign }): ReadLine => {
    const [string, diameter] = side === 'treble' ? [treble, thin.diameter] : [bass, thick.diameter];
    const edge: Point = { x: (sign * width) / 2, y };
    const breaks: Point = { x: string.saddleX, y: saddle.centre + saddle.slope * string.saddleX };
    const crossing: Point = { x: string.nutX + ((string.saddleX - string.nutX) * y) / breaks.y, y };
    const inside = sign * (edge.x - crossing.x) - diameter / 2;
    return {
      id: `margin-${side}`,
      group: 'margins',
      label: `Edge to string at the last fret, ${side}`,
      how: 'String or thread from the nut slot over its place on the saddle; from the edge of the board in to the outside of the string, − where it runs outside.',
      expected: inside,
      signed: true,
      tool: 'calliper',
      correction: null,
      reading: (value, sigma): Reading => ({
        kind: 'margin',
        nut: { x: string.nutX, y: 0 },
        saddle: { x: breaks.x, y: breaks.y - pose.y },
        at: edge,
        value: value + diameter / 2,
        sigma,
      }),
      drawn: [[edge, crossing]],
    };
  });
};

/** A straightedge along each edge of the board, carried on to the bridge: from it out to the front corner. */
const edgeLines = (read: ReadCase): readonly ReadLine[] => {
  const { board, bridge } = read;
  const pose = nominalPose(read);
  return SIDES.flatMap(({ side, sign }): readonly ReadLine[] => {
    const corner = bridge.points.find(({ id }) => id === `front-${side}`);
    if (corner === undefined) return [];
    const through: Point = { x: (sign * board.nutWidth) / 2, y: 0 };
    const far: Point = { x: (sign * boardWidthAt(board, board.twelfth)) / 2, y: board.twelfth };
    const direction: Point = { x: far.x - through.x, y: far.y - through.y };
    const length = Math.hypot(direction.x, direction.y);
    const off = ((corner.at.x - through.x) * direction.y - (corner.at.y - through.y) * direction.x) / length;
    const foot: Point = {
      x: corner.at.x - (off * direction.y) / length,
      y: corner.at.y + (off * direction.x) / length,
    };
    return [
      {
        id: `edge-${side}`,
        group: 'edges',
        label: `Straightedge on the board’s edge, out to the ${corner.label}`,
        how: 'Straightedge along the edge of the board and on past the bridge; square to it, out to the corner. − where the corner lies inside.',
        expected: sign * off,
        signed: true,
        tool: 'straightedge',
        correction: null,
        reading: (value, sigma): Reading => ({
          kind: 'offset',
          through,
          direction,
          to: { x: corner.at.x, y: corner.at.y - pose.y },
          value: sign * value,
          sigma,
        }),
        drawn: [
          [far, foot],
          [foot, corner.at],
        ],
      },
    ];
  });
};

/** What tells where the bridge lies sideways. */
export const asideLines = (read: ReadCase): readonly ReadLine[] => [...marginLines(read), ...edgeLines(read)];
