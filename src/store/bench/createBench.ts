import { createStore, type StoreApi } from 'zustand/vanilla';
import type { ReadToolId } from '../../core/placement/reading/readTools';
import { fail, ok, type Result } from '../../core/result';
import type { PrinterProfile } from '../../core/sheets/proof/printerProfile';
import { USUAL_RULE } from '../../core/sheets/proof/readingRules';
import type { DeviceMemory } from '../types';
import { TOOL_SIGMA } from './keptTools';
import { type KeptBench, LONGEST_PRINTER_NAME, MOST_PROFILES, readBench } from './readBench';

/** A length as it was typed, and what it means, mm. */
export interface TypedLength {
  readonly text: string;
  readonly mm: number;
  readonly unit: 'mm' | 'in';
}

export type ReadingName = 'across' | 'along' | 'down' | 'up';

/** What was read on the print in hand: for this visit only. */
export interface ProofSession {
  readonly lengths: { readonly [Name in ReadingName]: TypedLength | null };
  /** Id of a reading rule, or 'own'. */
  readonly rule: string;
  /** Doubt of one reading with a rule of one's own, mm. */
  readonly ownSigma: number;
  /** Id of the paper that the readings were typed for; null while there are none. */
  readonly paper: string | null;
  /** Id of the profile that the print in hand carries, as it says on it; '' for none, null: the one that is printed with. */
  readonly carried: string | null;
}

export interface BenchState extends KeptBench {
  readonly proof: ProofSession;
  /** Of a download while paper, printer and pages do not go together: whether the maker is asked, and wants it. */
  readonly download: 'free' | 'asked' | 'wanted';
}

/** What belongs to this maker's bench and not to a project. */
export interface Bench extends Pick<StoreApi<BenchState>, 'getState' | 'subscribe'> {
  /** In place of the one for the same printer and paper, if there is one. Codes: profile.name, profile.many. */
  keep(profile: PrinterProfile): Result<PrinterProfile>;
  /** Code: profile.name. */
  rename(id: string, printer: string): Result<string>;
  remove(id: string): void;
  /** What to print with from now on; null for no correction. */
  choose(id: string | null): void;
  setProof(change: Partial<Pick<ProofSession, 'rule' | 'ownSigma' | 'carried'>>): void;
  /** A length read on a print on this paper; what was read on another paper is forgotten with it. */
  setReading(name: ReadingName, length: TypedLength | null, paper: string): void;
  /** Forgets what was read on the print in hand. */
  clearReadings(): void;
  setDownload(download: BenchState['download']): void;
  /** One sigma of one reading with a tool, mm; null for the usual. Code: tool.sigma. */
  setToolSigma(id: ReadToolId, sigma: number | null): Result<null>;
  /** What a line is read with from now on. */
  chooseTool(line: string, id: ReadToolId): void;
}

const NOTHING_READ: ProofSession = {
  lengths: { across: null, along: null, down: null, up: null },
  rule: USUAL_RULE,
  ownSigma: 0.1,
  paper: null,
  carried: null,
};

const nameOf = (typed: string): Result<string> => {
  const printer = typed.trim();
  if (printer === '' || printer.length > LONGEST_PRINTER_NAME)
    return fail(
      'printer',
      'profile.name',
      `Expected a name of 1 to ${LONGEST_PRINTER_NAME} characters for the printer.`,
    );
  return ok(printer);
};

const sameName = (one: string, other: string): boolean => one.toLowerCase() === other.toLowerCase();

/** The profile to print on this paper by; null when none is chosen, or it belongs to another paper. */
export const chosenFor = (
  { profiles, chosen }: Pick<KeptBench, 'profiles' | 'chosen'>,
  paper: string,
): PrinterProfile | null => profiles.find((each) => each.id === chosen && each.paper === paper) ?? null;

/** A bench with the profiles that this device kept. */
export const createBench = (memory: DeviceMemory): Bench => {
  const { getState, setState, subscribe } = createStore<BenchState>(() => ({
    ...readBench(memory.read()),
    proof: NOTHING_READ,
    download: 'free',
  }));
  const setKept = (change: Partial<KeptBench>): void => {
    setState(change);
    const { profiles, chosen, tools } = getState();
    memory.write(JSON.stringify({ profiles, chosen, tools }));
  };
  return {
    getState,
    subscribe,
    keep: (profile) => {
      const printer = nameOf(profile.printer);
      if (!printer.ok) return printer;
      const { profiles } = getState();
      const before = profiles.find((each) => each.paper === profile.paper && sameName(each.printer, printer.value));
      if (before === undefined && profiles.length >= MOST_PROFILES)
        return fail('printer', 'profile.many', `There are ${MOST_PROFILES} printers already: delete one first.`);
      const kept = { ...profile, id: before?.id ?? profile.id, printer: printer.value };
      setKept({ profiles: [...profiles.filter(({ id }) => id !== kept.id), kept] });
      return ok(kept);
    },
    rename: (id, typed) => {
      const printer = nameOf(typed);
      if (!printer.ok) return printer;
      const { profiles } = getState();
      const paper = profiles.find((each) => each.id === id)?.paper;
      if (profiles.some((each) => each.id !== id && each.paper === paper && sameName(each.printer, printer.value)))
        return fail(
          'printer',
          'profile.name',
          `There is a ${printer.value} for this paper already: choose another name.`,
        );
      setKept({ profiles: profiles.map((each) => (each.id === id ? { ...each, printer: printer.value } : each)) });
      return printer;
    },
    remove: (removed) => {
      const { profiles, chosen, proof } = getState();
      setKept({ profiles: profiles.filter(({ id }) => id !== removed), chosen: chosen === removed ? null : chosen });
      if (proof.carried === removed) setState({ proof: { ...proof, carried: null } });
    },
    choose: (chosen) => setKept({ chosen }),
    setProof: (change) => setState(({ proof }) => ({ proof: { ...proof, ...change } })),
    setReading: (name, length, paper) =>
      setState(({ proof }) => {
        const before = proof.paper === paper ? proof.lengths : NOTHING_READ.lengths;
        const lengths = { ...before, [name]: length };
        const read = Object.values(lengths).some((each) => each !== null);
        return { proof: { ...proof, lengths, paper: read ? paper : null } };
      }),
    clearReadings: () =>
      setState(({ proof }) => ({ proof: { ...proof, lengths: NOTHING_READ.lengths, paper: NOTHING_READ.paper } })),
    setDownload: (download) => setState({ download }),
    setToolSigma: (id, sigma) => {
      if (sigma !== null && !(sigma >= TOOL_SIGMA.least && sigma <= TOOL_SIGMA.most))
        return fail('tools', 'tool.sigma', `Expected from ${TOOL_SIGMA.least} to ${TOOL_SIGMA.most} mm.`);
      const { tools } = getState();
      const { [id]: _, ...others } = tools.sigmas;
      setKept({ tools: { ...tools, sigmas: sigma === null ? others : { ...others, [id]: sigma } } });
      return ok(null);
    },
    chooseTool: (line, id) => {
      const { tools } = getState();
      const { [line]: _, ...others } = tools.chosen;
      setKept({ tools: { ...tools, chosen: { ...others, [line]: id } } });
    },
  };
};
