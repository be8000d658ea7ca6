import { allFields } from '../document/fieldAt';
import type { Field } from '../document/fieldTypes';
import { type FieldValue, fieldValue } from '../document/fieldValue';
import { SHAPE_NAMES } from '../document/shapeNames';
import type { Project, ShapeName } from '../document/types';
import type { Difference } from './difference';
import { particularOf, partOf } from './otherParticulars';
import { differingPaths, valueAtPath } from './valueAtPath';

/** What says which project it is and when it was changed, and not what it is like. */
const IDENTITY = /^(format|version|id|revision|about\.(created|changed|parent))(\.|$)/;
/** Readings are compared by their fields. */
const READINGS = /^instrument\.scale\.readings(\.|$)/;
/** A drawn one and one by a shape have nothing to compare one by one. */
const OUTLINE = 'bridge.outline';

/** The shortest path above this one that holds something in one project and nothing in the other; null when both have it. */
const onlyInOne = (one: Project, other: Project, path: string): string | null => {
  if (READINGS.test(path)) return null;
  if (path.startsWith(OUTLINE) && one.bridge.outline.kind !== other.bridge.outline.kind) return OUTLINE;
  const keys = path.split('.');
  for (let length = 1; length < keys.length; length += 1) {
    const start = keys.slice(0, length).join('.');
    const both = [one, other]
      .map((each) => valueAtPath(each, start))
      .map((value) => typeof value === 'object' && value !== null);
    if (both[0] !== both[1]) return start;
    if (both[0] === false) return null;
  }
  return null;
};

const inWords = (value: unknown): FieldValue => {
  if (value === null || value === undefined) return 'none';
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  if (typeof value === 'number' || typeof value === 'string') return value;
  if (Array.isArray(value)) return value.length === 0 ? 'none' : String(value.length);
  const { kind, shape, segments, name } = value as Readonly<Record<string, unknown>>;
  if (Array.isArray(segments)) return `${segments.length} nodes`;
  if (typeof shape === 'string') return SHAPE_NAMES[shape as ShapeName];
  if (kind === 'drawn') return 'drawn freely';
  return typeof name === 'string' && name !== '' ? name : 'there';
};

/** What has no field of its own, told as one by its name. */
const particular = (one: Project, other: Project, differing: string): Difference => {
  const { path, label } = particularOf(differing);
  const [mine, theirs] = [inWords(valueAtPath(one, path)), inWords(valueAtPath(other, path))];
  const told = { path, part: partOf(path), label, field: null };
  if (path === 'build' && (one.build === null) !== (other.build === null)) {
    const sort = ({ build }: Project): string => (build === null ? 'a model' : 'one instrument');
    return { ...told, one: sort(one), other: sort(other) };
  }
  return mine === theirs
    ? { ...told, one: mine, other: `${theirs}, but not the same` }
    : { ...told, one: mine, other: theirs };
};

/** Rows of both projects, each once; the first one's own order, then what only the other has. */
const bothFields = (one: Project, other: Project): readonly Field[] => {
  const rows = new Map<string, Field>();
  for (const field of [...allFields(one), ...allFields(other)]) if (!rows.has(field.path)) rows.set(field.path, field);
  return [...rows.values()];
};

/**
 * In what two projects differ: field by field, then what has no field of its own; a group that only one of them has is told
 * of as one. Ids, revisions and dates do not count. Empty when they are alike.
 */
export const compareProjects = (one: Project, other: Project): readonly Difference[] => {
  const found = new Map<string, Difference>();
  const tell = (difference: Difference): void => {
    if (!found.has(difference.path)) found.set(difference.path, difference);
  };
  const fields = bothFields(one, other);
  const paths = new Set(fields.map(({ path }) => path));
  for (const field of fields) {
    const { path, label } = field;
    const [mine, theirs] = [fieldValue(one, path), fieldValue(other, path)];
    if (Object.is(mine, theirs)) continue;
    const group = onlyInOne(one, other, path);
    if (group === null) tell({ path, part: partOf(path), label, field, one: mine, other: theirs });
    else tell(particular(one, other, group));
  }
  for (const path of differingPaths(one, other)) {
    if (paths.has(path) || IDENTITY.test(path) || READINGS.test(path)) continue;
    tell(particular(one, other, onlyInOne(one, other, path) ?? path));
  }
  return [...found.values()];
};
