import type { Paper } from './types';

const INCH = 25.4;

/**
 * Papers to print on, the smallest first. A series: ISO 216:2007. Letter, Legal, Tabloid and ANSI C, D, E: 8.5 × 11, 8.5 × 14,
 * 11 × 17, 17 × 22, 22 × 34 and 34 × 44 in, ASME Y14.1 and trade custom (from memory).
 */
export const PAPERS: readonly Paper[] = [
  { id: 'a4', name: 'A4', width: 210, height: 297 },
  { id: 'letter', name: 'Letter', width: 8.5 * INCH, height: 11 * INCH },
  { id: 'legal', name: 'Legal', width: 8.5 * INCH, height: 14 * INCH },
  { id: 'tabloid', name: 'Tabloid', width: 11 * INCH, height: 17 * INCH },
  { id: 'a3', name: 'A3', width: 297, height: 420 },
  { id: 'ansi-c', name: 'ANSI C', width: 17 * INCH, height: 22 * INCH },
  { id: 'a2', name: 'A2', width: 420, height: 594 },
  { id: 'ansi-d', name: 'ANSI D', width: 22 * INCH, height: 34 * INCH },
  { id: 'a1', name: 'A1', width: 594, height: 841 },
  { id: 'ansi-e', name: 'ANSI E', width: 34 * INCH, height: 44 * INCH },
  { id: 'a0', name: 'A0', width: 841, height: 1189 },
];

/** As many papers as a maker is told of who has to choose another. */
const MOST_NAMED = 3;

/** Names of the smallest usual papers that would do, for a maker whose sheet is too large; empty when none would. */
export const papersThatDo = (wouldDo: (paper: Paper) => boolean): string => {
  const names: string[] = [];
  for (const paper of PAPERS) {
    if (names.length < MOST_NAMED && wouldDo(paper)) names.push(paper.name);
  }
  return names.join(', ');
};

/** What a maker does whose sheet is too large: takes a paper that they own and that holds it, else one of the usual ones. */
export const paperRemedy = (owned: readonly Paper[], wouldDo: (paper: Paper) => boolean): string => {
  const held = owned.filter(wouldDo).map(({ name }) => name);
  if (held.length > 0) return `Of your papers ${held.join(' or ')} would do: choose it under Paper.`;
  const names = papersThatDo(wouldDo);
  return names === '' ? 'None of the usual papers would do.' : `These papers would do: ${names}.`;
};
