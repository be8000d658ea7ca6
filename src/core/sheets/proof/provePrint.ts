import { ok, type Result } from '../../result';
import type { ProofLines } from './proofLines';
import type { ProofPart } from './proofPart';
import { READING_RULES, type ReadingRule } from './readingRules';
import { solvePrintFactor } from './solvePrintFactor';
import type { PrintFactor, PrintReading } from './types';

/** What was read on a print, mm, and what it is held against. */
export interface ProofReading {
  readonly lines: ProofLines;
  readonly across: number;
  readonly along: number;
  /** Of the square: from the top left corner down, and from the bottom left corner up; null when they were not read. */
  readonly diagonals: { readonly down: number; readonly up: number } | null;
  /** Of one reading. */
  readonly sigma: number;
  /** null where there is no bridge: then a usual one counts. */
  readonly part: ProofPart | null;
}

/** What a maker is told of a print. */
export interface PrintProof extends PrintFactor {
  /** What the print alone would cost at the 12th fret if the break point were set off by it: + sharp; null without a bridge. */
  readonly cents: number | null;
  /** The rules that would tell for sure, when these readings do not. */
  readonly wouldTell: readonly ReadingRule[];
}

const readingOf = ({ lines, across, along, diagonals, sigma, part }: ProofReading): PrintReading => ({
  nominalX: lines.across,
  nominalY: lines.along,
  readX: across,
  readY: along,
  sigma,
  ...(diagonals === null ? {} : { diagonals: { nominal: lines.diagonal, a: diagonals.down, b: diagonals.up } }),
  ...(part === null ? {} : { part: { x: part.across, y: part.along } }),
});

/** Whether a print is true, for this bridge and this rule. A string that breaks farther back sounds flat. Codes: print.length. */
export const provePrint = (read: ProofReading): Result<PrintProof> => {
  const reading = readingOf(read);
  const found = solvePrintFactor(reading);
  if (!found.ok) return found;
  const { part, along, lines, sigma } = read;
  const tells = (rule: ReadingRule): boolean => {
    const finer = solvePrintFactor({ ...reading, sigma: rule.sigma });
    return finer.ok && finer.value.sure;
  };
  return ok({
    ...found.value,
    cents: part === null ? null : (1 - along / lines.along) * part.toBreak * part.centsPerMm,
    wouldTell: found.value.sure ? [] : READING_RULES.filter((rule) => rule.sigma < sigma && tells(rule)),
  });
};
