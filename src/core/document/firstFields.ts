import { BRIDGE_HEIGHT_FIELDS } from './bridgeHeightFields';
import { COMPENSATION_FIELDS } from './compensationFields';
import type { Field } from './fieldTypes';
import { INSTRUMENT_FIELDS } from './instrumentFields';
import { readingField, readingOfPath } from './readingFields';
import { SETUP_FIELDS } from './setupFields';
import type { Project } from './types';

/** The fields that the first screen shows: what it must load. `fieldAt` knows all the others as well. */
export const FIRST_FIELDS: readonly Field[] = [
  ...INSTRUMENT_FIELDS,
  ...SETUP_FIELDS,
  ...COMPENSATION_FIELDS,
  ...BRIDGE_HEIGHT_FIELDS,
];

const BY_PATH: ReadonlyMap<string, Field> = new Map(FIRST_FIELDS.map((field) => [field.path, field]));

const OWN = 'compensation.own.';

/** The row for a string's own compensation; null when there is no such string. */
export const ownCompensation = (project: Project, id: string): Field | null => {
  const index = project.strings.findIndex((string) => string.id === id);
  const string = project.strings[index];
  if (string === undefined) return null;
  return {
    kind: 'length',
    path: `${OWN}${id}`,
    label: `Compensation, string ${index + 1} (${string.name})`,
    min: -5,
    max: 15,
    optional: true,
    help: 'How far behind the octave line this string breaks over the saddle.',
  };
};

/** The row for a path among those of the first screen, readings and own compensation included; null for any other. */
export const firstFieldAt = (project: Project, path: string): Field | null => {
  const fixed = BY_PATH.get(path);
  if (fixed !== undefined) return fixed;
  const reading = readingOfPath(path);
  if (reading !== null) return readingField(reading.fret, reading.index);
  return path.startsWith(OWN) ? ownCompensation(project, path.slice(OWN.length)) : null;
};
