import type { Project } from './types';

export type FieldValue = number | string | null;

type Tree = { readonly [key: string]: unknown } | readonly unknown[];

const isTree = (value: unknown): value is Tree => typeof value === 'object' && value !== null;

const child = (tree: unknown, key: string): unknown => {
  if (!isTree(tree) || !Object.hasOwn(tree, key)) return undefined;
  return (tree as Record<string, unknown>)[key];
};

const READING = /^instrument\.scale\.readings\.(\d)$/;

/** The value at a field's path; null where there is none (no pins, no such reading). */
export const fieldValue = (project: Project, path: string): FieldValue => {
  const reading = READING.exec(path);
  if (reading !== null) return project.instrument.scale.readings[Number(reading[1])]?.value ?? null;
  let at: unknown = project;
  for (const key of path.split('.')) at = child(at, key);
  return typeof at === 'number' || typeof at === 'string' ? at : null;
};

const withChild = (tree: unknown, keys: readonly string[], value: FieldValue): unknown => {
  const [key, ...rest] = keys;
  if (key === undefined) return value;
  if (!isTree(tree)) throw new RangeError(`There is nothing to hold "${keys.join('.')}".`);
  return { ...tree, [key]: withChild(child(tree, key), rest, value) };
};

const withReading = (project: Project, index: number, value: FieldValue): Project => {
  const { scale } = project.instrument;
  const values = scale.readings.map((reading) => reading.value as FieldValue);
  if (index < values.length) values[index] = value;
  else values.push(value);
  const readings = values.flatMap((each) => (typeof each === 'number' ? [{ fret: 12, value: each }] : []));
  const from = readings.length === 0 ? 'entered' : 'readings';
  return { ...project, instrument: { ...project.instrument, scale: { ...scale, readings, from } } };
};

/**
 * The project with another value at a field's path. Typing a reading makes the readings count, typing a scale length
 * sets them aside, typing a spacing makes it the maker's own. Throws RangeError when the path's group is absent.
 */
export const withFieldValue = (project: Project, path: string, value: FieldValue): Project => {
  const reading = READING.exec(path);
  if (reading !== null) return withReading(project, Number(reading[1]), value);
  const changed = withChild(project, path.split('.'), value) as Project;
  const { instrument } = changed;
  if (path === 'instrument.scale.entered')
    return { ...changed, instrument: { ...instrument, scale: { ...instrument.scale, from: 'entered' } } };
  if (path === 'instrument.spread.own')
    return { ...changed, instrument: { ...instrument, spread: { ...instrument.spread, from: 'own' } } };
  return changed;
};
