import { fail, ok, type Result } from '../core/result';
import { quoted } from './quoted';

/** What the value of a file may hold at most. A large project has some 30,000 values; common practice, no source. */
const MOST = {
  /** Groups and lists within one another. */
  depth: 30,
  /** Values of one group or list: as many segments as an outline may have. */
  together: 4000,
  /** Values in all. */
  values: 200_000,
} as const;

/** Keys that could reach an object's prototype. */
const FORBIDDEN_KEYS: readonly string[] = ['__proto__', 'constructor', 'prototype'];

/**
 * Holds what was read from a file against what can be worked through at all, before its meaning is looked at. Codes:
 * file.damaged (nested too deep, too much of it, or a key that could reach an object's prototype).
 */
export const checkBulk = (value: unknown): Result<null> => {
  const damaged = (why: string): Result<null> => fail('', 'file.damaged', `The file is damaged: ${why}`);
  const open: { readonly group: object; readonly name: string; readonly depth: number }[] = [];
  const take = (inner: unknown, name: string, depth: number): void => {
    if (typeof inner === 'object' && inner !== null) open.push({ group: inner, name, depth });
  };
  take(value, '', 1);
  let count = 0;
  for (let next = open.pop(); next !== undefined; next = open.pop()) {
    const { group, name, depth } = next;
    if (depth > MOST.depth) return damaged(`its values are nested more than ${MOST.depth} deep.`);
    const size = Array.isArray(group) ? group.length : Object.keys(group).length;
    count += size;
    if (size > MOST.together)
      return damaged(`${name === '' ? 'a list' : quoted(name)} has ${size} values, expected at most ${MOST.together}.`);
    if (count > MOST.values) return damaged(`it has more than ${MOST.values} values.`);
    for (const [key, inner] of Object.entries(group)) {
      if (FORBIDDEN_KEYS.includes(key))
        return fail(key, 'file.damaged', `The file is damaged: it holds the key "${key}".`);
      take(inner, Array.isArray(group) ? name : key, depth + 1);
    }
  }
  return ok(null);
};
