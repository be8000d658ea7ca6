import { choiceField, lengthField, numberField, textField } from './fieldRows';
import type { Field } from './fieldTypes';

/** How the compensation is found, and how the straight saddle is laid through it. */
export const COMPENSATION_FIELDS: readonly Field[] = [
  choiceField('compensation.by', 'Compensation by', 'How far behind twice the 12th fret the saddle stands.', [
    ['rule', 'Rule of thumb'],
    ['strings', 'Strings'],
    ['own', 'Own figures'],
  ]),
  lengthField(
    'compensation.rule.treble',
    'Compensation, treble',
    -5,
    15,
    'How far behind the octave line string 1 breaks over the saddle.',
    '1/16 in treble, 5/32 in bass: larryeubanks.blogspot.com, June 2010',
  ),
  lengthField(
    'compensation.rule.bass',
    'Compensation, bass',
    -5,
    15,
    'How far behind the octave line the bass string breaks over the saddle.',
    '1/16 in treble, 5/32 in bass: larryeubanks.blogspot.com, June 2010',
  ),
  choiceField(
    'compensation.rule.reach',
    'Figures reach to',
    'Rules of thumb are told from different places; on a 1/8 in slot they lie 1.6 mm apart, over 4 cents.',
    [
      ['break-point', 'break point'],
      ['slot-front', 'slot front'],
      ['slot-centre', 'slot centre'],
    ],
  ),
  textField(
    'compensation.rule.source',
    'Where the rule comes from',
    200,
    'Printed nowhere; kept so that you know later whose figures these were.',
  ),
  choiceField(
    'compensation.fit.match',
    'In tune over',
    'A range spreads what is left over the frets; the octave match is how most makers set a saddle by ear.',
    [
      ['range', 'a range of frets'],
      ['octave', 'the 12th fret alone'],
    ],
  ),
  {
    ...numberField(
      'compensation.fit.firstFret',
      'First fret of the range',
      '',
      1,
      20,
      'Every fret from here counts alike.',
      'frets 1 to 12: Anderson & Beausoleil 2024',
    ),
    whole: true,
  },
  {
    ...numberField(
      'compensation.fit.lastFret',
      'Last fret of the range',
      '',
      2,
      24,
      'Every fret up to here counts alike.',
      'frets 1 to 12: Anderson & Beausoleil 2024',
    ),
    whole: true,
  },
  choiceField(
    'compensation.fit.nut',
    'The nut',
    'A nut that may move takes part of the correction; choose it only when its front face can still be cut.',
    [
      ['stays', 'stays where it is'],
      ['moves', 'may move too'],
    ],
  ),
  choiceField(
    'compensation.fit.line',
    'Straight saddle by',
    'How one straight saddle is laid through what the strings want.',
    [
      ['least-squares', 'least squares'],
      ['minimax', 'least worst miss'],
      ['outer', 'the outer strings'],
    ],
  ),
];
