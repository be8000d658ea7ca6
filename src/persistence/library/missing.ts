import { fail, type Result } from '../../core/result';

/** What was asked for is not there. */
export const missing = (): Result<never> => fail('', 'library.missing', 'It is not in the library any more.');
