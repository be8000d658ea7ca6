import { FIELDS } from './fieldTable';
import type { Field } from './fieldTypes';
import { readingField, readingOfPath } from './readingFields';
import { SHAPE_PARAMETERS } from './shapeParameters';
import { stringFields } from './stringFields';
import type { Project } from './types';

const BY_PATH: ReadonlyMap<string, Field> = new Map(
  [...FIELDS.measure, ...FIELDS.draw].map((field) => [field.path, field]),
);

const OWN = 'compensation.own.';
const STRINGS = 'strings.';

const ofStrings = (project: Project): readonly Field[] => project.strings.flatMap(stringFields);

/** The row for a string's own compensation. */
const ownCompensation = (project: Project, id: string): Field | null => {
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

/** The row of the field table for a path in this project; null when there is no such field. */
export const fieldAt = (project: Project, path: string): Field | null => {
  const fixed = BY_PATH.get(path);
  if (fixed !== undefined) return fixed;
  const reading = readingOfPath(path);
  if (reading !== null) return readingField(reading.fret, reading.index);
  if (path.startsWith(STRINGS)) return ofStrings(project).find((row) => row.path === path) ?? null;
  if (path.startsWith(OWN)) return ownCompensation(project, path.slice(OWN.length));
  return SHAPE_PARAMETERS[project.bridge.outline.shape].find((row) => row.path === path) ?? null;
};

/** Rows of readings that have no box in every project: other frets, and more to the 12th. */
const otherReadings = ({ instrument }: Project): readonly Field[] => {
  const counts = new Map<number, number>();
  return instrument.scale.readings.flatMap(({ fret }) => {
    const index = counts.get(fret) ?? 0;
    counts.set(fret, index + 1);
    const row = readingField(fret, index);
    return BY_PATH.has(row.path) ? [] : [row];
  });
};

/** Every field that this project has, fixed rows, readings, shape dimensions and own compensation alike. */
export const allFields = (project: Project): readonly Field[] => [
  ...FIELDS.measure,
  ...FIELDS.draw,
  ...SHAPE_PARAMETERS[project.bridge.outline.shape],
  ...otherReadings(project),
  ...ofStrings(project),
  ...project.strings.flatMap(({ id }) => ownCompensation(project, id) ?? []),
];
