import { fail, ok, type Result } from '../result';
import { PAGE_MARGIN } from './frame';
import { PAPERS } from './papers';
import type { Paper } from './types';

/** A paper of the maker's own, by its sides, mm. */
export type OwnPaper = Pick<Paper, 'id' | 'name' | 'width' | 'height'>;

/** What a maker said of papers and printer, kept on their device. */
export interface PrintSettings {
  /** White at every edge of a page, mm. */
  readonly margin: number;
  /** Ids of the papers that the maker owns; they are offered first. */
  readonly owned: readonly string[];
  readonly own: readonly OwnPaper[];
  /** Id of the paper that lies in the printer; null: the one that the pages are laid for. */
  readonly loaded: string | null;
}

/** Between what printers leave white (common practice, no source) and what leaves room to draw, mm. */
export const MARGINS = { least: 6.4, most: 30 } as const;
/** A page holds a card's sides at least, and a PDF's at most: 14 400 points, ISO 32000-1, Annex C.2; mm. */
const SIDES = { least: 80, most: 5080 } as const;
const LONGEST_NAME = 40;
const MOST_PAPERS = 20;

export const USUAL_PRINT_SETTINGS: PrintSettings = {
  margin: PAGE_MARGIN,
  owned: ['a4', 'letter'],
  own: [],
  loaded: null,
};

const within = (value: unknown, { least, most }: { readonly least: number; readonly most: number }): value is number =>
  typeof value === 'number' && value >= least && value <= most;

const isOwnPaper = (paper: unknown): paper is OwnPaper => {
  if (typeof paper !== 'object' || paper === null) return false;
  const { id, name, width, height } = paper as Partial<Record<keyof OwnPaper, unknown>>;
  const named = typeof id === 'string' && id.startsWith('own-') && typeof name === 'string';
  return named && name !== '' && name.length <= LONGEST_NAME && within(width, SIDES) && within(height, SIDES);
};

/** Settings from what was kept; whatever is missing or not allowed takes its usual value. */
export const readPrintSettings = (kept: object): PrintSettings => {
  const { margin, owned, own, loaded } = kept as Partial<Record<keyof PrintSettings, unknown>>;
  const papers = (Array.isArray(own) ? own.filter(isOwnPaper) : [])
    .filter(({ id }, index, all) => all.findIndex((other) => other.id === id) === index)
    .slice(0, MOST_PAPERS);
  const known = [...PAPERS, ...papers].map(({ id }) => id);
  return {
    margin: within(margin, MARGINS) ? margin : USUAL_PRINT_SETTINGS.margin,
    owned: Array.isArray(owned) ? known.filter((id) => owned.includes(id)) : USUAL_PRINT_SETTINGS.owned,
    loaded: known.find((id) => id === loaded) ?? null,
    own: papers.map(({ id, name, width, height }) => ({ id, name, width, height })),
  };
};

/** Papers to choose from: those that the maker owns, then the others; each with the margin that was set. */
export const papersOf = ({
  margin,
  owned,
  own,
}: PrintSettings): { readonly first: Paper[]; readonly others: Paper[] } => {
  const all = [...PAPERS, ...own].map((paper): Paper => ({ ...paper, margin }));
  const isOwned = ({ id }: Paper): boolean => owned.includes(id) || id.startsWith('own-');
  return { first: all.filter(isOwned), others: all.filter((paper) => !isOwned(paper)) };
};

/** The paper of this id, or the first that there is. */
export const paperOf = (settings: PrintSettings, id: string): Paper => {
  const { first, others } = papersOf(settings);
  const papers = [...first, ...others];
  return papers.find((paper) => paper.id === id) ?? papers[0] ?? { id: 'a4', name: 'A4', width: 210, height: 297 };
};

/**
 * The settings with one more paper, upright whichever side was told first. Codes: paper.name (none, too long, or there
 * already), paper.size (a side outside 80 to 5080 mm), paper.many (over 20).
 */
export const addPaper = (
  settings: PrintSettings,
  { name, width, height }: Omit<OwnPaper, 'id'>,
): Result<PrintSettings> => {
  const called = name.trim();
  if (called === '' || called.length > LONGEST_NAME)
    return fail('name', 'paper.name', `Expected a name of 1 to ${LONGEST_NAME} characters for the paper.`);
  const { first, others } = papersOf(settings);
  if ([...first, ...others].some((paper) => paper.name.toLowerCase() === called.toLowerCase()))
    return fail('name', 'paper.name', `There is a paper called ${called} already: choose another name.`);
  if (!within(width, SIDES) || !within(height, SIDES))
    return fail('size', 'paper.size', `Expected both sides of the paper from ${SIDES.least} to ${SIDES.most} mm.`);
  if (settings.own.length >= MOST_PAPERS)
    return fail('name', 'paper.many', `There are ${MOST_PAPERS} own papers already: remove one first.`);
  const taken = settings.own.map(({ id }) => Number(id.slice('own-'.length)) || 0);
  const id = `own-${Math.max(0, ...taken) + 1}`;
  const paper = { id, name: called, width: Math.min(width, height), height: Math.max(width, height) };
  return ok({ ...settings, own: [...settings.own, paper] });
};
