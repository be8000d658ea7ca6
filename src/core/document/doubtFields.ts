import { numberField, orEmpty } from './fieldRows';
import type { Field } from './fieldTypes';

const row = (name: string, label: string, unit: string, max: number): Field =>
  orEmpty(
    numberField(
      `doubts.${name}`,
      `Doubt of ${label}`,
      unit,
      0,
      max,
      'One standard deviation: two readings in three lie within it. Empty: the usual.',
    ),
  );

/** How far the figures behind the compensation may be off. */
export const DOUBT_FIELDS: readonly Field[] = [
  row('action', 'action', 'mm', 2),
  row('nutHeight', 'nut height', 'mm', 1),
  row('relief', 'neck relief', 'mm', 1),
  row('fingerDistance', 'finger distance', 'mm', 15),
  row('pushDown', 'push-down', 'mm', 1),
  row('coreDiameter', 'core', 'mm', 0.5),
  row('modulus', 'modulus', 'GPa', 50),
  row('massPerLength', 'mass', 'g/m', 5),
  row('kappa', 'stretch \u03ba', '', 200),
  row('b0', 'bending B0', '', 0.01),
];
