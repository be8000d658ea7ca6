import { fail, ok, type Result } from '../../core/result';
import { MM_PER_INCH } from '../../core/units/mmPerInch';
import { IMPORT_LIMITS } from '../importLimits';
import { IDENTITY, type Matrix } from '../matrix';
import type { Drawing, FileSize } from '../types';
import { readSvgTree, type SvgElement } from './readSvgTree';
import { PAPER_UNITS, type SvgLength, svgLength } from './svgLength';
import { readViewBox, type Viewport, viewBoxMatrix } from './viewport';
import { walkSvg } from './walkSvg';

/** What the outermost svg says of its size, and the matrix from its units to those that `size` speaks of. */
interface Root {
  readonly size: FileSize;
  readonly matrix: Matrix;
  readonly viewport: Viewport;
}

/** A length of paper or pixels, above 0. */
const firm = (text: string | undefined): SvgLength | null => {
  const length = svgLength(text);
  const fits =
    length !== null && length.value > 0 && (length.unit in PAPER_UNITS || length.unit === '' || length.unit === 'px');
  return fits ? length : null;
};

const NOTHING = 'the file fits any size and says none';

/**
 * With a viewBox, a width or height on paper fixes the scale. One in pixels needs the pixels to an inch, also without a
 * viewBox, since programs differ in what a pixel is. Where there is neither, nothing says how large the drawing is.
 */
const rootOf = ({ attributes }: SvgElement, dpi: number): Root => {
  const [width, height] = [firm(attributes.get('width')), firm(attributes.get('height'))];
  const box = readViewBox(attributes.get('viewBox'));
  const one = width ?? height;
  const size = (known: FileSize, matrix: Matrix, viewport: Viewport): Root => ({ size: known, matrix, viewport });
  if (one === null) {
    const window = box ?? { width: 100, height: 100 };
    return size({ known: false, asks: 'size', words: NOTHING }, IDENTITY, window);
  }
  const pixels = [width, height].some((length) => length !== null && !(length.unit in PAPER_UNITS));
  const told = (width === null ? attributes.get('height') : attributes.get('width')) ?? '';
  const inMm = ({ value, unit }: SvgLength): number => value * (PAPER_UNITS[unit] ?? MM_PER_INCH / dpi);
  if (box === null) {
    const perPixel = MM_PER_INCH / dpi;
    const [across, down] = [inMm(width ?? one) / perPixel, inMm(height ?? one) / perPixel];
    const words = `the file is drawn in pixels (${told.trim().slice(0, 30)} wide, without a viewBox)`;
    return size({ known: false, asks: 'dpi', words }, IDENTITY, { width: across, height: down });
  }
  // A side that is not told follows the shape of the viewBox.
  const mm: Viewport = {
    width: width === null ? (inMm(one) * box.width) / box.height : inMm(width),
    height: height === null ? (inMm(one) * box.height) / box.width : inMm(height),
  };
  const perUnit = pixels ? MM_PER_INCH / dpi : 1;
  const window: Viewport = { width: mm.width / perUnit, height: mm.height / perUnit };
  const matrix = viewBoxMatrix(box, window, attributes.get('preserveAspectRatio'));
  const sides = [attributes.get('width'), attributes.get('height')]
    .map((side) => (side ?? '').trim().slice(0, 30))
    .join(' × ');
  if (pixels) return size({ known: false, asks: 'dpi', words: `the file is told in pixels (${sides})` }, matrix, box);
  return size({ known: true, perUnit: 1, words: `as the file says (${sides})` }, matrix, box);
};

/**
 * The paths of an SVG in mm or pixels. Codes: as readSvgTree.
 *
 * @param dpi pixels to an inch, for lengths on paper within a drawing in pixels
 */
export function readSvg(text: string, dpi: number): Result<Drawing> {
  const tree = readSvgTree(text);
  if (!tree.ok) return tree;
  const { size, matrix, viewport } = rootOf(tree.value, dpi);
  const { pieces, leftOut, excess } = walkSvg(tree.value, matrix, viewport, dpi);
  if (excess === 'depth')
    return fail(
      '',
      'import.deep',
      `The file nests elements more than ${IMPORT_LIMITS.depth} deep. Save the bridge's outline alone.`,
    );
  if (excess === 'elements')
    return fail('', 'import.tooMany', 'The file draws more than a bridge can need. Save its outline alone.');
  return ok({ kind: 'svg', pieces, size, leftOut });
}
