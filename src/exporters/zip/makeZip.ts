import { fail, ok, type Result } from '../../core/result';
import { crc32 } from './crc32';

/** A file in a zip file. */
export interface ZipMember {
  /** With its ending; letters of any alphabet, no folder. */
  readonly name: string;
  readonly bytes: Uint8Array;
}

/** Without the extensions for larger files, counts have two bytes and sizes four. */
const MOST_MEMBERS = 0xfffe;
const MOST_BYTES = 0xfffffffe;
/** Version 2.0 is needed to read, the name is UTF-8 (bit 11), members are stored as they are (method 0). */
const VERSION = 20;
const UTF8 = 0x0800;
const STORED = 0;
/** Zip files tell no date before 1980. */
const FIRST_YEAR = 1980;

/** A folder in a name, or the way out of one, is for no zip of ours. */
const PLAIN_NAME = /^(?!\.{1,2}$)[^/\\]{1,200}$/u;

const field = (width: 2 | 4, value: number): readonly number[] =>
  Array.from({ length: width }, (_, index) => (value >>> (8 * index)) & 0xff);

/** Numbers of two or four bytes, the lowest byte first. */
const record = (...fields: readonly (readonly [width: 2 | 4, value: number])[]): Uint8Array =>
  Uint8Array.from(fields.flatMap(([width, value]) => field(width, value)));

/** An ISO date as MS-DOS counts it: day, month, years since 1980. */
const dosDate = (date: string): number => {
  const [year = FIRST_YEAR, month = 1, day = 1] = date.split('-').map(Number);
  return (Math.max(0, year - FIRST_YEAR) << 9) | (month << 5) | day;
};

const joined = (pieces: readonly Uint8Array[]): Uint8Array => {
  const bytes = new Uint8Array(pieces.reduce((sum, { length }) => sum + length, 0));
  let at = 0;
  for (const piece of pieces) {
    bytes.set(piece, at);
    at += piece.length;
  }
  return bytes;
};

/**
 * Files as one zip file, stored as they are: a PDF is packed already. The same members make the same bytes. Source: PKWARE,
 * APPNOTE 6.3.10. Codes: zip.name (empty, too long, with a folder, or twice), zip.large (more than a plain zip file holds).
 *
 * @param date ISO date that each member carries
 */
export const makeZip = (members: readonly ZipMember[], date: string): Result<Uint8Array> => {
  const names = members.map(({ name }) => name);
  const wrong = names.find((name, index) => !PLAIN_NAME.test(name) || names.indexOf(name) !== index);
  if (wrong !== undefined) return fail('', 'zip.name', `Expected names of files, each once, got “${wrong}”.`);
  const size = members.reduce((sum, { bytes }) => sum + bytes.length + 400, 0);
  if (members.length > MOST_MEMBERS || size > MOST_BYTES)
    return fail('', 'zip.large', 'This is more than a zip file holds. Make fewer files at a time.');
  const local: Uint8Array[] = [];
  const central: Uint8Array[] = [];
  let at = 0;
  for (const { name, bytes } of members) {
    const named = new TextEncoder().encode(name);
    const told = [
      [2, VERSION],
      [2, UTF8],
      [2, STORED],
      [2, 0],
      [2, dosDate(date)],
      [4, crc32(bytes)],
      [4, bytes.length],
      [4, bytes.length],
      [2, named.length],
      [2, 0],
    ] as const;
    const head = record([4, 0x04034b50], ...told);
    local.push(head, named, bytes);
    central.push(record([4, 0x02014b50], [2, VERSION], ...told, [2, 0], [2, 0], [2, 0], [4, 0], [4, at]), named);
    at += head.length + named.length + bytes.length;
  }
  const directory = joined(central);
  const count = members.length;
  const end = record([4, 0x06054b50], [2, 0], [2, 0], [2, count], [2, count], [4, directory.length], [4, at], [2, 0]);
  return ok(joined([...local, directory, end]));
};
