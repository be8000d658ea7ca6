import type { Point } from '../../geom/types';
import { centsPerMm } from '../../intonation/centsPerMm';
import type { LengthStyle } from '../../units/formatLength';
import { DATUM_NAME } from '../datumName';
import type { Reading } from '../poseTypes';
import { dropped } from './dropped';
import { dropOf, nominalPose, type ReadCase } from './readCase';
import type { ReadLine } from './types';

const TOWARD_TAIL: Point = { x: 0, y: 1 };

/** A line across the bridge, y = at + slope · x, that is read at the outer strings. */
interface AcrossLine {
  readonly id: string;
  readonly name: string;
  readonly at: number;
  readonly slope: number;
}

/** From a line across the bridge, both its points in the bridge frame, as wide as the outer strings or more. */
const inBridge = (line: AcrossLine, pose: { readonly y: number }, half: number): readonly [Point, Point] => [
  { x: -half, y: line.at - line.slope * half - pose.y },
  { x: half, y: line.at + line.slope * half - pose.y },
];

/** The outer strings where they cross the saddle. */
const outer = ({ strings }: ReadCase) =>
  [
    { side: 'treble', number: 1, string: strings[0] },
    { side: 'bass', number: strings.length, string: strings.at(-1) },
  ].flatMap(({ string, ...rest }) => (string === undefined ? [] : [{ ...rest, x: string.saddleX }]));

/** Slot, break points and pin row from the nut datum and from the 12th fret, along the centreline at both outer strings. */
export const alongLines = (read: ReadCase, style: LengthStyle): readonly ReadLine[] => {
  const { project, board, saddle, slot, bridge, scale } = read;
  const pose = nominalPose(read);
  const correction = dropped(dropOf(project), centsPerMm(scale.scaleLength, 12), style);
  const datum = DATUM_NAME[project.instrument.nut.datum];
  const [first, last] = [
    bridge.pins[0],
    bridge.pins.length % 2 === 0 && (project.bridge.pins?.stagger ?? 0) > 0 ? bridge.pins.at(-2) : bridge.pins.at(-1),
  ];
  const slopeOfPins =
    first === undefined || last === undefined || first === last
      ? null
      : (first.centre.y - last.centre.y) / (first.centre.x - last.centre.x);
  const across = {
    slot: { id: 'slot', name: 'slot front', at: slot.front, slope: saddle.slope },
    front: { id: 'front', name: 'front edge', at: bridge.front, slope: 0 },
    pins:
      first === undefined || slopeOfPins === null
        ? null
        : { id: 'pins', name: 'pin row', at: first.centre.y - slopeOfPins * first.centre.x, slope: slopeOfPins },
  };
  const starts = [
    { id: 'twelfth', name: '12th fret', y: board.twelfth },
    { id: 'nut', name: datum.full, y: 0 },
  ];
  const lineFrom = (
    start: (typeof starts)[number],
    line: AcrossLine,
    group: ReadLine['group'],
    { side, number, x }: ReturnType<typeof outer>[number],
  ): ReadLine => {
    const from: Point = { x, y: start.y };
    const meets: Point = { x, y: line.at + line.slope * x };
    const drops = line.id !== 'pins';
    return {
      id: `${start.id}-${line.id}-${side}`,
      group,
      label: `${start.name} to ${line.name} at string ${number}, ${side}`,
      how: drops
        ? 'Rule on the frets, along the centreline; a small square carries the reading down.'
        : 'Rule along the centreline, over the bridge, to the middle of the row.',
      expected: meets.y - start.y - (drops ? correction.by : 0),
      signed: false,
      tool: 'rule-and-square',
      correction: drops ? correction : null,
      reading: (value, sigma): Reading => ({
        kind: 'toLine',
        from,
        direction: TOWARD_TAIL,
        line: inBridge(line, pose, Math.max(20, Math.abs(x))),
        value: value + (drops ? correction.by : 0),
        sigma,
      }),
      drawn: [[from, meets]],
    };
  };
  const both = (start: (typeof starts)[number], line: AcrossLine | null, group: ReadLine['group']) =>
    line === null ? [] : outer(read).map((place) => lineFrom(start, line, group, place));
  const [twelfth, nut] = starts as [(typeof starts)[number], (typeof starts)[number]];
  return [
    ...both(twelfth, across.slot, 'along'),
    ...both(nut, across.slot, 'along'),
    ...both(twelfth, across.front, 'along'),
    ...both(twelfth, across.pins, 'pins'),
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
