import type { Bounds } from '../../core/geom/types';
import { fail, ok, type Result } from '../../core/result';
import { MM_PER_INCH } from '../../core/units/mmPerInch';

/** The longest side and the most pixels that current browsers all paint; from memory of their documentation. */
const LONGEST_SIDE = 16_384;
const MOST_PIXELS = 100_000_000;
const FINENESS = { least: 72, most: 1200 } as const;

/** Whole pixels across and down. */
export interface PictureSize {
  readonly width: number;
  readonly height: number;
}

/**
 * The pixels of a picture of `frame` (mm) at true size: mm × dpi / 25.4, rounded. Codes: picture.dpi (outside of 72 to 1200
 * pixels to an inch), picture.tooLarge (more than a browser paints).
 */
export const pictureSize = ({ minX, minY, maxX, maxY }: Bounds, dpi: number): Result<PictureSize> => {
  if (!(dpi >= FINENESS.least && dpi <= FINENESS.most))
    return fail('dpi', 'picture.dpi', `Expected ${FINENESS.least} to ${FINENESS.most} pixels to an inch, got ${dpi}.`);
  const [width, height] = [maxX - minX, maxY - minY].map((mm) => Math.round((mm * dpi) / MM_PER_INCH)) as [
    number,
    number,
  ];
  if (Math.max(width, height) > LONGEST_SIDE || width * height > MOST_PIXELS) {
    const size = `${width} × ${height} pixels`;
    return fail('dpi', 'picture.tooLarge', `At ${dpi} pixels to an inch the picture would have ${size}. Choose fewer.`);
  }
  return ok({ width, height });
};
