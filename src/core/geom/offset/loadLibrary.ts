import { fail, ok, type Result } from '../../result';

type Library = typeof import('clipper2-ts');

/** The offset library, loaded when it is first asked for. Code: offset.notLoaded. */
export const loadLibrary = async (): Promise<Result<Library>> => {
  const library = await import('clipper2-ts').catch(() => null);
  return library === null
    ? fail('', 'offset.notLoaded', 'The part of the program that offsets outlines could not be loaded: try again.')
    : ok(library);
};
