/**
 * Prints that came out wrong, as others reported them, in the lengths that a maker would type; `nominal` in the unit of the
 * readings. Factors by hand: nominal over read. Sources beside each.
 */
export const WRONG_PRINTS = [
  {
    source: 'github.com/linuxmint/xreader/issues/591, 91.8 read for 100',
    nominal: [100, 100],
    read: [91.8, 91.8],
    factor: [1.0893, 1.0893],
    verdict: 'reprint',
    says: 'Choose 100 %',
  },
  {
    source: 'the same report, both ways as read: 0.918 and 0.886',
    nominal: [100, 100],
    read: [91.8, 88.6],
    factor: [1.0893, 1.1287],
    verdict: 'refuse',
    says: '88.6 % along',
  },
  {
    source: 'github.com/mozilla/pdf.js/issues/11682, a remembered scale of 125 %',
    nominal: [100, 100],
    read: [125, 125],
    factor: [0.8, 0.8],
    verdict: 'refuse',
    says: 'remembered',
  },
  {
    source: 'github.com/lambdaloop/anipose/issues/45, 25 mm squares printed 28 mm',
    nominal: [100, 100],
    read: [112, 112],
    factor: [0.8929, 0.8929],
    verdict: 'refuse',
    says: '112.0 %',
  },
  {
    source: 'Letter fitted to A4: 210/215.9, hand arithmetic',
    nominal: [180, 180],
    read: [175.1, 175.1],
    factor: [1.028, 1.028],
    verdict: 'reprint',
    says: 'Letter page was fitted to A4',
  },
  {
    source: 'A4 fitted to Letter: 279.4/297, hand arithmetic',
    nominal: [180, 180],
    read: [169.3, 169.3],
    factor: [1.0632, 1.0632],
    verdict: 'reprint',
    says: 'A4 page was fitted to Letter',
  },
  {
    source: 'A4 shrunk to margins of 4.233 mm: 0.95968, hand arithmetic',
    nominal: [180, 260],
    read: [172.7, 249.5],
    factor: [1.0423, 1.0421],
    verdict: 'reprint',
    says: 'margins',
  },
  {
    source: '90 dots to the inch taken for 96: 0.9375',
    nominal: [160, 160],
    read: [150, 150],
    factor: [1.0667, 1.0667],
    verdict: 'reprint',
    says: '90 dots',
  },
  {
    source: 'sundial mailing list, a copier at “100 %”: 16 in came out 15.75',
    nominal: [406.4, 406.4],
    read: [400.05, 400.05],
    factor: [1.0159, 1.0159],
    verdict: 'reprint',
    says: 'copier',
  },
  {
    source: 'shrinkingquilters.blogspot.com, 29/32 of an inch',
    nominal: [25.4, 25.4],
    read: [23.01875, 23.01875],
    factor: [1.1034, 1.1034],
    verdict: 'reprint',
    says: '100 %',
  },
  {
    source: 'building-flamenco.blogspot.com, exact one way and 1/32 in short the other over 6 in',
    nominal: [152.4, 152.4],
    read: [151.60625, 152.4],
    factor: [1.0052, 1],
    verdict: 'correct',
    says: null,
  },
  {
    source: 'A4 fitted to Letter inside margins of a quarter inch: 266.7/297 = 0.89798, hand arithmetic',
    nominal: [180, 240],
    read: [161.6, 215.5],
    factor: [1.1139, 1.1137],
    verdict: 'refuse',
    says: 'quarter inch',
  },
  {
    source: 'github.com/mozilla/pdf.js/issues/6696, on its side and shrunk onto upright A4: 210/297',
    nominal: [260, 160],
    read: [183.8, 113.1],
    factor: [1.4146, 1.4147],
    verdict: 'refuse',
    says: 'A4 page that lies on its side',
  },
  {
    source: 'the same on Letter: 8.5/11 = 0.7727',
    nominal: [228.6, 152.4],
    read: [176.6, 117.8],
    factor: [1.2945, 1.2937],
    verdict: 'refuse',
    says: 'Letter page that lies on its side',
  },
  {
    source: 'github.com/mozilla/pdf.js/pull/7677, paper smaller than the page, A4 on Letter: 279.4/297',
    nominal: [180, 240],
    read: [169.3, 225.8],
    factor: [1.0632, 1.0629],
    verdict: 'reprint',
    says: 'A4 page was fitted to Letter',
  },
  {
    source: 'a true print',
    nominal: [180, 260],
    read: [180.1, 260.1],
    factor: [0.9994, 0.9996],
    verdict: 'true',
    says: null,
  },
] as const;

/** A square of 100 sheared by 0.3°: diagonals 100·√(2 ± 2·sin 0.3°), hand arithmetic. */
export const SHEARED = { side: 100, degrees: 0.3, a: 141.791, b: 141.051 } as const;

/**
 * What a printed file must be like so that the failures that others met cannot happen to it, each with the report. Points: mm ·
 * 72/25.4. A square of 100 mm is 283.4646 pt, a paper's sides by ISO 216 and 8.5 × 11 in.
 */
export const FILE_FAILURES = {
  measure: 'github.com/sumatrapdfreader/sumatrapdf/issues/1178: the page itself must say what to measure',
  oneWay: 'github.com/mozilla/pdf.js/issues/6696, pull/13120: pages that lie another way were shrunk',
  dialog: 'github.com/jung-kurt/gofpdf/issues/151: the scale is only preset, so a scale stands on every page',
  realPaper: 'github.com/ShyftXero/ShaperPaper/issues/2: a page size that no paper has',
  fileIsRight: 'github.com/yWorks/svg2pdf.js/issues/104: the file must be right by itself',
  cropBox: 'github.com/tavinus/pdfScale/issues/52: a crop box made a page square',
  papers: { a4: [595.27559, 841.88976], letter: [612, 792] },
  square: 283.46457,
} as const;

/**
 * Of a page upright on A4: margins of 10, a strip of 10 at the left and of 20 at the foot leave 180 × 257: lines of 180 and 240 in
 * twenties. On its side 267 × 170: 260 and 160. With 15 of white all round A4 leaves 170 × 247: 160 and 240. Letter leaves 185.9 × 239.4: 7 in and 9 in. Diagonals 100·√2 and 4 in·√2.
 */
export const PROOF_LINES = [
  { page: [210, 297], unit: 'mm', margin: undefined, across: 180, along: 240, diagonal: 141.42136 },
  { page: [210, 297], unit: 'mm', margin: 15, across: 160, along: 240, diagonal: 141.42136 },
  { page: [297, 210], unit: 'mm', margin: undefined, across: 260, along: 160, diagonal: 141.42136 },
  { page: [215.9, 279.4], unit: 'in', margin: undefined, across: 177.8, along: 228.6, diagonal: 143.6841 },
] as const;

/**
 * The steel-string of `cards.ts`: bridge 152.4 wide; square line at 620, break point at 647.778125, front edge at 638.789082 and
 * the belly 34.925 behind it: 673.714082. 1731.234·d/645·(2 − 1) = 2.6841 cents for 1 mm at the 12th fret.
 */
export const PROOF_PART = { across: 152.4, along: 53.714082, toBreak: 27.778125, centsPerMm: 2.6841 } as const;
