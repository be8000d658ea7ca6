import { choiceField, lengthField, numberField, textField } from './fieldRows';
import type { Field } from './fieldTypes';
import type { InstrumentString } from './types';

/** Characters that a string's sources may take. */
const LONGEST_SOURCE = 1000;

/** The sources of a string with a note put before them, once. */
export const noteSource = (note: string, source: string): string =>
  source.startsWith(note) ? source : `${note}${source}`.slice(0, LONGEST_SOURCE);

/** The rows of one string; index from 0, and the strings are told by number and name. */
export const stringFields = (string: InstrumentString, index: number): readonly Field[] => {
  const at = (name: string): string => `strings.${index}.${name}`;
  const of = (what: string): string => `${what}, string ${index + 1}`;
  const measuredAt = string.elastic.kind === 'measured' ? string.elastic.at : undefined;
  const where = measuredAt === undefined ? '' : ` on a scale of ${measuredAt.scaleLength} mm`;
  const elastic: readonly Field[] =
    string.elastic.kind === 'core'
      ? [
          lengthField(
            at('elastic.coreDiameter'),
            of('Core'),
            0.05,
            3,
            'Diameter of a round core, width across the flats of a hexagonal one; of a plain string its own.',
            string.source,
          ),
          choiceField(at('elastic.coreShape'), of('Core shape'), 'As the maker of the string says.', [
            ['round', 'round'],
            ['hex', 'hexagonal'],
          ]),
          numberField(
            at('elastic.modulus'),
            of('Modulus'),
            'GPa',
            0.5,
            300,
            'Young\u2019s modulus of the core.',
            'music wire 190 to 210 GPa: makeitfrom.com, A228; 200 from memory',
          ),
        ]
      : [
          numberField(
            at('elastic.kappa'),
            of('Stretch \u03ba'),
            '',
            0,
            2000,
            `As measured${where}: \u03ba = EA/T0.`,
            string.source,
          ),
          numberField(at('elastic.b0'), of('Bending B0'), '', 0, 0.05, `As measured${where}.`, string.source),
        ];
  return [
    textField(at('name'), of('Name'), 20, 'What you call this string.'),
    numberField(at('frequency'), of('Pitch'), 'Hz', 15, 2000, 'Open string.'),
    lengthField(at('diameter'), of('Gauge'), 0.1, 4, 'Outside diameter.', string.source),
    numberField(at('massPerLength'), of('Mass'), 'g/m', 0.01, 60, 'Whole string, wrap included.', string.source),
    ...elastic,
    textField(at('source'), of('Sources'), LONGEST_SOURCE, 'Where these figures come from.'),
  ];
};
