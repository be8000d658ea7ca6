import { lengthField, numberField, orEmpty } from './fieldRows';
import type { Field } from './fieldTypes';

/** How far off a bridge may sit. */
export const READ_FIELDS: readonly Field[] = [
  orEmpty(
    lengthField(
      'limits.placeSideways',
      'Sideways, most',
      0.02,
      5,
      'Farther off than this it is moved. Empty: the usual.',
    ),
  ),
  orEmpty(
    lengthField(
      'limits.placeAlong',
      'Fore and aft, most',
      0.02,
      5,
      'Farther off than this it is moved. Empty: the usual.',
    ),
  ),
  orEmpty({
    ...numberField(
      'limits.placeTurn',
      'Turned, most',
      '°',
      0.0002,
      0.1,
      'Turned farther than this it is moved. Empty: the usual.',
    ),
    scale: 180 / Math.PI,
  }),
];
