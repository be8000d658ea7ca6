/** What went wrong, or may: `path` names the field ("strings.2.diameter"), `code` is stable, `message` is for people. */
export interface Issue {
  readonly path: string;
  readonly code: string;
  readonly severity: 'error' | 'warning';
  readonly message: string;
}

/** The answer, or every reason why there is none. Functions that return it never throw for bad input. */
export type Result<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly issues: readonly Issue[] };

/** A successful result. */
export const ok = <T>(value: T): Result<T> => ({ ok: true, value });

/** A failed result that carries all its issues. */
export const failed = <T>(issues: readonly Issue[]): Result<T> => ({ ok: false, issues });

/** One error. */
export const issue = (path: string, code: string, message: string): Issue => ({
  path,
  code,
  severity: 'error',
  message,
});

/** A failed result with one error. */
export const fail = <T>(path: string, code: string, message: string): Result<T> => failed([issue(path, code, message)]);
