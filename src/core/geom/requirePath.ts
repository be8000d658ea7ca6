import type { Path } from './types';
import { validatePath } from './validatePath';

/** Paths that were found valid: they never change, and several functions ask about the same one. */
const valid = new WeakSet<Path>();

/**
 * The path itself, for functions that cannot answer for a bad one.
 *
 * @throws RangeError naming the first thing wrong with it, as validatePath finds it
 */
export function requirePath(path: Path): Path {
  if (valid.has(path)) return path;
  const checked = validatePath(path);
  if (!checked.ok) {
    const [first] = checked.issues;
    throw new RangeError(`Path, ${first?.path}: ${first?.message}`);
  }
  valid.add(path);
  return path;
}
