import type { Result } from '../../../src/core/result';

/** The value of a result that must be there. */
export const unwrap = <T>(result: Result<T>): T => {
  if (!result.ok) throw new Error(result.issues.map(({ path, message }) => `${path}: ${message}`).join('\n'));
  return result.value;
};
