import { readFileSync } from 'node:fs';

/** What the tests need of a TrueType file. */
export interface TrueType {
  readonly unitsPerEm: number;
  /** Characters that the font has, as code points, each with its glyph. */
  readonly glyphs: ReadonlyMap<number, number>;
  advance(glyph: number): number;
  /** Highest point of a glyph, font units. */
  top(glyph: number): number;
}

/** Reads a TrueType file by the OpenType specification: tables head, hhea, hmtx, loca, glyf and cmap format 4. */
export function readTrueType(file: URL): TrueType {
  const bytes = readFileSync(file);
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const tables = new Map<string, number>();
  for (let index = 0; index < view.getUint16(4); index += 1) {
    const record = 12 + 16 * index;
    tables.set(bytes.toString('latin1', record, record + 4), view.getUint32(record + 8));
  }
  const table = (tag: string): number => {
    const offset = tables.get(tag);
    if (offset === undefined) throw new Error(`the font has no table ${tag}`);
    return offset;
  };
  const metrics = view.getUint16(table('hhea') + 34);
  const longOffsets = view.getInt16(table('head') + 50) === 1;
  const location = (glyph: number) =>
    longOffsets ? view.getUint32(table('loca') + 4 * glyph) : 2 * view.getUint16(table('loca') + 2 * glyph);
  return {
    unitsPerEm: view.getUint16(table('head') + 18),
    glyphs: readCharacterMap(view, table('cmap')),
    advance: (glyph) => view.getUint16(table('hmtx') + 4 * Math.min(glyph, metrics - 1)),
    top: (glyph) => view.getInt16(table('glyf') + location(glyph) + 8),
  };
}

function readCharacterMap(view: DataView, cmap: number): ReadonlyMap<number, number> {
  const records = Array.from({ length: view.getUint16(cmap + 2) }, (_, index) => cmap + 4 + 8 * index);
  const map = records.map((record) => cmap + view.getUint32(record + 4)).find((start) => view.getUint16(start) === 4);
  if (map === undefined) throw new Error('the font has no character map of format 4');
  const twice = view.getUint16(map + 6);
  const glyphs = new Map<number, number>();
  for (let segment = 0; segment < twice; segment += 2) {
    const end = view.getUint16(map + 14 + segment);
    const start = view.getUint16(map + 16 + twice + segment);
    const delta = view.getUint16(map + 16 + 2 * twice + segment);
    const rangeAt = map + 16 + 3 * twice + segment;
    const range = view.getUint16(rangeAt);
    for (let code = start; code <= end && code !== 0xffff; code += 1) {
      const listed = range === 0 ? code : view.getUint16(rangeAt + range + 2 * (code - start));
      const glyph = range !== 0 && listed === 0 ? 0 : (listed + delta) % 0x10000;
      if (glyph !== 0) glyphs.set(code, glyph);
    }
  }
  return glyphs;
}
