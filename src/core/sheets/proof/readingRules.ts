import { RULE_DOUBT } from '../../instrument/ruleDoubt';
import { MM_PER_INCH } from '../../units/mmPerInch';

/** What a length on paper is read with, and how far one reading may be off. */
export interface ReadingRule {
  readonly id: string;
  readonly name: string;
  /** One sigma of one reading, mm. */
  readonly sigma: number;
  readonly source: string;
}

const HALF = 'half of the finest division: common practice, no source';

/** What makers read a print with, the coarsest first. */
export const READING_RULES: readonly ReadingRule[] = [
  { id: 'mm', name: 'steel rule, 1 mm', sigma: 0.5, source: HALF },
  { id: 'in-32', name: 'steel rule, 1/32 in', sigma: MM_PER_INCH / 64, source: HALF },
  { id: 'half-mm', name: 'steel rule, 0.5 mm', sigma: RULE_DOUBT, source: HALF },
  { id: 'in-64', name: 'steel rule, 1/64 in', sigma: MM_PER_INCH / 128, source: HALF },
  {
    id: 'glass',
    name: '0.5 mm rule with a glass',
    sigma: 0.1,
    source: 'a fifth of a division under a glass: common practice, no source',
  },
  {
    id: 'calliper',
    name: 'calliper',
    sigma: 0.05,
    source: 'a quarter of the width of a printed line, which jaws are set to by eye: common practice, no source',
  },
];

/** The rule that is offered first. */
export const USUAL_RULE = 'half-mm';
