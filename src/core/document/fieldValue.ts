import { readingOfPath } from './readingFields';
import { noteSource } from './stringFields';
import type { Project } from './types';

export type FieldValue = number | string | null;

type Tree = { readonly [key: string]: unknown } | readonly unknown[];

const isTree = (value: unknown): value is Tree => typeof value === 'object' && value !== null;

const child = (tree: unknown, key: string): unknown => {
  if (!isTree(tree) || !Object.hasOwn(tree, key)) return undefined;
  return (tree as Record<string, unknown>)[key];
};

/** The value at a field's path; null where there is none (no pins, no such reading). */
export const fieldValue = (project: Project, path: string): FieldValue => {
  const reading = readingOfPath(path);
  if (reading !== null) return readingsTo(project, reading.fret)[reading.index] ?? null;
  let at: unknown = project;
  for (const key of path.split('.')) at = child(at, key);
  return typeof at === 'number' || typeof at === 'string' ? at : null;
};

/** Whether this project has what holds the value at a field's path: pins, for a bridge with pins. */
export const hasGroup = (project: Project, path: string): boolean => {
  let group: unknown = project;
  for (const key of path.split('.').slice(0, -1)) group = child(group, key);
  return isTree(group) || readingOfPath(path) !== null;
};

const withChild = (tree: unknown, keys: readonly string[], value: unknown): unknown => {
  const [key, ...rest] = keys;
  if (key === undefined) return value;
  if (!isTree(tree)) throw new RangeError(`There is nothing to hold "${keys.join('.')}".`);
  const grown = withChild(child(tree, key), rest, value);
  if (Array.isArray(tree)) return tree.map((each, index) => (String(index) === key ? grown : each));
  return { ...tree, [key]: grown };
};

/** Groups in which an absent figure takes the usual: an empty box takes the figure out. */
const OPEN_GROUPS = /^(compensation\.own|doubts|limits)\.[^.]+$/;

const without = (project: Project, path: string): Project => {
  const keys = path.split('.');
  const last = keys.pop() ?? '';
  let group: unknown = project;
  for (const key of keys) group = child(group, key);
  const kept = Object.entries(group as Readonly<Record<string, number>>).filter(([key]) => key !== last);
  return withChild(project, keys, Object.fromEntries(kept)) as Project;
};

const readingsTo = (project: Project, fret: number): readonly number[] =>
  project.instrument.scale.readings.flatMap((reading) => (reading.fret === fret ? [reading.value] : []));

const withReading = (project: Project, fret: number, index: number, value: FieldValue): Project => {
  const { scale } = project.instrument;
  const values: FieldValue[] = [...readingsTo(project, fret)];
  values.splice(Math.min(index, values.length), index < values.length ? 1 : 0, value);
  const changed = values.flatMap((each) => (typeof each === 'number' ? [{ fret, value: each }] : []));
  const readings = [...scale.readings.filter((reading) => reading.fret !== fret), ...changed].sort(
    (a, b) => a.fret - b.fret,
  );
  const from = readings.length === 0 ? 'entered' : 'readings';
  return { ...project, instrument: { ...project.instrument, scale: { ...scale, readings, from } } };
};

const FIGURE_OF_STRING = /^strings\.\d+\.(frequency|diameter|massPerLength|elastic\.\w+)$/;

/** A string whose figures are no longer its source's says so. */
const withOwnFigures = (project: Project, index: number): Project => ({
  ...project,
  strings: project.strings.map((string, place) =>
    place === index
      ? { ...string, source: noteSource('figures changed by the maker; before: ', string.source) }
      : string,
  ),
});

/**
 * The project with another value at a field's path. Typing a reading makes the readings count, typing a scale length
 * sets them aside, typing a spacing makes it the maker's own. Throws RangeError when the path's group is absent.
 */
export const withFieldValue = (project: Project, path: string, value: FieldValue): Project => {
  const reading = readingOfPath(path);
  if (reading !== null) return withReading(project, reading.fret, reading.index, value);
  if (value === null && OPEN_GROUPS.test(path)) return without(project, path);
  const changed = withChild(project, path.split('.'), value) as Project;
  if (FIGURE_OF_STRING.test(path)) return withOwnFigures(changed, Number(path.split('.')[1]));
  const { instrument } = changed;
  if (path === 'instrument.scale.entered')
    return { ...changed, instrument: { ...instrument, scale: { ...instrument.scale, from: 'entered' } } };
  if (path === 'instrument.spread.own')
    return { ...changed, instrument: { ...instrument, spread: { ...instrument.spread, from: 'own' } } };
  return changed;
};
