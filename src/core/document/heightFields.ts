import { choiceField, lengthField } from './fieldRows';
import type { Field } from './fieldTypes';

/** The chain of heights from the frets to the saddle. */
export const HEIGHT_FIELDS: readonly Field[] = [
  choiceField('height.kind', 'Height limits of', 'Which limits the heights are held against; each can be changed.', [
    ['steel', 'steel-string'],
    ['classical', 'classical'],
    ['ukulele', 'ukulele'],
  ]),
  lengthField(
    'height.run',
    'Break point to pin',
    2,
    30,
    'From the break point back to where the string leaves the top of the bridge: pin, ramp or tie hole. Gives the break angle.',
  ),
  lengthField(
    'height.pickup',
    'Pickup under the saddle',
    0,
    6,
    'Thickness of a pickup that lies in the slot; 0 for none.',
  ),
];
