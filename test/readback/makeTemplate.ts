import { readFileSync } from 'node:fs';
import { createDerive } from '../../src/core/derive/createDerive';
import type { Hand, Project } from '../../src/core/document/types';
import type { Result } from '../../src/core/result';
import { PAPERS } from '../../src/core/sheets/papers';
import { tapeDownTemplate } from '../../src/core/sheets/tapeDownTemplate';
import type { SheetDocument } from '../../src/core/sheets/types';
import { makePdf } from '../../src/exporters/pdf/makePdf';
import { decodeProject } from '../../src/persistence/decodeProject';
import { FONTS } from '../exporters/pdf/handMadeSheet';
import { unwrap } from '../exporters/pdf/unwrap';
import type { ExpectedTemplate } from '../reference/templates-expected';

/** What decides a template. The hand is the instrument's own unless another is named. */
export type Wanted = Pick<ExpectedTemplate, 'instrument' | 'paper' | 'unit'> & { readonly hand?: Hand };

/** An instrument of the reference folder, read as the program opens a saved file. */
export const instrumentNamed = (name: ExpectedTemplate['instrument']): Project =>
  unwrap(decodeProject(readFileSync(new URL(`../reference/instruments/${name}.json`, import.meta.url), 'utf8')));

const STYLES = { mm: { unit: 'mm', decimals: 1 }, in: { unit: 'in', denominator: 64 } } as const;

/** The tape-down template of a project, as pages. */
export function layTemplate(project: Project, paperId: string, unit: keyof typeof STYLES): Result<SheetDocument> {
  const paper = PAPERS.find(({ id }) => id === paperId);
  if (!paper) throw new Error(`there is no paper ${paperId}`);
  return tapeDownTemplate(project, createDerive()(project), { paper, style: STYLES[unit], date: '2026-11-25' });
}

/** The bytes of a template's PDF, in which every character must have printed. */
export function makeTemplate({ instrument, paper, unit, hand }: Wanted): Uint8Array {
  const project = instrumentNamed(instrument);
  const turned = { ...project, instrument: { ...project.instrument, hand: hand ?? project.instrument.hand } };
  const { bytes, missing } = unwrap(makePdf(unwrap(layTemplate(turned, paper, unit)), FONTS));
  if (missing.length > 0) throw new Error(`the font lacks ${missing.join(' ')}`);
  return bytes;
}
