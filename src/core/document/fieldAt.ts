import { bodyFields } from './bodyFields';
import { bridgeGroupFields } from './bridgeGroupFields';
import { FIELDS } from './fieldTable';
import type { Field } from './fieldTypes';
import { finishFields, READ_OF_FINISH } from './finishFields';
import { firstFieldAt, ownCompensation } from './firstFields';
import { GLUE_FIELDS, glueFields } from './glueFields';
import { readingField } from './readingFields';
import { notesFields, serialFields, woodFields } from './recordFields';
import { repairFields } from './repairFields';
import { SHAPE_PARAMETERS } from './shapeParameters';
import { SOLE_FIELDS } from './soleFields';
import { stringFields } from './stringFields';
import type { Project } from './types';

const BY_PATH: ReadonlyMap<string, Field> = new Map(
  [...FIELDS.measure, ...FIELDS.draw, ...FIELDS.place, ...GLUE_FIELDS, ...READ_OF_FINISH].map((field) => [
    field.path,
    field,
  ]),
);

/** An outline that is drawn freely has no shape by name. */
const SHAPE_PATH = 'bridge.outline.shape';

const ofStrings = (project: Project): readonly Field[] => project.strings.flatMap(stringFields);

const ofShape = ({ bridge: { outline } }: Project): readonly Field[] =>
  outline.kind === 'drawn' ? [] : SHAPE_PARAMETERS[outline.shape];

const ofSole = ({ bridge: { sole } }: Project): readonly Field[] => (sole === null ? [] : SOLE_FIELDS);

/** Rows that depend on the project, by how their paths begin. */
const OF_PROJECT: readonly (readonly [string, (project: Project) => readonly Field[]])[] = [
  ['bridge.outline.', ofShape],
  ['strings.', ofStrings],
  ['bridge.sole.', ofSole],
  ['repair.', repairFields],
  ['body.', bodyFields],
  ['bridge.', bridgeGroupFields],
  ['about.notes', notesFields],
  ['build.serial', serialFields],
  ['build.woods.', woodFields],
  // Glue, air, grain, top and film: all rows but those of clamps and rebate stand above, since typing one begins its group.
  ['build.glue.', glueFields],
  ['build.rebate.', finishFields],
];

/** The row of the field table for a path in this project; null when there is no such field. */
export const fieldAt = (project: Project, path: string): Field | null => {
  const known = BY_PATH.get(path) ?? firstFieldAt(project, path);
  if (known !== null) return known;
  const rows = OF_PROJECT.find(([start]) => path.startsWith(start))?.[1](project) ?? [];
  return rows.find((row) => row.path === path) ?? null;
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
  ...FIELDS.draw.filter(({ path }) => path !== SHAPE_PATH || project.bridge.outline.kind !== 'drawn'),
  ...FIELDS.place,
  ...otherReadings(project),
  ...OF_PROJECT.flatMap(([, rows]) => rows(project)),
  ...project.strings.flatMap(({ id }) => ownCompensation(project, id) ?? []),
];
