/** A chunk of a PNG, read by hand after the PNG specification, third edition, 5.3. */
export interface PngChunk {
  readonly type: string;
  readonly data: Buffer;
  /** The CRC that stands in the file. */
  readonly check: number;
}

/** Every chunk of a PNG in its order. */
export const chunksOf = (bytes: Uint8Array): readonly PngChunk[] => {
  const file = Buffer.from(bytes);
  if (file.subarray(0, 8).toString('hex') !== '89504e470d0a1a0a') throw new Error('expected the signature of a PNG');
  const chunks: PngChunk[] = [];
  for (let at = 8; at < file.length; ) {
    const length = file.readUInt32BE(at);
    chunks.push({
      type: file.toString('latin1', at + 4, at + 8),
      data: file.subarray(at + 8, at + 8 + length),
      check: file.readUInt32BE(at + 8 + length),
    });
    at += length + 12;
  }
  return chunks;
};
