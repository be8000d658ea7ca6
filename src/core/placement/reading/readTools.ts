/** What a place is read with. */
export interface ReadTool {
  readonly id: string;
  readonly name: string;
  /** One sigma of one reading, mm. */
  readonly sigma: number;
  readonly source: string;
}

const PRACTICE = 'common practice, no source';

/** Tools to start from; the doubt of each can be changed. */
export const READ_TOOLS = [
  { id: 'rule', name: 'Steel rule, half millimetres', sigma: 0.25, source: `half a division either way: ${PRACTICE}` },
  { id: 'rule-64', name: 'Steel rule, 1/64 in', sigma: 0.2, source: `half a division either way: ${PRACTICE}` },
  { id: 'rule-and-square', name: 'Rule on the frets, small square', sigma: 0.3, source: PRACTICE },
  { id: 'stick', name: 'Octave stick and feeler', sigma: 0.15, source: PRACTICE },
  { id: 'straightedge', name: 'Straightedge and rule', sigma: 0.3, source: PRACTICE },
  { id: 'calliper', name: 'Calliper', sigma: 0.05, source: PRACTICE },
  { id: 'trammel', name: 'Trammel or dividers, two lengths compared', sigma: 0.15, source: PRACTICE },
] as const satisfies readonly ReadTool[];

export type ReadToolId = (typeof READ_TOOLS)[number]['id'];
