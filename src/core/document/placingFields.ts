import { lengthField, numberField, orEmpty } from './fieldRows';
import type { Field, NumberField } from './fieldTypes';

const DEVIATION = 'One standard deviation: two in three lie within it. Empty: the usual.';

const row = (name: string, label: string, unit: string, max: number, about: string, scale = 1): NumberField =>
  orEmpty({ ...numberField(`doubts.${name}`, label, unit, 0, max, `${about} ${DEVIATION}`), scale });

/** How large each error is that may carry the bridge while it is placed, drilled and pinned. */
const ERROR_FIELDS: readonly Field[] = [
  row('placeRule', 'Reading the rule', 'mm', 2, 'One reading at one end of the bridge.'),
  row('placeParallax', 'Looking aslant at the rule', 'mm', 2, 'The same at both ends, since the same eye reads them.'),
  row(
    'placeSquare',
    'Square out of square',
    '°',
    Math.PI / 60,
    'The small square that drops the reading from the frets to the top, and how upright it is held.',
    180 / Math.PI,
  ),
  row('placeTemplate', 'Template cut off its line', 'mm', 2, 'One edge that the bridge is set against.'),
  row('placePaper', 'Paper’s stretch', '%', 0.02, 'Between square line and bridge, from print to bench.', 100),
  row('placePrint', 'Print factor', '%', 0.02, 'What the print may still be off by once it is proved.', 100),
  row('placeTape', 'Creep of the tape', 'mm', 2, 'How far one end of the taped bridge may move before it is drilled.'),
  row('placeDrill', 'Wander of the drill', 'mm', 2, 'One hole in the top against the same hole in the sole.'),
  orEmpty(
    numberField(
      'doubts.placePin',
      'Locating pin loose in its hole',
      'mm',
      0,
      1,
      'Diameter of the hole less that of the pin, bridge and top together. No deviation: all of it. Empty: the usual.',
    ),
  ),
];

const FINISH_LIMIT_FIELDS: readonly Field[] = [
  lengthField(
    'limits.rimNew',
    'Finish left under the rim, most for new work',
    0,
    10,
    'In a repair none is left, whatever stands here.',
  ),
  lengthField(
    'limits.rebateOver',
    'Rebate deeper than the film, by',
    0,
    1,
    'So that the bridge sits on its glue and not on the film.',
  ),
  lengthField('limits.rebateDeepest', 'Rebate, deepest', 0, 3, 'Deeper than this it shows as a gap under the edge.'),
].map(orEmpty);

/** What a maker can set on Place that every project has. */
export const PLACING_FIELDS: readonly Field[] = [...ERROR_FIELDS, ...FINISH_LIMIT_FIELDS];
