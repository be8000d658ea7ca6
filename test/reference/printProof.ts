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
