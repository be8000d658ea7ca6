import { fail, ok, type Result } from '../../core/result';

/** The longer side of a kept photo, pixels, and how well it is kept. */
const LONGEST_SIDE = 1600;
const QUALITY = 0.82;
const MOST_BYTES = 30_000_000;

const STARTS: readonly (readonly number[])[] = [
  [0xff, 0xd8, 0xff],
  [0x89, 0x50, 0x4e, 0x47],
  // RIFF, as WebP begins.
  [0x52, 0x49, 0x46, 0x46],
];

const isPicture = (bytes: Uint8Array): boolean =>
  STARTS.some((start) => start.every((byte, index) => bytes[index] === byte)) ||
  // HEIC and AVIF: "ftyp" from the fifth byte on.
  new TextDecoder('latin1').decode(bytes.subarray(4, 8)) === 'ftyp';

/**
 * A photo made small and painted anew, so that nothing of what its camera noted of time and place goes with it. Codes:
 * picture.large, picture.kind.
 */
export const shrinkPicture = async (bytes: Uint8Array): Promise<Result<Blob>> => {
  const kind = (): Result<Blob> =>
    fail('', 'picture.kind', 'Expected a photo that this browser can show: JPEG, PNG or WebP.');
  if (bytes.length > MOST_BYTES) return fail('', 'picture.large', 'Expected a photo of up to 30 MB.');
  if (!isPicture(bytes)) return kind();
  try {
    const bitmap = await createImageBitmap(new Blob([new Uint8Array(bytes)]));
    const scale = Math.min(1, LONGEST_SIDE / Math.max(bitmap.width, bitmap.height));
    const canvas = new OffscreenCanvas(
      Math.max(1, Math.round(bitmap.width * scale)),
      Math.max(1, Math.round(bitmap.height * scale)),
    );
    canvas.getContext('2d')?.drawImage(bitmap, 0, 0, canvas.width, canvas.height);
    bitmap.close();
    return ok(await canvas.convertToBlob({ type: 'image/jpeg', quality: QUALITY }));
  } catch {
    return kind();
  }
};
