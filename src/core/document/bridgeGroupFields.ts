import { choiceField, lengthField, numberField } from './fieldRows';
import type { Field } from './fieldTypes';
import type { Project } from './types';

/** Bridge pins. */
const PIN_FIELDS: readonly Field[] = [
  lengthField(
    'bridge.pins.spread',
    'Pin spacing, outer',
    10,
    120,
    'Centre of the first pin to centre of the last, along the row.',
    '2 3/16 in: sillars.com, bridge hardware',
  ),
  lengthField(
    'bridge.pins.from',
    'Slot to pin row',
    2,
    60,
    'Back wall of the slot to the pin centres, along the centreline.',
    '3/8 in behind the slot: sillars.com, bridge hardware',
  ),
  choiceField(
    'bridge.pins.row',
    'Pin row',
    'Along the slot, square to the centreline, or on an arc about the slot’s line.',
    [
      ['parallel', 'parallel to the slot'],
      ['square', 'square to the centreline'],
      ['arc', 'on an arc'],
    ],
  ),
  lengthField(
    'bridge.pins.rise',
    'Middle of the row behind its ends',
    -20,
    20,
    'How far the middle of a row on an arc lies behind the line of its outer pins; minus when it lies ahead of it.',
  ),
  lengthField(
    'bridge.pins.hole',
    'Pin pilot hole',
    1,
    10,
    'First drill; ream to the pin later.',
    '3/16 in, the smallest that passes a ball end: frets.com, drilling a bridge in place',
  ),
  lengthField(
    'bridge.pins.underHead',
    'Pin under its head',
    2,
    12,
    'Diameter of the pin just under its head.',
    '5.40 mm at 3°, 5.35 mm at 5°, averages: guitaringpassionately.com, bridge pin sizing',
  ),
  numberField(
    'bridge.pins.taper',
    'Reamer taper',
    '°',
    0.5,
    10,
    'Included angle of the reamer; a ratio such as 1:20 is understood too.',
    '3° and 5° are met: guitaringpassionately.com, bridge pin sizing',
  ),
  lengthField(
    'bridge.pins.stagger',
    'Second pin row behind the first',
    0,
    25,
    'Every second pin stands this far behind the first row; 0 for one row. Twelve pins need two rows.',
    'common practice, no source',
  ),
];

const RAMP_FIELDS: readonly Field[] = [
  lengthField(
    'bridge.pins.ramp.length',
    'String ramp, length',
    0.5,
    20,
    'From the rim of the pin hole toward the saddle.',
    'ramps bring back a break angle: frets.com, break angle; the length: common practice, no source',
  ),
  lengthField(
    'bridge.pins.ramp.width',
    'String ramp, width',
    0.2,
    8,
    'Where it leaves the pin hole; it tapers to the string.',
    'common practice, no source',
  ),
];

const TIE_FIELDS: readonly Field[] = [
  lengthField(
    'bridge.ties.from',
    'Slot to string holes',
    0.5,
    60,
    'Back wall of the slot to where the strings go into their holes, along the centreline.',
    'common practice, no source',
  ),
  lengthField(
    'bridge.ties.spread',
    'String hole spacing, outer',
    10,
    120,
    'Centre of the first string hole to centre of the last.',
    'as the strings at the saddle: common practice, no source',
  ),
  lengthField('bridge.ties.hole', 'String hole', 0.5, 8, 'Drill for the string holes.', 'common practice, no source'),
  lengthField(
    'bridge.ties.rise',
    'String holes above the sole',
    0.5,
    25,
    'Middle of the string holes to the sole.',
    'common practice, no source',
  ),
];

const CUTTING_FIELDS: readonly Field[] = [
  lengthField(
    'bridge.cutting.cutter',
    'Slot cutter',
    0.5,
    12,
    'Diameter of the cutter, as it is measured.',
    '1/8 in: common practice, no source',
  ),
  lengthField(
    'bridge.cutting.base',
    'Middle of the cutter to the edge of the base',
    5,
    300,
    'Measure it on the machine in hand: from the edge of the base that runs along the fence.',
    'a base of 6 in across: common practice, no source',
  ),
];

/** The free places of the locating pins, footprint frame. */
const POINT_FIELDS: readonly Field[] = (['treble', 'bass'] as const).flatMap((side): readonly Field[] => [
  lengthField(
    `bridge.locating.points.${side}.x`,
    `Locating pin, ${side}: across`,
    -150,
    150,
    'From the centreline to the middle of the hole: plus to the treble side, minus to the bass side.',
  ),
  lengthField(
    `bridge.locating.points.${side}.y`,
    `Locating pin, ${side}: from the front edge`,
    -50,
    120,
    'Front edge on the centreline, back to the middle of the hole, along the centreline.',
  ),
]);

/** Rows of what not every bridge has: pins, ramps, string holes, a cutter, free locating pins. */
export const bridgeGroupFields = ({ bridge: { pins, ties, cutting, locating } }: Project): readonly Field[] => [
  ...(pins === null ? [] : PIN_FIELDS),
  ...(pins?.ramp ? RAMP_FIELDS : []),
  ...(ties === null ? [] : TIE_FIELDS),
  ...(cutting === null ? [] : CUTTING_FIELDS),
  ...(locating.points === null ? [] : POINT_FIELDS),
];

/** All of them, for the list of sources. */
export const BRIDGE_GROUP_FIELDS: readonly Field[] = [...PIN_FIELDS, ...RAMP_FIELDS, ...TIE_FIELDS, ...CUTTING_FIELDS];
