import type { ChoiceField, Field, LengthField, NumberField, TextField } from './fieldTypes';

const length = (path: string, label: string, min: number, max: number, help: string, source?: string): LengthField =>
  source === undefined
    ? { kind: 'length', path, label, min, max, help }
    : { kind: 'length', path, label, min, max, help, source };

const choice = (
  path: string,
  label: string,
  help: string,
  choices: readonly (readonly [string, string])[],
): ChoiceField => ({
  kind: 'choice',
  path,
  label,
  help,
  choices: choices.map(([value, name]) => ({ value, label: name })),
});

const words = (path: string, label: string, maxLength: number, help: string): TextField => ({
  kind: 'text',
  path,
  label,
  maxLength,
  help,
});

const ORDINALS = ['1st', '2nd', '3rd'] as const;

/** How many readings of nut to 12th fret there is room for. */
export const READING_COUNT = ORDINALS.length;

const readings: readonly LengthField[] = ORDINALS.map((ordinal, index) => ({
  kind: 'length',
  path: `instrument.scale.readings.${index}`,
  label: `Nut to 12th fret, ${ordinal} reading`,
  min: 100,
  max: 600,
  optional: true,
  help: 'Steel rule on the frets, from the nut datum to the crown of the 12th fret. Lift the rule and lay it again for each reading.',
}));

const MEASURE: readonly Field[] = [
  words('about.name', 'Name', 80, 'What you call this instrument; it stands in the title block of every sheet.'),
  choice('instrument.hand', 'Hand', 'Figures stay the same; the drawing and the sheets mirror, words stay upright.', [
    ['right', 'Right'],
    ['left', 'Left'],
  ]),
  ...readings,
  length(
    'instrument.scale.entered',
    'Scale length',
    200,
    1200,
    'Twice the distance from nut to 12th fret. Typing here sets the readings aside; measuring beats a nominal figure.',
  ),
  choice('instrument.nut.datum', 'Measured from', 'The datum that every figure "from the nut" starts at.', [
    ['front', 'front face of the nut'],
    ['zero-fret', 'crown of the zero fret'],
    ['board-end', 'bare end of the board'],
  ]),
  length(
    'instrument.nut.offset',
    'Nut offset',
    -3,
    3,
    'Minus when the nut end was shortened, so that the nut stands nearer the bridge than the frets were laid out for.',
  ),
  length(
    'instrument.nut.face',
    'Nut face behind the zero fret',
    0,
    30,
    'From the crown of the zero fret back to the front face of the nut. Used only with a zero fret.',
  ),
  length('instrument.widths.nut', 'Nut width', 20, 90, 'Across the fingerboard at the nut.'),
  length(
    'instrument.widths.twelfth',
    'Board width at 12th fret',
    20,
    110,
    'Across the fingerboard at the crown of the 12th fret.',
  ),
  {
    kind: 'number',
    path: 'instrument.frets.bodyJoin',
    label: 'Fret at the body join',
    min: 8,
    max: 22,
    whole: true,
    scale: 1,
    unit: '',
    help: 'The fret over the joint of neck and body: 12 or 14 on most guitars. Its ends serve as base for squaring.',
  } satisfies NumberField,
  length(
    'instrument.margins.treble',
    'Edge to string 1 at the nut',
    0.5,
    15,
    'From the board edge to the outside of string 1.',
    'Just over 1/8 in at the nut: ukuleleguild.tripod.com, February 2002',
  ),
  length(
    'instrument.margins.bass',
    'Edge to last string at the nut',
    0.5,
    15,
    'From the board edge to the outside of the bass string.',
    'Just over 1/8 in at the nut: ukuleleguild.tripod.com, February 2002',
  ),
  choice(
    'instrument.gapRule',
    'Strings spaced by',
    'Equal gaps leave the same air between neighbours; equal centres ignore their thickness.',
    [
      ['equal-gaps', 'equal gaps'],
      ['equal-centres', 'equal centres'],
    ],
  ),
  choice(
    'instrument.spread.from',
    'Spacing at the saddle from',
    'Your own figure, or the board edges carried on to the saddle less the margins.',
    [
      ['own', 'own figure'],
      ['edges', 'board edges'],
    ],
  ),
  length(
    'instrument.spread.own',
    'String spacing at saddle, outer',
    10,
    120,
    'Centre of string 1 to centre of the bass string at the saddle, square across the centreline.',
    'Steel 2 1/8 in: frets.com, drilling a bridge in place; classical 57 to 60 mm: from memory',
  ),
  length(
    'setup.action.treble',
    'Action at 12th fret, treble',
    0.3,
    10,
    'Wanted, from the 12th fret crown to the underside of string 1. Printed on the sheet.',
  ),
  length(
    'setup.action.bass',
    'Action at 12th fret, bass',
    0.3,
    10,
    'Wanted, from the 12th fret crown to the underside of the bass string. Printed on the sheet.',
  ),
  length('setup.relief', 'Neck relief', 0, 2, 'Deepest dip of the frets below a straightedge. Printed on the sheet.'),
  choice('compensation.by', 'Compensation by', 'How far behind twice the 12th fret the saddle stands.', [
    ['rule', 'Rule of thumb'],
    ['own', 'Own figures'],
  ]),
  length(
    'compensation.rule.treble',
    'Compensation, treble',
    -5,
    15,
    'How far behind the octave line string 1 breaks over the saddle.',
    '1/16 in treble, 5/32 in bass: larryeubanks.blogspot.com, June 2010',
  ),
  length(
    'compensation.rule.bass',
    'Compensation, bass',
    -5,
    15,
    'How far behind the octave line the bass string breaks over the saddle.',
    '1/16 in treble, 5/32 in bass: larryeubanks.blogspot.com, June 2010',
  ),
  choice(
    'compensation.rule.reach',
    'Figures reach to',
    'Rules of thumb are told from different places; on a 1/8 in slot they lie 1.6 mm apart, over 4 cents.',
    [
      ['break-point', 'break point'],
      ['slot-front', 'slot front'],
      ['slot-centre', 'slot centre'],
    ],
  ),
  words(
    'compensation.rule.source',
    'Where the rule comes from',
    200,
    'Printed nowhere; kept so that you know later whose figures these were.',
  ),
];

const DRAW: readonly Field[] = [
  choice(
    'bridge.outline.shape',
    'Bridge shape',
    'Choosing a shape brings its usual dimensions; every one can be changed.',
    [
      ['belly', 'Belly, toward the tail'],
      ['tie-block', 'Tie-block'],
      ['small-ukulele', 'Small ukulele'],
    ],
  ),
  length(
    'bridge.slot.fromFront',
    'Front edge to slot',
    1,
    60,
    'Front (nut-side) edge of the bridge to the front wall of the slot, along the centreline.',
  ),
  length('bridge.slot.length', 'Slot length', 10, 200, 'Over all, along the slot, ends included.'),
  length(
    'bridge.slot.width',
    'Slot width',
    0.8,
    12,
    'Wall to wall.',
    '3/32 or 1/8 in: premierguitar.com, intonating a flat-top guitar',
  ),
  choice('bridge.slot.ends', 'Slot ends', 'As the cutter leaves them.', [
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
  length(
    'bridge.pins.spread',
    'Pin spacing, outer',
    10,
    120,
    'Centre of the first pin to centre of the last, along the row.',
    '2 3/16 in: sillars.com, bridge hardware',
  ),
  length(
    'bridge.pins.from',
    'Slot to pin row',
    2,
    60,
    'Back wall of the slot to the pin centres, along the centreline.',
    '3/8 in behind the slot: sillars.com, bridge hardware',
  ),
  choice('bridge.pins.row', 'Pin row', 'Along the slot, or square to the centreline.', [
    ['parallel', 'parallel to the slot'],
    ['square', 'square to the centreline'],
  ]),
  length(
    'bridge.pins.hole',
    'Pin pilot hole',
    1,
    10,
    'First drill; ream to the pin later.',
    '3/16 in, the smallest that passes a ball end: frets.com, drilling a bridge in place',
  ),
  choice(
    'bridge.locating.site',
    'Locating pins in',
    'Where the small pins go that keep the bridge from creeping under the clamp.',
    [
      ['slot-ends', 'the slot ends'],
      ['outer-pin-holes', 'the outer pin holes'],
    ],
  ),
  length(
    'bridge.locating.drill',
    'Locating-pin hole',
    0.5,
    8,
    'Drill for the locating pins, through the bridge itself into the top.',
    '1/16 in through the slot ends: pegasusguitars.com, lacquer removal',
  ),
];

/** Every field that a maker can edit, by station. */
export const FIELDS: Readonly<Record<'measure' | 'draw', readonly Field[]>> = { measure: MEASURE, draw: DRAW };
