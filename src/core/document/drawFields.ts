import { choiceField, lengthField, numberField, orEmpty } from './fieldRows';
import type { Field, NumberField } from './fieldTypes';
import { SHAPE_NAMES } from './shapeNames';

/** The bridge. */
export const DRAW_FIELDS: readonly Field[] = [
  choiceField(
    'bridge.outline.shape',
    'Bridge shape',
    'Choosing a shape brings its usual dimensions; every one can be changed.',
    Object.entries(SHAPE_NAMES),
  ),
  lengthField(
    'bridge.slot.fromFront',
    'Front edge to slot',
    1,
    60,
    'Front (nut-side) edge of the bridge to the front wall of the slot, along the centreline.',
  ),
  lengthField('bridge.slot.length', 'Slot length', 10, 200, 'Over all, along the slot, ends included.'),
  lengthField(
    'bridge.slot.width',
    'Slot width',
    0.8,
    12,
    'Wall to wall.',
    '3/32 or 1/8 in: premierguitar.com, intonating a flat-top guitar',
  ),
  choiceField('bridge.slot.ends', 'Slot ends', 'As the cutter leaves them.', [
    ['round', 'round'],
    ['square', 'square'],
  ]),
  {
    kind: 'number',
    path: 'bridge.slot.crown',
    label: 'Break point across the slot',
    min: 0,
    max: 1,
    whole: false,
    scale: 100,
    unit: '% from the front',
    help: 'Where in the thickness of the saddle the string breaks: 0 at the front wall, 50 in the middle, 100 at the back wall.',
    source: 'Middle: common practice, no source',
  } satisfies NumberField,
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
  choiceField('bridge.pins.row', 'Pin row', 'Along the slot, or square to the centreline.', [
    ['parallel', 'parallel to the slot'],
    ['square', 'square to the centreline'],
  ]),
  lengthField(
    'bridge.pins.hole',
    'Pin pilot hole',
    1,
    10,
    'First drill; ream to the pin later.',
    '3/16 in, the smallest that passes a ball end: frets.com, drilling a bridge in place',
  ),
  lengthField(
    'bridge.pins.stagger',
    'Second pin row behind the first',
    0,
    25,
    'Every second pin stands this far behind the first row; 0 for one row. Twelve pins need two rows.',
    'common practice, no source',
  ),
  choiceField(
    'bridge.locating.site',
    'Locating pins in',
    'Where the small pins go that keep the bridge from creeping under the clamp.',
    [
      ['slot-ends', 'the slot ends'],
      ['outer-pin-holes', 'the outer pin holes'],
    ],
  ),
  lengthField(
    'bridge.locating.drill',
    'Locating-pin hole',
    0.5,
    8,
    'Drill for the locating pins, through the bridge itself into the top.',
    '1/16 in through the slot ends: pegasusguitars.com, lacquer removal',
  ),
  lengthField('bridge.slot.depth', 'Slot depth', 0.5, 14, 'Top of the bridge to the floor of the slot.'),
  orEmpty({
    ...numberField(
      'bridge.slot.slant',
      'Slant of a slotted bridge',
      '°',
      -0.2,
      0.2,
      'Only when the slot is cut already: its slant, plus when the bass lies farther back. Empty: the slant follows from the strings.',
      '3° and 5° are met: lefty.it, adapting an acoustic guitar',
    ),
    scale: 180 / Math.PI,
  }),
  lengthField(
    'bridge.thickness',
    'Bridge thickness',
    3,
    16,
    'Sole to top at the slot.',
    '3/8 in: buildyourguitar.com, bridge angle tip',
  ),
];
