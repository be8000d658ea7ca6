import { choiceField, lengthField, numberField, orEmpty, textField } from './fieldRows';
import type { Field } from './fieldTypes';
import { readingField } from './readingFields';

/** How many readings of nut to 12th fret there is room for. */
export const READING_COUNT = 5;

const TWELFTH_READINGS = Array.from({ length: READING_COUNT }, (_, index) => readingField(12, index));

/** Fret survey, board and spacing. */
export const INSTRUMENT_FIELDS: readonly Field[] = [
  textField('about.name', 'Name', 80, 'What you call this instrument; it stands in the title block of every sheet.'),
  choiceField(
    'instrument.hand',
    'Hand',
    'Figures stay the same; the drawing and the sheets mirror, words stay upright.',
    [
      ['right', 'Right'],
      ['left', 'Left'],
    ],
  ),
  ...TWELFTH_READINGS,
  lengthField(
    'instrument.scale.entered',
    'Scale length',
    200,
    1200,
    'Twice the distance from nut to 12th fret. Typing here sets the readings aside; measuring beats a nominal figure.',
  ),
  choiceField('instrument.nut.datum', 'Measured from', 'The datum that every figure "from the nut" starts at.', [
    ['front', 'front face of the nut'],
    ['zero-fret', 'crown of the zero fret'],
    ['board-end', 'bare end of the board'],
  ]),
  lengthField(
    'instrument.nut.offset',
    'Nut offset',
    -3,
    3,
    'Minus when the nut end was shortened, so that the nut stands nearer the bridge than the frets were laid out for.',
  ),
  lengthField(
    'instrument.nut.face',
    'Nut face behind the zero fret',
    0,
    30,
    'From the crown of the zero fret back to the front face of the nut. Used only with a zero fret.',
  ),
  lengthField('instrument.widths.nut', 'Nut width', 20, 90, 'Across the fingerboard at the nut.'),
  lengthField(
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
  },
  lengthField(
    'instrument.margins.treble',
    'Edge to string 1 at the nut',
    0.5,
    15,
    'From the board edge to the outside of string 1.',
    'Just over 1/8 in at the nut: ukuleleguild.tripod.com, February 2002',
  ),
  lengthField(
    'instrument.margins.bass',
    'Edge to last string at the nut',
    0.5,
    15,
    'From the board edge to the outside of the bass string.',
    'Just over 1/8 in at the nut: ukuleleguild.tripod.com, February 2002',
  ),
  choiceField(
    'instrument.gapRule',
    'Strings spaced by',
    'Equal gaps leave the same air between neighbours; equal centres ignore their thickness.',
    [
      ['equal-gaps', 'equal gaps'],
      ['equal-centres', 'equal centres'],
    ],
  ),
  choiceField(
    'instrument.spread.from',
    'Spacing at the saddle from',
    'Your own figure, or the board edges carried on to the saddle less the margins.',
    [
      ['own', 'own figure'],
      ['edges', 'board edges'],
    ],
  ),
  lengthField(
    'instrument.spread.own',
    'String spacing at saddle, outer',
    10,
    120,
    'Centre of string 1 to centre of the bass string at the saddle, square across the centreline.',
    'Steel 2 1/8 in: frets.com, drilling a bridge in place; classical 57 to 60 mm: from memory',
  ),
  lengthField(
    'instrument.pairGap',
    'Strings of a pair, centre to centre',
    0.8,
    6,
    'Within a course of two strings.',
    'about 2 mm: from memory',
  ),
  orEmpty(
    lengthField(
      'instrument.widths.last',
      'Board width at last fret',
      20,
      130,
      'Across the fingerboard at the crown of the last fret; tells whether the taper is straight.',
    ),
  ),
  { ...numberField('instrument.frets.count', 'Last fret', '', 10, 30, 'How many frets the board has.'), whole: true },
  orEmpty(
    lengthField(
      'instrument.boardRadius',
      'Fingerboard radius',
      100,
      1000,
      'Of the top of the fingerboard across its width; empty for a flat board. It lifts the middle strings at the saddle.',
    ),
  ),
  lengthField(
    'instrument.seamOffset',
    'Seam from the centreline',
    -15,
    15,
    'How far the seam of the top lies from the centreline of the board at the bridge: plus toward the treble. The bridge goes by the board, not by the seam.',
  ),
];
