import { createAround } from '../core/derive/createAround';
import { createDerive } from '../core/derive/createDerive';
import { deriveAreas } from '../core/derive/deriveAreas';
import type { SetJob, SetOutline } from '../core/ports';
import { fail, ok, type Result } from '../core/result';
import { makeSheets } from '../core/sheets/makeSheets';
import type { SheetContext } from '../core/sheets/parts/types';
import { laySet } from '../core/sheets/sets/laySet';
import type { ContextMember, LaidSet, LeftOut, SetStart } from '../core/sheets/sets/setTypes';
import { TAPE_DOWN } from '../core/sheets/sheetKinds';
import type { Page } from '../core/sheets/types';

/** Told the share that is done, 0 to 1. */
export type Told = (share: number) => void;

/** All that the sheets of one instrument tell; what only other sheets than the template need is left out for it alone. */
export const contextOf = async (
  { project }: SetJob['members'][number],
  { chosen, style, date }: SetJob,
): Promise<SheetContext> => {
  const derived = createDerive()(project);
  if (chosen.every((id) => id === TAPE_DOWN.id)) return { project, derived, around: null, areas: null, style, date };
  const areas = await deriveAreas(project.bridge, project.limits, derived.bridge);
  const around = createAround(() => null)(project, derived);
  return { project, derived, around, areas: areas.ok ? areas.value : null, style, date };
};

/** Why a set of which nothing could be laid is none. */
export const nothingOf = <Made>(left: readonly LeftOut[]): Result<Made> =>
  fail('models', 'set.empty', `No instrument of this set can be printed. ${left[0]?.reason ?? ''}`);

/** The set as one document. Codes: those of `laySet`. */
export const layPdf = async (job: SetJob, onProgress: Told): Promise<Result<LaidSet>> => {
  const known: ContextMember[] = [];
  for (const [index, member] of job.members.entries()) {
    known.push({ name: member.name, context: await contextOf(member, job) });
    onProgress((index + 1) / job.members.length);
  }
  return laySet(known, { ...job, shared: job.as === 'shared' });
};

/** The pages of a zip's files, one after another, without writing them. */
const layZip = async (job: SetJob, onProgress: Told): Promise<Result<SetPages>> => {
  const { members, chosen, paper, profile } = job;
  const pages: Page[] = [];
  const starts: SetStart[] = [];
  const left: LeftOut[] = [];
  for (const [index, member] of members.entries()) {
    const made = makeSheets(chosen, paper, await contextOf(member, job), profile);
    if (made.ok) {
      starts.push({ name: member.name, page: pages.length });
      pages.push(...made.value.document.pages);
    }
    const issues = made.ok ? made.value.missing : made.issues;
    if (issues.length > 0) left.push({ name: member.name, reason: issues.map(({ message }) => message).join(' ') });
    onProgress((index + 1) / members.length);
  }
  return pages.length === 0 ? nothingOf(left) : ok({ pages, starts, left });
};

/** All pages of a set, and what there is to see. */
export interface SetPages extends Omit<SetOutline, 'pages'> {
  readonly pages: readonly Page[];
}

/** The pages that `runSet` writes, to be looked at. Codes: those of `runSet`. */
export const layPages = async (job: SetJob, onProgress: Told): Promise<Result<SetPages>> => {
  if (job.as === 'zip') return layZip(job, onProgress);
  const laid = await layPdf(job, onProgress);
  if (!laid.ok) return laid;
  const { document, starts, left } = laid.value;
  return ok({ pages: document.pages, starts, left });
};
