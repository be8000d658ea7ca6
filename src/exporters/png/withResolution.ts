import { MM_PER_INCH } from '../../core/units/mmPerInch';

/** What a PNG begins with, and the length of the first chunk, IHDR, with its frame (PNG, third edition, 5.2 and 11.2.1). */
const SIGNATURE = [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a];
const HEADER_END = SIGNATURE.length + 4 + 4 + 13 + 4;
/** pHYs: pixels to a unit across and down, four bytes each, and the unit: 1, the metre (11.3.4.3). */
const METRE = 1;

/** The CRC of a chunk's type and data (PNG, third edition, annex D). */
const crc = (bytes: Uint8Array): number => {
  let rest = 0xffffffff;
  for (const byte of bytes) {
    rest ^= byte;
    for (let bit = 0; bit < 8; bit++) rest = rest & 1 ? (rest >>> 1) ^ 0xedb88320 : rest >>> 1;
  }
  return (rest ^ 0xffffffff) >>> 0;
};

/**
 * A PNG that says how large it is: `dpi` pixels to an inch both ways, as whole pixels to a metre. `png` is one that a browser
 * wrote, which says nothing of its size.
 *
 * @throws RangeError when it is not a PNG
 */
export const withResolution = (png: Uint8Array, dpi: number): Uint8Array<ArrayBuffer> => {
  if (png.length < HEADER_END || SIGNATURE.some((byte, at) => png[at] !== byte))
    throw new RangeError('Expected a PNG.');
  const chunk = new Uint8Array(4 + 4 + 9 + 4);
  const view = new DataView(chunk.buffer);
  const perMetre = Math.round((dpi * 1000) / MM_PER_INCH);
  view.setUint32(0, 9);
  chunk.set(new TextEncoder().encode('pHYs'), 4);
  view.setUint32(8, perMetre);
  view.setUint32(12, perMetre);
  view.setUint8(16, METRE);
  view.setUint32(17, crc(chunk.subarray(4, 17)));
  const all = new Uint8Array(png.length + chunk.length);
  all.set(png.subarray(0, HEADER_END));
  all.set(chunk, HEADER_END);
  all.set(png.subarray(HEADER_END), HEADER_END + chunk.length);
  return all;
};
