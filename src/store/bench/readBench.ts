import { PLAUSIBLE } from '../../core/sheets/proof/plausible';
import type { PrinterProfile } from '../../core/sheets/proof/printerProfile';
import { type KeptTools, readTools } from './keptTools';

/** A maker has a few printers and papers; more than this is not kept. */
export const MOST_PROFILES = 40;
export const LONGEST_PRINTER_NAME = 40;
const LONGEST_ID = 64;

const isText = (value: unknown, longest: number): value is string =>
  typeof value === 'string' && value.trim() !== '' && value.length <= longest;

const isFactor = (value: unknown): boolean =>
  typeof value === 'number' && value >= PLAUSIBLE.least && value <= PLAUSIBLE.most;

const isSigma = (value: unknown): boolean => typeof value === 'number' && value >= 0 && value < 1;

const isProfile = (kept: unknown): kept is PrinterProfile => {
  if (typeof kept !== 'object' || kept === null) return false;
  const { id, printer, paper, factorX, factorY, sigmaX, sigmaY, date, againstAdvice } = kept as Partial<
    Record<keyof PrinterProfile, unknown>
  >;
  return (
    isText(id, LONGEST_ID) &&
    isText(printer, LONGEST_PRINTER_NAME) &&
    isText(paper, LONGEST_ID) &&
    [factorX, factorY].every(isFactor) &&
    [sigmaX, sigmaY].every(isSigma) &&
    typeof date === 'string' &&
    /^\d{4}-\d{2}-\d{2}$/.test(date) &&
    (againstAdvice === undefined || againstAdvice === true)
  );
};

/** What of the bench this device keeps. */
export interface KeptBench {
  /** What this maker's printers do to their papers; never in a project. */
  readonly profiles: readonly PrinterProfile[];
  /** Id of the profile that the maker prints with, on its own paper only; null for none. */
  readonly chosen: string | null;
  /** How far each tool can be trusted, and which one each line is read with. */
  readonly tools: KeptTools;
}

const profilesFrom = (list: unknown): readonly PrinterProfile[] =>
  (Array.isArray(list) ? list.filter(isProfile) : [])
    .filter(({ id }, index, all) => all.findIndex((other) => other.id === id) === index)
    .slice(0, MOST_PROFILES)
    .map(({ id, printer, paper, factorX, factorY, sigmaX, sigmaY, date, againstAdvice }) => ({
      ...{ id, printer, paper, factorX, factorY, sigmaX, sigmaY, date },
      ...(againstAdvice === true ? { againstAdvice } : {}),
    }));

/** What was kept, from its text; whatever is no profile, or has the id of one before it, is left out. */
export const readBench = (text: string | null): KeptBench => {
  let kept: unknown;
  try {
    kept = JSON.parse(text ?? '');
  } catch {
    kept = null;
  }
  const {
    profiles: list,
    chosen = null,
    tools,
  } = (typeof kept === 'object' && kept !== null ? kept : {}) as {
    readonly profiles?: unknown;
    readonly chosen?: unknown;
    readonly tools?: unknown;
  };
  const profiles = profilesFrom(list);
  return { profiles, chosen: profiles.find(({ id }) => id === chosen)?.id ?? null, tools: readTools(tools) };
};
