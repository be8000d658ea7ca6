import type { DrawingScale, ImportedOutlines } from '../core/ports';
import { fail, type Result } from '../core/result';
import { decodeText } from './decodeText';
import { readDxf } from './dxf/readDxf';
import { IMPORT_LIMITS } from './importLimits';
import { offerOutlines } from './offerOutlines';
import { readSvg } from './svg/readSvg';

/** Pixels to an inch by CSS, for lengths with a unit inside of a file that is told in pixels while none was chosen. */
const CSS_DPI = 96;

const BINARY_DXF = 'AutoCAD Binary DXF';

/** Kinds of files by their first characters, for those that are not what was asked for. */
const OTHERS: readonly (readonly [mark: string, what: string])[] = [
  ['%PDF', 'a PDF'],
  ['\u0089PNG', 'a PNG picture'],
  ['\u00ff\u00d8', 'a JPEG picture'],
  ['GIF8', 'a GIF picture'],
  ['PK', 'a ZIP archive'],
  ['\u001f\u008b', 'compressed: unpack it first'],
  ['AC10', 'a DWG: save it as DXF'],
  ['%!PS', 'PostScript: save it as SVG'],
];

/** What the file is, told by what it begins with (a character a byte) and never by its name. */
const kindOf = (head: string): string => {
  if (head.startsWith(BINARY_DXF)) return 'a binary DXF: save it as text (ASCII) DXF';
  const other = OTHERS.find(([mark]) => head.startsWith(mark));
  if (other !== undefined) return other[1];
  const text = head.replace(/^[\u00ef\u00bb\u00bf\u00ff\u00fe\0\s]+/, '').replaceAll('\0', '');
  if (text.startsWith('<')) return 'svg';
  return /^(0\s*[\r\n]+\s*SECTION|999\s*[\r\n])/i.test(text) ? 'dxf' : 'neither';
};

/**
 * The outlines of an SVG or DXF file, mm. Nothing in the file is run or fetched.
 *
 * Codes: import.tooLarge, import.kind (not SVG or DXF), import.encoding, svg.damaged, svg.entity, svg.root, dxf.damaged,
 * import.tooMany, import.deep, import.empty, scale.longest.
 *
 * @param name of the file, for messages
 * @param file its bytes, or its text
 * @param scale what the maker says of its size
 */
export function readOutlines(name: string, file: Uint8Array | string, scale: DrawingScale): Result<ImportedOutlines> {
  const bytes = typeof file === 'string' ? new TextEncoder().encode(file) : file;
  if (bytes.length > IMPORT_LIMITS.fileSize) {
    const [size, most] = [(bytes.length / 1e6).toFixed(1), IMPORT_LIMITS.fileSize / 1e6];
    return fail(
      '',
      'import.tooLarge',
      `${name} has ${size} MB, expected at most ${most}. Save the bridge's outline alone.`,
    );
  }
  const kind = kindOf(String.fromCharCode(...bytes.subarray(0, 2000)));
  if (kind !== 'svg' && kind !== 'dxf')
    return fail('', 'import.kind', `Expected an SVG or a DXF file, and ${name} is ${kind}.`);
  const text = decodeText(bytes);
  if (!text.ok) return text;
  const dpi = scale.by === 'dpi' ? scale.dpi : CSS_DPI;
  const drawing = kind === 'svg' ? readSvg(text.value, dpi) : readDxf(text.value);
  return drawing.ok ? offerOutlines(drawing.value, scale) : drawing;
}
