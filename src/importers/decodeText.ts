import { fail, ok, type Result } from '../core/result';

/** The encoding that an XML declaration names, from the first bytes read as Latin letters. */
const declared = (bytes: Uint8Array): string | undefined => {
  const head = new TextDecoder('latin1').decode(bytes.subarray(0, 200));
  return /^\s*<\?xml[^>]*?encoding\s*=\s*["']([\w.:-]+)["']/i.exec(head)?.[1];
};

const marked = ([one, two]: Uint8Array): string | undefined => {
  if (one === 0xff && two === 0xfe) return 'utf-16le';
  return one === 0xfe && two === 0xff ? 'utf-16be' : undefined;
};

const decode = (bytes: Uint8Array, label: string): string | undefined => {
  try {
    return new TextDecoder(label, { fatal: true }).decode(bytes);
  } catch {
    return undefined;
  }
};

/**
 * Bytes as text: by the mark at their start, by what an XML declaration says, else as UTF-8, and where that fails as
 * Windows-1252, which older programs write. Code import.encoding: the encoding that the file names does not fit it.
 */
export const decodeText = (bytes: Uint8Array): Result<string> => {
  const named = marked(bytes) ?? declared(bytes);
  const text = decode(bytes, named ?? 'utf-8') ?? (named === undefined ? decode(bytes, 'windows-1252') : undefined);
  if (text !== undefined) return ok(text);
  return fail(
    '',
    'import.encoding',
    `The file says that its text is ${named}, which its bytes are not. Save it again as UTF-8.`,
  );
};
