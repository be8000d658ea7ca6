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
  choiceField('bridge.slot.run', 'Slot run', 'Stopped within the bridge, or open: cut through both of its ends.', [
    ['stopped', 'stopped in the bridge'],
    ['open', 'open at both ends'],
  ]),
  choiceField('bridge.slot.ends', 'Slot ends', 'As the cutter leaves them, in a stopped slot.', [
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
  choiceField(
    'bridge.locating.site',
    'Locating pins in',
    'Where the small pins go that keep the bridge from creeping under the clamp.',
    [
      ['slot-ends', 'the slot ends'],
      ['outer-pin-holes', 'the outer pin holes'],
      ['free', 'two free points'],
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
  lengthField(
    'bridge.locating.clearance',
    'Clearance in the caul',
    0,
    6,
    'How much wider than the locating pin its hole in the clamping caul is, so that the caul lifts off.',
    'common practice, no source',
  ),
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
    'bridge.rim',
    'Finish left under the rim',
    0,
    10,
    'How far the finish runs in under the bridge, all round: no glue holds there.',
    '0 for repair: frets.com, regluing a bridge; 0 to 1/32 in for new work: common practice, no source',
  ),
  numberField(
    'bridge.density',
    'Density of the wood',
    'kg/m³',
    100,
    1500,
    'Of the bridge, dry.',
    '870 for rosewood: ballinglyjoinery.com, rosewood',
  ),
];
