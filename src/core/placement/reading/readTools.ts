/** What a place is read with. */
export interface ReadTool {
  readonly id: string;
  readonly name: string;
  /** In a list beside its doubt. */
  readonly short: string;
  /** One sigma of one reading, mm. */
  readonly sigma: number;
  readonly source: string;
}

const PRACTICE = 'common practice, no source';
const HALF = `half a division either way: ${PRACTICE}`;

/** Tools to start from; the doubt of each can be changed. */
export const READ_TOOLS = [
  { id: 'rule', name: 'Steel rule, half millimetres', short: 'Rule, 0.5 mm', sigma: 0.25, source: HALF },
  { id: 'rule-64', name: 'Steel rule, 1/64 in', short: 'Rule, 1/64 in', sigma: 0.2, source: HALF },
  {
    id: 'rule-and-square',
    name: 'Rule on the frets, small square',
    short: 'Rule and square',
    sigma: 0.3,
    source: PRACTICE,
  },
  { id: 'stick', name: 'Octave stick and feeler', short: 'Octave stick', sigma: 0.15, source: PRACTICE },
  { id: 'straightedge', name: 'Straightedge and rule', short: 'Straightedge, rule', sigma: 0.3, source: PRACTICE },
  {
    id: 'straightedge-and-feeler',
    name: 'Straightedge and feeler',
    short: 'Straightedge, feeler',
    sigma: 0.1,
    source: PRACTICE,
  },
  { id: 'calliper', name: 'Calliper', short: 'Calliper', sigma: 0.05, source: PRACTICE },
  {
    id: 'trammel',
    name: 'Trammel or dividers, two lengths compared',
    short: 'Trammel, compared',
    sigma: 0.15,
    source: PRACTICE,
  },
] as const satisfies readonly ReadTool[];

export type ReadToolId = (typeof READ_TOOLS)[number]['id'];
