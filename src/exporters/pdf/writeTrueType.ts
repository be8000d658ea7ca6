/** What a TrueType file is made of, its glyphs in the order of their numbers. Lengths in font units. */
export interface TrueTypeContent {
  /** Bytes of the tables OS/2, head, hhea, maxp and post; counts of glyphs in them are set here. */
  readonly kept: ReadonlyMap<string, Uint8Array>;
  readonly outlines: readonly Uint8Array[];
  readonly metrics: readonly { readonly advance: number; readonly bearing: number }[];
  /** In growing order of their codes, all below 0xffff. */
  readonly characters: readonly { readonly code: number; readonly glyph: number }[];
}

const words = (...values: readonly number[]): Uint8Array => {
  const bytes = new Uint8Array(2 * values.length);
  const view = new DataView(bytes.buffer);
  for (const [index, value] of values.entries()) view.setUint16(2 * index, value & 0xffff);
  return bytes;
};

/** Tables begin at whole four bytes. */
const padded = (length: number): number => (length + 3) & ~3;

const joined = (pieces: readonly Uint8Array[], total: number): Uint8Array => {
  const bytes = new Uint8Array(total);
  let at = 0;
  for (const piece of pieces) {
    bytes.set(piece, at);
    at += piece.length;
  }
  return bytes;
};

const lengthOf = (pieces: readonly Uint8Array[]): number => pieces.reduce((sum, { length }) => sum + length, 0);

interface Run {
  readonly first: number;
  readonly last: number;
  readonly glyph: number;
}

/** Characters that follow one another as their glyphs do. */
const runsOf = (characters: TrueTypeContent['characters']): readonly Run[] => {
  const runs: Run[] = [];
  for (const { code, glyph } of characters) {
    const run = runs.at(-1);
    if (run !== undefined && run.last + 1 === code && run.glyph + code - run.first === glyph)
      runs.splice(-1, 1, { ...run, last: code });
    else runs.push({ first: code, last: code, glyph });
  }
  return runs;
};

/** Characters to glyphs, format 4: one segment a run, and the closing one. */
const characterTable = (characters: TrueTypeContent['characters']): Uint8Array => {
  const runs = [...runsOf(characters), { first: 0xffff, last: 0xffff, glyph: 0 }];
  const count = runs.length;
  const power = 2 ** Math.floor(Math.log2(count));
  const search = [2 * count, 2 * power, Math.log2(power), 2 * (count - power)];
  const ends = runs.map(({ last }) => last);
  const starts = runs.map(({ first }) => first);
  const deltas = runs.map(({ first, glyph }) => glyph - first);
  const segments = [...ends, 0, ...starts, ...deltas, ...runs.map(() => 0)];
  return words(0, 1, 3, 1, 0, 12, 4, 16 + 8 * count, 0, ...search, ...segments);
};

/** One name, the PostScript name of Unicode's platform, empty: readers expect that there is one. */
const NAMES = words(0, 1, 18, 3, 1, 0x409, 6, 0, 0);

const changed = (bytes: Uint8Array, at: number, value: number): Uint8Array => {
  const copy = bytes.slice();
  new DataView(copy.buffer).setUint16(at, value);
  return copy;
};

/** A TrueType file of these glyphs. Sums of its tables are left at 0; nobody adds them up in an embedded font. */
export function writeTrueType({ kept, outlines, metrics, characters }: TrueTypeContent): Uint8Array {
  const offsets = new DataView(new ArrayBuffer(4 * (outlines.length + 1)));
  outlines.reduce((at, { length }, index) => {
    offsets.setUint32(4 * (index + 1), at + length);
    return at + length;
  }, 0);
  const table = (name: string): Uint8Array => kept.get(name) ?? new Uint8Array();
  const tables: readonly (readonly [string, Uint8Array])[] = [
    ['OS/2', table('OS/2')],
    ['cmap', characterTable(characters)],
    ['glyf', joined(outlines, lengthOf(outlines))],
    ['head', changed(table('head'), 50, 1)],
    ['hhea', changed(table('hhea'), 34, metrics.length)],
    ['hmtx', words(...metrics.flatMap(({ advance, bearing }) => [advance, bearing]))],
    ['loca', new Uint8Array(offsets.buffer)],
    ['maxp', changed(table('maxp'), 4, outlines.length)],
    ['name', NAMES],
    ['post', table('post')],
  ];
  const directory = new DataView(new ArrayBuffer(12 + 16 * tables.length));
  directory.setUint32(0, 0x00010000);
  directory.setUint16(4, tables.length);
  let at = directory.byteLength;
  for (const [index, [name, { length }]] of tables.entries()) {
    const record = 12 + 16 * index;
    for (let letter = 0; letter < 4; letter += 1) directory.setUint8(record + letter, name.charCodeAt(letter));
    directory.setUint32(record + 8, at);
    directory.setUint32(record + 12, length);
    at += padded(length);
  }
  const pieces = tables.flatMap(([, bytes]) => [bytes, new Uint8Array(padded(bytes.length) - bytes.length)]);
  return joined([new Uint8Array(directory.buffer), ...pieces], at);
}
