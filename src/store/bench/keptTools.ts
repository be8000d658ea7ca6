import { READ_TOOLS, type ReadToolId } from '../../core/placement/reading/readTools';

/** What a maker said of the tools that a bridge's place is read with. */
export interface KeptTools {
  /** One sigma of one reading, mm, where it differs from the usual. */
  readonly sigmas: Readonly<Partial<Record<ReadToolId, number>>>;
  /** What each line is read with, by its id, where that differs from the usual. */
  readonly chosen: Readonly<Record<string, ReadToolId>>;
}

/** No tool is finer or coarser than this, mm. */
export const TOOL_SIGMA = { least: 0.005, most: 5 } as const;
const MOST_LINES = 200;
const LINE = /^[a-z0-9:-]{1,80}$/;

const isTool = (id: unknown): id is ReadToolId => READ_TOOLS.some((tool) => tool.id === id);

const entriesOf = (kept: unknown): readonly (readonly [string, unknown])[] =>
  typeof kept === 'object' && kept !== null ? Object.entries(kept) : [];

/** The tools as they were kept; what is none of ours is left out. */
export const readTools = (kept: unknown): KeptTools => {
  const groups = Object.fromEntries(entriesOf(kept));
  const sigmas = entriesOf(groups.sigmas).filter(
    ([id, sigma]) => isTool(id) && typeof sigma === 'number' && sigma >= TOOL_SIGMA.least && sigma <= TOOL_SIGMA.most,
  );
  const chosen = entriesOf(groups.chosen).filter(([line, id]) => LINE.test(line) && isTool(id));
  return {
    sigmas: Object.fromEntries(sigmas),
    chosen: Object.fromEntries(chosen.slice(-MOST_LINES)) as KeptTools['chosen'],
  };
};
