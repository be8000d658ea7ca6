import { choiceField, lengthField, numberField, orEmpty } from './fieldRows';
import type { Field } from './fieldTypes';

const cents = (path: string, side: string): Field =>
  orEmpty(
    numberField(
      path,
      `Cents at the 12th fret, ${side}`,
      'cents',
      -60,
      60,
      'Fretted at the 12th against the open octave, by any tuner: plus when the fretted note is sharp.',
    ),
  );

/** A bridge that is there already, as read. */
export const AUDIT_FIELDS: readonly Field[] = [
  choiceField('audit.from', 'Saddle read from', 'Where the rule starts.', [
    ['nut', 'the nut datum'],
    ['twelfth', 'the 12th fret'],
  ]),
  orEmpty(
    lengthField(
      'audit.treble',
      'To the break point, treble',
      100,
      1300,
      'Along the neck, to where string 1 breaks over the saddle as it is.',
    ),
  ),
  orEmpty(
    lengthField(
      'audit.bass',
      'To the break point, bass',
      100,
      1300,
      'Along the neck, to where the bass string breaks over the saddle as it is.',
    ),
  ),
  cents('audit.centsTreble', 'treble'),
  cents('audit.centsBass', 'bass'),
  orEmpty(
    lengthField(
      'audit.actionTreble',
      'Action as it is, treble',
      0.2,
      12,
      'At the 12th fret, to the underside of string 1.',
    ),
  ),
  orEmpty(
    lengthField(
      'audit.actionBass',
      'Action as it is, bass',
      0.2,
      12,
      'At the 12th fret, to the underside of the bass string.',
    ),
  ),
  lengthField('audit.slotWidth', 'Slot as it is, width', 0.8, 12, 'Wall to wall.'),
  lengthField('audit.saddleThickness', 'Saddle as it is, thickness', 0.8, 12, 'Across the saddle.'),
  lengthField(
    'audit.crown',
    'Saddle face to break point',
    0,
    12,
    'From the front face of the saddle to where the outer strings break.',
  ),
  orEmpty(
    lengthField(
      'audit.pinSpread',
      'Pins as they are, spacing outer',
      10,
      120,
      'Centre of the first to centre of the last.',
    ),
  ),
  orEmpty(
    lengthField('audit.pinsFromSlot', 'Slot to pins as they are', 1, 60, 'Back wall of the slot to the pin centres.'),
  ),
  orEmpty(
    lengthField(
      'audit.pinsToBack',
      'Pins to back edge',
      1,
      60,
      'Pin centres to the back edge of the bridge, the least of them.',
    ),
  ),
  orEmpty(
    lengthField(
      'audit.ahead',
      'Front edge to slot as it is',
      1,
      60,
      'Front edge of the bridge to the front wall of the slot.',
    ),
  ),
];
