import type { Point } from '../../geom/types';
import { centsPerMm } from '../../intonation/centsPerMm';
import type { LengthStyle } from '../../units/formatLength';
import { DATUM_NAME } from '../datumName';
import type { Reading } from '../poseTypes';
import { type AcrossLine, frontEdge, pinRow, slotFront, templateLine } from './acrossLines';
import { dropped } from './dropped';
import { dropOf, frettopOver, nominalPose, type ReadCase } from './readCase';
import type { ReadLine } from './types';

const TOWARD_TAIL: Point = { x: 0, y: 1 };

/** A line across the bridge by two points of it, bridge frame, as wide as the outer strings or more. */
const inBridge = (line: AcrossLine, pose: { readonly y: number }, half: number): readonly [Point, Point] => [
  { x: -half, y: line.at - line.slope * half - pose.y },
  { x: half, y: line.at + line.slope * half - pose.y },
];

/** An outer string where it crosses the saddle. */
interface OuterPlace {
  readonly side: 'treble' | 'bass';
  readonly number: number;
  readonly x: number;
}

const outer = ({ strings }: ReadCase): readonly OuterPlace[] =>
  (
    [
      { side: 'treble', number: 1, string: strings[0] },
      { side: 'bass', number: strings.length, string: strings.at(-1) },
    ] as const
  ).flatMap(({ string, ...rest }) => (string === undefined ? [] : [{ ...rest, x: string.saddleX }]));

/** Where a rule along the frets starts from. */
interface Start {
  readonly id: string;
  readonly name: string;
  readonly y: number;
}

/**
 * Slot, square line, front edge and pin row from the 12th fret and the nut datum, along the centreline at both outer strings.
 */
export const alongLines = (read: ReadCase, style: LengthStyle): readonly ReadLine[] => {
  const { project, board, scale } = read;
  const pose = nominalPose(read);
  const cents = centsPerMm(scale.scaleLength, 12);
  const lineFrom = (start: Start, line: AcrossLine, { side, number, x }: OuterPlace): ReadLine => {
    const from: Point = { x, y: start.y };
    const meets: Point = { x, y: line.at + line.slope * x };
    const correction = dropped({ ...dropOf(project), height: frettopOver(read, line.on) }, cents, style);
    return {
      id: `${start.id}-${line.id}-${side}`,
      group: line.id === 'pins' ? 'pins' : 'along',
      label: `${start.name} to ${line.name} at string ${number}, ${side}`,
      how: `Rule on the frets, along the centreline; a small square carries the reading down to the ${line.name}.`,
      expected: meets.y - start.y - correction.by,
      signed: false,
      tool: 'rule-and-square',
      correction,
      reading: (value, sigma): Reading => ({
        kind: 'toLine',
        from,
        direction: TOWARD_TAIL,
        line: inBridge(line, pose, Math.max(20, Math.abs(x))),
        value: value + correction.by,
        sigma,
      }),
      drawn: [[from, meets]],
    };
  };
  const twelfth: Start = { id: 'twelfth', name: '12th fret', y: board.twelfth };
  const datum = DATUM_NAME[project.instrument.nut.datum].full;
  const nut: Start = { id: 'nut', name: `${datum.charAt(0).toUpperCase()}${datum.slice(1)}`, y: 0 };
  const both = (start: Start, line: AcrossLine | null): readonly ReadLine[] =>
    line === null ? [] : outer(read).map((place) => lineFrom(start, line, place));
  return [
    ...both(twelfth, slotFront(read)),
    ...both(nut, slotFront(read)),
    ...both(twelfth, templateLine(read, style.unit)),
    ...both(nut, templateLine(read, style.unit)),
    ...both(twelfth, frontEdge(read)),
    ...both(twelfth, pinRow(read)),
    ...stickLines(read),
  ];
};

/** The octave stick, laid on from the 12th fret: how far the break points lie beyond its marks, or short of them. */
const stickLines = (read: ReadCase): readonly ReadLine[] => {
  const { board, saddle } = read;
  return outer(read).map(({ side, number, x }): ReadLine => {
    const from: Point = { x, y: board.twelfth };
    const meets: Point = { x, y: saddle.centre + saddle.slope * x };
    const mark = meets.y - from.y;
    return {
      id: `stick-${side}`,
      group: 'stick',
      label: `Octave stick, string ${number}, ${side}: over or under`,
      how: 'Stick walked on from the crown of the 12th fret: how far the break point lies beyond its mark, + toward the tail, − short of it.',
      expected: 0,
      signed: true,
      tool: 'stick',
      correction: null,
      reading: (value, sigma): Reading => ({
        kind: 'toLine',
        from,
        direction: TOWARD_TAIL,
        line: [
          { x: -40, y: saddle.slope * -40 },
          { x: 40, y: saddle.slope * 40 },
        ],
        value: mark + value,
        sigma,
      }),
      drawn: [[from, meets]],
    };
  });
};
