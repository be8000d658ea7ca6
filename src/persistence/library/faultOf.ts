import { fail, type Result } from '../../core/result';

const nameOf = (error: unknown): string => (error instanceof Error || error instanceof DOMException ? error.name : '');

/** The connection broke, and another may do better. */
export const isBroken = (error: unknown): boolean =>
  ['InvalidStateError', 'AbortError', 'UnknownError', 'TransactionInactiveError', 'NotFoundError'].includes(
    nameOf(error),
  );

const WHERE_TO = 'Save your work to a file.';

/** What the browser refused, in words. Codes: library.full, library.newer, library.closed. */
export const faultOf = <Value>(error: unknown): Result<Value> => {
  const name = nameOf(error);
  if (name === 'QuotaExceededError')
    return fail('', 'library.full', `There is no room left for it in this browser. ${WHERE_TO} Then make room.`);
  if (name === 'VersionError')
    return fail('', 'library.newer', `A newer Saddlemark keeps the library here. ${WHERE_TO} Then reload the page.`);
  const said = error instanceof Error && error.message !== '' ? ` (${error.message})` : '';
  return fail('', 'library.closed', `This browser does not let the page keep anything${said}. ${WHERE_TO}`);
};
