import { lengthField, numberField } from './fieldRows';
import type { Field } from './fieldTypes';

/** Heights of the strings, and the player's finger. */
export const SETUP_FIELDS: readonly Field[] = [
  lengthField(
    'setup.action.treble',
    'Action at 12th fret, treble',
    0.3,
    10,
    'Wanted, from the 12th fret crown to the underside of string 1. Printed on the sheet.',
  ),
  lengthField(
    'setup.action.bass',
    'Action at 12th fret, bass',
    0.3,
    10,
    'Wanted, from the 12th fret crown to the underside of the bass string. Printed on the sheet.',
  ),
  lengthField(
    'setup.relief',
    'Neck relief',
    0,
    2,
    'Deepest dip of the frets below a straightedge. Printed on the sheet.',
  ),
  lengthField(
    'setup.nutHeight.treble',
    'String height at the nut, treble',
    0,
    4,
    'From the line of the fret tops, carried on to the nut, up to the underside of string 1.',
    '0.30 to 0.40 mm on a steel guitar: a worked example, assumed there',
  ),
  lengthField(
    'setup.nutHeight.bass',
    'String height at the nut, bass',
    0,
    4,
    'From the line of the fret tops, carried on to the nut, up to the underside of the bass string.',
    '0.30 to 0.40 mm on a steel guitar: a worked example, assumed there',
  ),
  {
    ...numberField(
      'setup.reliefFrets.from',
      'Relief from fret',
      '',
      0,
      12,
      'The first fret that the straightedge for the relief rests on.',
      'common practice, no source',
    ),
    whole: true,
  },
  {
    ...numberField(
      'setup.reliefFrets.to',
      'Relief to fret',
      '',
      8,
      30,
      'The last fret that the straightedge for the relief rests on.',
      'common practice, no source',
    ),
    whole: true,
  },
  lengthField(
    'setup.fingerDistance',
    'Finger behind the fret',
    0,
    25,
    'From the fret back to the middle of the finger; 0 takes the string as stopped at the fret itself.',
    'Anderson & Beausoleil, J. Acoust. Soc. Am. 156, 683 (2024) compute with 0 and with 10 mm',
  ),
  lengthField(
    'setup.pushDown',
    'Push-down below the fret top',
    0,
    1.5,
    'How far the finger presses the string below the top of the fret.',
    '0: the string is held on the fret with no further sharpening, Anderson & Beausoleil 2024',
  ),
];
