import { lengthField, numberField, orEmpty } from './fieldRows';
import type { Field } from './fieldTypes';

const sigma = (name: string, label: string): Field =>
  orEmpty(
    lengthField(
      `doubts.${name}`,
      label,
      0.005,
      5,
      'One standard deviation of one reading: two in three lie within it. Empty: the usual.',
    ),
  );

/** How far each tool can be trusted, and how far off a bridge may sit. */
export const READ_FIELDS: readonly Field[] = [
  sigma('tool-rule', 'Steel rule, half millimetres'),
  sigma('tool-rule-64', 'Steel rule, 1/64 in'),
  sigma('tool-rule-and-square', 'Rule on the frets, small square'),
  sigma('tool-stick', 'Octave stick and feeler'),
  sigma('tool-straightedge', 'Straightedge and rule'),
  sigma('tool-calliper', 'Calliper'),
  sigma('tool-trammel', 'Trammel or dividers'),
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
