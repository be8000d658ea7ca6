import type { PdfFile, SetFile, SetJob } from '../core/ports';
import { ok, type Result } from '../core/result';
import { makeSheets } from '../core/sheets/makeSheets';
import type { LeftOut } from '../core/sheets/sets/setTypes';
import type { SheetDocument } from '../core/sheets/types';
import { makeZip, type ZipMember } from '../exporters/zip/makeZip';
import { contextOf, layPdf, nothingOf, type Told } from './laySetPages';

/** Writes pages as a PDF. */
export type WritePdf = (document: SheetDocument) => Promise<Result<PdfFile>>;

const missingOf = (files: readonly { readonly missing: readonly string[] }[]): readonly string[] => [
  ...new Set(files.flatMap(({ missing }) => missing)),
];

/** Names of files may hold what names of instruments do, but for signs that some systems refuse, and dots at the ends. */
const plainName = (name: string): string =>
  name
    .replace(/[^\p{L}\p{N}\p{M}.,()'+-]+/gu, ' ')
    .replace(/^[. ]+|[. ]+$/g, '')
    .slice(0, 120) || 'Unnamed';

/** Names of files, each once whatever the case of its letters. */
const fileNames = (members: SetJob['members']): readonly string[] => {
  const taken = new Set<string>();
  return members.map(({ name }) => {
    const plain = plainName(name);
    let made = plain;
    for (let number = 2; taken.has(made.toLowerCase()); number += 1) made = `${plain} (${number})`;
    taken.add(made.toLowerCase());
    return `${made}.pdf`;
  });
};

const asZip = async (job: SetJob, write: WritePdf, onProgress: Told): Promise<Result<SetFile>> => {
  const { members, chosen, paper, profile, date } = job;
  const names = fileNames(members);
  const files: ZipMember[] = [];
  const left: LeftOut[] = [];
  const lacking: string[] = [];
  for (const [index, member] of members.entries()) {
    const made = makeSheets(chosen, paper, await contextOf(member, job), profile);
    const pdf = made.ok ? await write(made.value.document) : made;
    if (pdf.ok) {
      files.push({ name: names[index] ?? '', bytes: pdf.value.bytes });
      lacking.push(...pdf.value.missing);
    }
    const issues = pdf.ok ? (made.ok ? made.value.missing : []) : pdf.issues;
    if (issues.length > 0) left.push({ name: member.name, reason: issues.map(({ message }) => message).join(' ') });
    onProgress((index + 1) / members.length);
  }
  if (files.length === 0) return nothingOf(left);
  const zip = makeZip(files, date);
  return zip.ok ? ok({ bytes: zip.value, missing: missingOf([{ missing: lacking }]), left }) : zip;
};

/** Of the whole work, what it takes to lay the pages; the rest is writing them. */
const LAYING = 0.6;

const asPdf = async (job: SetJob, write: WritePdf, onProgress: Told): Promise<Result<SetFile>> => {
  const laid = await layPdf(job, (share) => onProgress(LAYING * share));
  if (!laid.ok) return laid;
  const pdf = await write(laid.value.document);
  onProgress(1);
  return pdf.ok ? ok({ ...pdf.value, left: laid.value.left }) : pdf;
};

/** The sheets of a set as one file. Codes: those of `laySet`, of the writer and `makeZip`; set.empty where nothing could be made. */
export const runSet = (job: SetJob, write: WritePdf, onProgress: Told): Promise<Result<SetFile>> =>
  job.as === 'zip' ? asZip(job, write, onProgress) : asPdf(job, write, onProgress);
