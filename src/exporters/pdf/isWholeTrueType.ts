/** Length of the head of a TrueType file, and of each record of its table directory, bytes. Source: OpenType, "Font file". */
const HEAD = 12;
const RECORD = 16;
/** A TrueType file opens with its version, 1.0. */
const VERSION = 0x00010000;

/** Whether these bytes are a TrueType file with every table that it names. jsPDF would set nonsense from half a font. */
export function isWholeTrueType(bytes: Uint8Array): boolean {
  if (bytes.length < HEAD) return false;
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const tables = view.getUint16(4);
  if (view.getUint32(0) !== VERSION || bytes.length < HEAD + RECORD * tables) return false;
  return Array.from({ length: tables }, (_, index) => HEAD + RECORD * index).every(
    (record) => view.getUint32(record + 8) + view.getUint32(record + 12) <= bytes.length,
  );
}
