import { FIELDS } from './fieldTable';
import type { Field } from './fieldTypes';
import { SHAPE_PARAMETERS } from './shapeParameters';
import type { Project } from './types';

const BY_PATH: ReadonlyMap<string, Field> = new Map(
  [...FIELDS.measure, ...FIELDS.draw].map((field) => [field.path, field]),
);

const OWN = 'compensation.own.';

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
    help: 'How far behind the octave line this string breaks over the saddle.',
  };
};

/** The row of the field table for a path in this project; null when there is no such field. */
export const fieldAt = (project: Project, path: string): Field | null => {
  const fixed = BY_PATH.get(path);
  if (fixed !== undefined) return fixed;
  if (path.startsWith(OWN)) return ownCompensation(project, path.slice(OWN.length));
  return SHAPE_PARAMETERS[project.bridge.outline.shape].find((row) => row.path === path) ?? null;
};

/** Every field that this project has, fixed rows, shape dimensions and own compensation alike. */
export const allFields = (project: Project): readonly Field[] => [
  ...FIELDS.measure,
  ...FIELDS.draw,
  ...SHAPE_PARAMETERS[project.bridge.outline.shape],
  ...project.strings.flatMap(({ id }) => ownCompensation(project, id) ?? []),
];
