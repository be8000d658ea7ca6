import type { Page } from '@playwright/test';

const twoBytes = (value: number): readonly number[] => [value & 255, value >> 8];
const fourBytes = (value: number): readonly number[] => [...twoBytes(value & 0xffff), ...twoBytes(value >>> 16)];

/** One entry of an image file directory: TIFF 6.0, section 2. */
const entry = (tag: number, type: number, count: number, value: readonly number[]): readonly number[] => [
  ...twoBytes(tag),
  ...twoBytes(type),
  ...fourBytes(count),
  ...value,
];

/**
 * An Exif segment that says where a photo was taken: 38° 42′ 36″ north. Layout: TIFF 6.0, section 2, little-endian; tags
 * 8825 (GPS directory), 1 (latitude reference) and 2 (latitude): Exif 2.32, 4.6.6, as remembered.
 */
const whereTaken = (): Buffer => {
  const directory = [...twoBytes(1), ...entry(0x8825, 4, 1, fourBytes(26)), ...fourBytes(0)];
  const place = [
    ...twoBytes(2),
    ...entry(1, 2, 2, [...Buffer.from('N'), 0, 0, 0]),
    ...entry(2, 5, 3, fourBytes(26 + 30)),
    ...fourBytes(0),
  ];
  const latitude = [38, 42, 36].flatMap((value) => [...fourBytes(value), ...fourBytes(1)]);
  const tiff = [...Buffer.from('II'), ...twoBytes(42), ...fourBytes(8), ...directory, ...place, ...latitude];
  const body = [...Buffer.from('Exif'), 0, 0, ...tiff];
  const size = body.length + 2;
  return Buffer.from([0xff, 0xe1, size >> 8, size & 255, ...body]);
};

/** A small photo, made by the browser, with the place where it was taken written into it. */
export const photoWithPlace = async (page: Page): Promise<Buffer> => {
  const bytes = await page.evaluate(async () => {
    const canvas = document.createElement('canvas');
    canvas.width = 320;
    canvas.height = 240;
    const brush = canvas.getContext('2d');
    if (brush === null) throw new Error('The browser draws nothing.');
    brush.fillStyle = '#a4693a';
    brush.fillRect(0, 0, 320, 240);
    const blob = await new Promise<Blob | null>((resolve) => canvas.toBlob(resolve, 'image/jpeg'));
    return [...new Uint8Array((await blob?.arrayBuffer()) ?? new ArrayBuffer(0))];
  });
  const plain = Buffer.from(bytes);
  // The segment comes right after the two bytes that begin every JPEG.
  return Buffer.concat([plain.subarray(0, 2), whereTaken(), plain.subarray(2)]);
};

/** The bytes of every photo that the library of this browser keeps, as text of one character a byte. */
export const keptPhotos = (page: Page): Promise<readonly string[]> =>
  page.evaluate(async () => {
    const settled = <Value>(request: IDBRequest<Value>): Promise<Value> =>
      new Promise((resolve, reject) => {
        request.onsuccess = () => resolve(request.result);
        request.onerror = () => reject(request.error);
      });
    const database = await settled(indexedDB.open('saddlemark'));
    const kept: readonly { bytes: ArrayBuffer }[] = await settled(
      database.transaction('pictures').objectStore('pictures').getAll(),
    );
    database.close();
    return kept.map(({ bytes }) => [...new Uint8Array(bytes)].map((byte) => String.fromCharCode(byte)).join(''));
  });
