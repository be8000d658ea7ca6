import { writeTrueType } from './writeTrueType';

/** Flags of a component of a composite glyph. Source: OpenType, "glyf". */
const WORDS = 0x0001;
const SCALE = 0x0008;
const MORE = 0x0020;
const TWO_SCALES = 0x0040;
const FOUR_SCALES = 0x0080;

/** Tables that say the same of part of a font as of the whole. */
const KEPT = ['OS/2', 'head', 'hhea', 'maxp', 'post'] as const;

type Tables = ReadonlyMap<string, DataView>;

const tablesOf = (font: Uint8Array): Tables => {
  const view = new DataView(font.buffer, font.byteOffset, font.byteLength);
  return new Map(
    Array.from({ length: view.getUint16(4) }, (_, index) => {
      const record = 12 + 16 * index;
      const name = String.fromCharCode(...font.subarray(record, record + 4));
      const [from, length] = [view.getUint32(record + 8), view.getUint32(record + 12)];
      return [name, new DataView(font.buffer, font.byteOffset + from, length)];
    }),
  );
};

const tableNamed = (tables: Tables, name: string): DataView => {
  const table = tables.get(name);
  if (table === undefined) throw new RangeError(`subsetTrueType: the font has no table ${name}`);
  return table;
};

const bytesOf = ({ buffer, byteOffset, byteLength }: DataView): Uint8Array =>
  new Uint8Array(buffer as ArrayBuffer, byteOffset, byteLength);

/** Reads which glyph shows a character from a table of format 4, the one that every font has for the first plane. */
const glyphReader = (cmap: DataView): ((code: number) => number) => {
  const offsets = Array.from({ length: cmap.getUint16(2) }, (_, index) => cmap.getUint32(8 + 8 * index));
  const at = offsets.find((offset) => cmap.getUint16(offset) === 4);
  if (at === undefined) throw new RangeError('subsetTrueType: the font maps no characters by format 4');
  const twice = cmap.getUint16(at + 6);
  const [ends, starts, deltas, ranges] = [at + 14, at + 16 + twice, at + 16 + 2 * twice, at + 16 + 3 * twice];
  return (code) => {
    let segment = 0;
    while (segment < twice && cmap.getUint16(ends + segment) < code) segment += 2;
    if (segment === twice || cmap.getUint16(starts + segment) > code) return 0;
    const [delta, range] = [cmap.getUint16(deltas + segment), cmap.getUint16(ranges + segment)];
    if (range === 0) return (code + delta) & 0xffff;
    const glyph = cmap.getUint16(ranges + segment + range + 2 * (code - cmap.getUint16(starts + segment)));
    return glyph === 0 ? 0 : (glyph + delta) & 0xffff;
  };
};

/** Where the numbers of the glyphs stand that a composite glyph is made of; none for any other glyph. */
const componentPlaces = (outline: DataView): readonly number[] => {
  if (outline.byteLength === 0 || outline.getInt16(0) >= 0) return [];
  const places: number[] = [];
  let at = 10;
  for (let flags = MORE; (flags & MORE) !== 0; ) {
    flags = outline.getUint16(at);
    places.push(at + 2);
    at += flags & WORDS ? 8 : 6;
    at += flags & SCALE ? 2 : flags & TWO_SCALES ? 4 : flags & FOUR_SCALES ? 8 : 0;
  }
  return places;
};

/**
 * A TrueType font with the glyphs of these characters alone, numbered anew without gaps, the missing glyph first; a
 * tenth of the whole to be read and written into a file. Characters that the font lacks are left out. The names of the
 * font are left out too, but for the one that says whose it is.
 *
 * @throws RangeError when the font is not whole, see `isWholeTrueType`, or lacks a table
 */
export function subsetTrueType(font: Uint8Array, characters: string): Uint8Array {
  const tables = tablesOf(font);
  const [head, loca, glyf] = [tableNamed(tables, 'head'), tableNamed(tables, 'loca'), tableNamed(tables, 'glyf')];
  const offset = (glyph: number): number =>
    head.getInt16(50) === 0 ? 2 * loca.getUint16(2 * glyph) : loca.getUint32(4 * glyph);
  const outlineOf = (glyph: number): DataView =>
    new DataView(glyf.buffer, glyf.byteOffset + offset(glyph), offset(glyph + 1) - offset(glyph));

  const glyphOf = glyphReader(tableNamed(tables, 'cmap'));
  const codes = [...new Set(Array.from(characters, (character) => character.codePointAt(0) ?? 0))];
  const shown = codes
    .filter((code) => code <= 0xffff && glyphOf(code) !== 0)
    .sort((one, other) => one - other)
    .map((code) => ({ code, glyph: glyphOf(code) }));
  // A set grows while it is walked through, so that components of components are taken as well.
  const taken = new Set([0, ...shown.map(({ glyph }) => glyph)]);
  for (const glyph of taken) {
    const outline = outlineOf(glyph);
    for (const place of componentPlaces(outline)) taken.add(outline.getUint16(place));
  }
  const numbers = new Map([...taken].map((glyph, index) => [glyph, index]));
  const outlines = [...taken].map((glyph) => {
    const copy = bytesOf(outlineOf(glyph)).slice();
    const view = new DataView(copy.buffer);
    for (const place of componentPlaces(view)) view.setUint16(place, numbers.get(view.getUint16(place)) ?? 0);
    return copy;
  });

  const [hmtx, hhea] = [tableNamed(tables, 'hmtx'), tableNamed(tables, 'hhea')];
  const lastMetric = hhea.getUint16(34) - 1;
  const metrics = [...taken].map((glyph) => ({
    advance: hmtx.getUint16(4 * Math.min(glyph, lastMetric)),
    bearing: hmtx.getInt16(glyph <= lastMetric ? 4 * glyph + 2 : 4 * (lastMetric + 1) + 2 * (glyph - lastMetric - 1)),
  }));
  return writeTrueType({
    kept: new Map(KEPT.map((name) => [name, bytesOf(tableNamed(tables, name)).slice()])),
    outlines,
    metrics,
    characters: shown.map(({ code, glyph }) => ({ code, glyph: numbers.get(glyph) ?? 0 })),
  });
}
