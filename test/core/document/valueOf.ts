import type { Result } from '../../../src/core/result';

/** The value of a result that has to be there. */
function answerOf<T>(result: Result<T>): T {
  if (!result.ok) throw new Error(result.issues.map(({ code, message }) => `${code}: ${message}`).join(' '));
  return result.value;
}

/** The codes of a result that has to fail. */
export function codesOf(result: Result<unknown>): readonly string[] {
  if (result.ok) throw new Error('Expected a failure.');
  return result.issues.map(({ code }) => code);
}

export { answerOf as valueOf };
