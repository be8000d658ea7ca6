/**
 * Makes the printed font: cuts DejaVu Sans Condensed, regular and bold, down to the characters below, writes both cuts
 * with their licence to public/fonts, and writes their advance widths to src/core/text/advances.ts. Run by hand when
 * the list of characters changes: node test/run/makeFont.mjs
 */
import { mkdir, readFile, writeFile } from 'node:fs/promises';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { jsPDF } from 'jspdf';
// @ts-expect-error subset-font brings no types
import subsetFont from 'subset-font';

const root = fileURLToPath(new URL('../..', import.meta.url));
const source = path.dirname(fileURLToPath(import.meta.resolve('dejavu-fonts-ttf/package.json')));
const cuts = { regular: 'DejaVuSansCondensed.ttf', bold: 'DejaVuSansCondensed-Bold.ttf' };

/** Unicode blocks, first and last code point: Basic Latin, Latin-1, Latin Extended-A and -B, Greek, Cyrillic. */
const blocks = [
  [0x20, 0x7e],
  [0xa0, 0x24f],
  [0x370, 0x3ff],
  [0x400, 0x4ff],
];
const signs = '″′×±⌀≤≥♯♭½¼¾⅛⅜⅝⅞⅓⅔□☐°·–—…→↑↓←−²³µ€√≈✓‘’‚“”„‹›';

/** Licence names stay in the font: 13 is the licence, 14 its address. */
const licenceNames = [13, 14];

const wanted = [
  ...blocks.flatMap(([first = 0, last = 0]) => Array.from({ length: last - first + 1 }, (_, index) => first + index)),
  ...Array.from(signs, (sign) => sign.codePointAt(0) ?? 0),
];

/**
 * Reads a font by the same reader that sets it into the PDF. The reader is public but has no types.
 * @param {Uint8Array} bytes
 * @returns {{ cmap: { unicode: { codeMap: Record<number, number> } }, head: { unitsPerEm: number }, hmtx: { forGlyph(glyph: number): { advance: number } } }}
 */
const openFont = (bytes) => /** @type {any} */ (jsPDF.API).TTFFont.open(bytes);

/** @param {string} file @param {readonly number[]} codes */
const cutDown = async (file, codes) =>
  subsetFont(await readFile(path.join(source, 'ttf', file)), String.fromCodePoint(...codes), {
    targetFormat: 'truetype',
    preserveNameIds: licenceNames,
    keepFeatures: [],
    noLayoutClosure: true,
    noHinting: true,
    dropTables: ['GPOS', 'GSUB', 'GDEF', 'kern', 'gasp', 'FFTM', 'MATH'],
  });

/** Runs of neighbouring code points, each as its first and how many. @param {readonly number[]} codes */
const runsOf = (codes) =>
  codes.reduce((/** @type {[number, number][]} */ runs, code) => {
    const last = runs.at(-1);
    if (last && last[0] + last[1] === code) last[1] += 1;
    else runs.push([code, 1]);
    return runs;
  }, []);

/** The different widths of a cut, then for each character two base-36 digits: which of them it has. @param {readonly number[]} widths */
const pack = (widths) => {
  const different = [...new Set(widths)].sort((a, b) => a - b);
  const digits = widths.map((width) => different.indexOf(width).toString(36).padStart(2, '0'));
  return { different, digits: digits.join('') };
};

const originals = await Promise.all(
  Object.values(cuts).map(async (file) => openFont(await readFile(path.join(source, 'ttf', file)))),
);
const codes = [...new Set(wanted)]
  .filter((code) => originals.every((font) => font.cmap.unicode.codeMap[code]))
  .sort((a, b) => a - b);
const absent = Array.from(signs).filter((sign) => !codes.includes(sign.codePointAt(0) ?? 0));
if (absent.length > 0) throw new Error(`DejaVu Sans Condensed lacks ${absent.join(' ')}`);

await mkdir(path.join(root, 'public/fonts'), { recursive: true });
const packed = [];
let unitsPerEm = 0;
for (const file of Object.values(cuts)) {
  const bytes = await cutDown(file, codes);
  await writeFile(path.join(root, 'public/fonts', file), bytes);
  const font = openFont(bytes);
  unitsPerEm = font.head.unitsPerEm;
  packed.push(pack(codes.map((code) => font.hmtx.forGlyph(font.cmap.unicode.codeMap[code] ?? 0).advance)));
}
await writeFile(path.join(root, 'public/fonts/LICENSE'), await readFile(path.join(source, 'LICENSE')));

const [regular, bold] = packed;
if (!regular || !bold) throw new Error('expected a regular and a bold cut');
/** @param {{ different: number[], digits: string }} cut */
const asSource = (cut) => `{
  different:
    '${cut.different.join(' ')}',
  digits:
    '${cut.digits}',
}`;
await writeFile(
  path.join(root, 'src/core/text/advances.ts'),
  `/** Made by test/run/makeFont.mjs from DejaVu Sans Condensed; not written by hand. */

/** Font units in an em. */
export const UNITS_PER_EM = ${unitsPerEm};

/** Characters that both cuts have: pairs of first code point and how many follow one another from there. */
export const CHARACTER_RUNS =
  '${runsOf(codes).flat().join(' ')}';

/** Advance widths of a cut, font units: the different ones, and for each character in order two base-36 digits that say which. */
export interface PackedAdvances {
  readonly different: string;
  readonly digits: string;
}

export const REGULAR_ADVANCES: PackedAdvances = ${asSource(regular)};

export const BOLD_ADVANCES: PackedAdvances = ${asSource(bold)};
`,
);
process.stdout.write(`${codes.length} characters in each cut\n`);
