import { inflateSync } from 'node:zlib';
import { chunksOf } from './pngChunks';

/** Pixels of a PNG of 8 bits a channel, with colour and opacity: four bytes each, row by row from the top left. */
export interface PngPixels {
  readonly width: number;
  readonly height: number;
  readonly rgba: Uint8Array;
}

/** Nearest of left, above and upper left to left + above − upper left (PNG, third edition, 9.4). */
const paeth = (left: number, above: number, corner: number): number => {
  const guess = left + above - corner;
  const [a, b, c] = [left, above, corner].map((value) => Math.abs(guess - value)) as [number, number, number];
  if (a <= b && a <= c) return left;
  return b <= c ? above : corner;
};

/** Decodes by hand after the PNG specification; pictures that are not in rows of RGB or RGBA are refused. */
export const pngPixels = (bytes: Uint8Array): PngPixels => {
  const chunks = chunksOf(bytes);
  const header = chunks[0]?.data ?? Buffer.alloc(13);
  const [width, height] = [header.readUInt32BE(0), header.readUInt32BE(4)];
  const channels = { 2: 3, 6: 4 }[header[9] ?? 0];
  if (header[8] !== 8 || channels === undefined || header[12] !== 0)
    throw new Error('expected 8 bits a channel, RGB or RGBA, not interlaced');
  const packed = inflateSync(Buffer.concat(chunks.filter(({ type }) => type === 'IDAT').map(({ data }) => data)));
  const stride = width * channels;
  const rgba = new Uint8Array(width * height * 4).fill(255);
  let before = new Uint8Array(stride);
  for (let row = 0; row < height; row++) {
    const filter = packed[row * (stride + 1)];
    const line = Uint8Array.from(packed.subarray(row * (stride + 1) + 1, (row + 1) * (stride + 1)));
    for (let at = 0; at < stride; at++) {
      const left = at >= channels ? (line[at - channels] ?? 0) : 0;
      const above = before[at] ?? 0;
      const corner = at >= channels ? (before[at - channels] ?? 0) : 0;
      const guess = [0, left, above, (left + above) >> 1, paeth(left, above, corner)][filter ?? 0] ?? Number.NaN;
      line[at] = ((line[at] ?? 0) + guess) & 255;
    }
    for (let pixel = 0; pixel < width; pixel++)
      for (let channel = 0; channel < channels; channel++)
        rgba[(row * width + pixel) * 4 + channel] = line[pixel * channels + channel] ?? 0;
    before = line;
  }
  return { width, height, rgba };
};
