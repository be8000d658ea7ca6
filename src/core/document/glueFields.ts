import type { Build } from './buildTypes';
import { lengthField, numberField, orEmpty, textField } from './fieldRows';
import type { Field, NumberField } from './fieldTypes';
import { hasGroup } from './fieldValue';
import type { Project } from './types';

/** Two weeks, in minutes: longer than any label asks. */
const LONGEST = 20_160;

const time = (name: string, label: string, help: string): Field =>
  orEmpty(numberField(`build.glue.times.${name}`, label, 'min', 0, LONGEST, help));

const air = (where: string, path: string): readonly Field[] => [
  numberField(`${path}.celsius`, `Air temperature, ${where}`, '°C', -20, 60, 'In °C or °F, such as 21 °C or 70 °F.'),
  numberField(
    `${path}.humidity`,
    `Relative humidity, ${where}`,
    '%',
    0,
    100,
    'As your meter says: three meters side by side may differ by 10 %.',
  ),
];

const grain = (piece: 'top' | 'bridge', cut: 'radial' | 'tangential', name: string): NumberField => ({
  ...orEmpty(
    numberField(
      `build.movement.${piece}.${cut}`,
      `Movement of the ${piece}, ${name}`,
      '%',
      0,
      0.01,
      'Of its width, for one percent of moisture; empty: the table’s figure.',
    ),
  ),
  scale: 100,
});

/** How the bridge is glued, the air and how the wood moves. Typing one of them begins the instrument where none was begun. */
export const GLUE_FIELDS: readonly Field[] = [
  textField('build.glue.adhesive', 'Adhesive', 60, 'What is on the label, with its batch or date.'),
  orEmpty(
    numberField(
      'build.glue.pressure',
      'Pressure to reckon with',
      'psi',
      0,
      400,
      'As the adhesive’s data give it; MPa, N/mm² and bar are understood too. A figure to know by, not an order.',
    ),
  ),
  time('open', 'Open time', 'From spreading the glue until the bridge is on, as the label says.'),
  time('closed', 'Closed time', 'From the bridge on its glue until every clamp is tight, as the label says.'),
  time('clamp', 'Clamp time', 'How long the clamps stay on, as the label says: with min or h.'),
  time('cure', 'Cure time', 'Until the joint may carry the strings, as the label says: with min or h.'),
  lengthField(
    'build.glue.reach',
    'Reach of the clamps',
    20,
    600,
    'From the edge of the soundhole to the middle of the pad, inside the body.',
    'a common size of bridge clamp: from memory',
  ),
  ...air('where it is glued', 'build.shop'),
  ...air('where it is kept', 'build.kept'),
  grain('top', 'radial', 'quarter-sawn'),
  grain('top', 'tangential', 'flat-sawn'),
  grain('bridge', 'radial', 'quarter-sawn'),
  grain('bridge', 'tangential', 'flat-sawn'),
];

/** Where one clamp goes. index from 0, in order of tightening. */
export const clampFields = (index: number): readonly Field[] => [
  lengthField(
    `build.glue.clamps.${index}.y`,
    `Clamp ${index + 1}, behind the front edge`,
    -50,
    200,
    'Middle of its pad, along the centreline from the bridge’s front edge.',
  ),
  lengthField(
    `build.glue.clamps.${index}.x`,
    `Clamp ${index + 1}, to the side`,
    -150,
    150,
    'Middle of its pad from the centreline: plus, or the word treble, for the treble side; minus, or bass, for the bass side.',
  ),
];

const clampsOf = (build: Build | null): readonly Field[] =>
  build?.glue?.clamps?.flatMap((_, index) => clampFields(index)) ?? [];

/** The rows of what was begun of all that. */
export const glueFields = (project: Project): readonly Field[] => [
  ...GLUE_FIELDS.filter(({ path }) => hasGroup(project, path)),
  ...clampsOf(project.build),
];
