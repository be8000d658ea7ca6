import type { Paper } from './types';

const INCH = 25.4;

/** Papers to print on. A4: ISO 216:2007. Letter: 8.5 × 11 in, ASME Y14.1 (from memory), 612 × 792 pt. */
export const PAPERS: readonly Paper[] = [
  { id: 'a4', name: 'A4', width: 210, height: 297 },
  { id: 'letter', name: 'Letter', width: 8.5 * INCH, height: 11 * INCH },
];

/** Larger papers that a print shop has, named to a maker whose bridge is too wide. Sources as above. */
export const LARGER_PAPERS: readonly Paper[] = [
  { id: 'legal', name: 'Legal', width: 8.5 * INCH, height: 14 * INCH },
  { id: 'tabloid', name: 'Tabloid', width: 11 * INCH, height: 17 * INCH },
  { id: 'a3', name: 'A3', width: 297, height: 420 },
];
