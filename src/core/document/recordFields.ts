import type { WoodUsed } from './buildTypes';
import { textField } from './fieldRows';
import type { Field } from './fieldTypes';
import type { Project } from './types';

/** Characters of notes that a file holds. */
const LONGEST_NOTES = 20_000;
const LONGEST_NAME = 80;

const NOTES_FIELD: Field = textField(
  'about.notes',
  'Notes',
  LONGEST_NOTES,
  'Anything worth finding again: the library searches these words.',
);

const SERIAL_FIELD: Field = textField(
  'build.serial',
  'Number or name',
  LONGEST_NAME,
  "This one instrument's number or name, as you keep it.",
);

const fieldsOfWood = (_: WoodUsed, index: number): readonly Field[] => {
  const row = (name: string, label: string, help: string): Field =>
    textField(`build.woods.${index}.${name}`, `${label}, wood ${index + 1}`, LONGEST_NAME, help);
  return [
    row('part', 'Part', 'What of the instrument it is: top, bridge, plate.'),
    row(
      'species',
      'Species',
      'The botanical name is the one that papers ask for; a trade name may mean several woods.',
    ),
    row('origin', 'Origin', 'Where it grew, and what bill or permit came with it.'),
  ];
};

/** Notes belong to models too. */
export const notesFields = (): readonly Field[] => [NOTES_FIELD];

export const serialFields = ({ build }: Project): readonly Field[] => (build === null ? [] : [SERIAL_FIELD]);

export const woodFields = ({ build }: Project): readonly Field[] => build?.woods.flatMap(fieldsOfWood) ?? [];
