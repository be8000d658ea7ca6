import type { Path } from './types';
import { validatePath } from './validatePath';

/**
 * The path itself, for functions that cannot answer for a bad one.
 *
 * @throws RangeError naming the first thing wrong with it, as validatePath finds it
 */
export function requirePath(path: Path): Path {
  const checked = validatePath(path);
  if (!checked.ok) {
    const [first] = checked.issues;
    throw new RangeError(`Path, ${first?.path}: ${first?.message}`);
  }
  return path;
}
