import { failed, type Issue, type Result } from '../result';

type Values<Parts extends readonly Result<unknown>[]> = {
  readonly [Index in keyof Parts]: Parts[Index] extends Result<infer Value> ? Value : never;
};

/** Works on the values of several parts when all of them are there; else fails with the reasons of those that are not. */
export const withAll = <Parts extends readonly Result<unknown>[], Answer>(
  parts: readonly [...Parts],
  work: (...values: Values<Parts>) => Result<Answer>,
): Result<Answer> => {
  const issues: readonly Issue[] = parts.flatMap((part) => (part.ok ? [] : part.issues));
  if (issues.length > 0) return failed(issues);
  return work(...(parts.map((part) => (part as { readonly value: unknown }).value) as unknown as Values<Parts>));
};
