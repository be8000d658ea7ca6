import { execFileSync } from 'node:child_process';
import { writeFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { KINDS } from '../../src/core/kinds/kinds';
import type { SetJob } from '../../src/core/ports';
import { makeSheets } from '../../src/core/sheets/makeSheets';
import { PAPERS } from '../../src/core/sheets/papers';
import { expandSet } from '../../src/core/sheets/sets/expandSet';
import { SHEET_KINDS, TAPE_DOWN } from '../../src/core/sheets/sheetKinds';
import { makePdf } from '../../src/exporters/pdf/makePdf';
import { runSet } from '../../src/workers/runSet';
import { contextOf, MM } from '../core/sheets/parts/partCase';
import { wholeProject } from '../core/sheets/wholeProject';
import { FONTS } from '../exporters/pdf/handMadeSheet';
import { unwrap } from '../exporters/pdf/unwrap';
import { runReader } from './runReader';
import { temporaryFolder } from './temporaryFolder';

const WHEN = '2026-01-01T00:00:00.000Z';
const ALL = [TAPE_DOWN.id, ...SHEET_KINDS.map(({ id }) => id)];
const { fileNamed } = temporaryFolder();

const sayWhole = (said: string): void => {
  expect(said).toContain('No syntax or stream encoding errors');
  expect(said).not.toMatch(/warning/iu);
};

describe('qpdf finds nothing to complain about in all sheets', () => {
  it.each(
    KINDS.flatMap(({ name, make }) =>
      (['right', 'left'] as const).flatMap((hand) =>
        PAPERS.filter(({ id }) => id === 'a4' || id === 'letter').map((paper) => ({ name, make, hand, paper })),
      ),
    ),
  )('of $name, $hand hand, $paper.name', async ({ make, hand, paper }) => {
    const made = wholeProject(make('k', WHEN));
    const context = await contextOf({ ...made, instrument: { ...made.instrument, hand } });
    const fit = ALL.filter((id) => makeSheets([id], paper, context).ok);
    const { document } = unwrap(makeSheets(fit, paper, context));
    const file = fileNamed('sheets.pdf');
    writeFileSync(file, unwrap(makePdf(document, FONTS)).bytes);
    sayWhole(runReader('qpdf', ['--check', file]));
    expect(runReader('pdfinfo', [file])).toMatch(new RegExp(`Pages: +${document.pages.length}\\n`));
  });
});

describe('a set', () => {
  const job = (as: SetJob['as']): SetJob => {
    const models = KINDS.slice(0, 3).map(({ make }) => make('k', WHEN));
    const members = unwrap(expandSet({ models, hands: 'both', scales: [640, 650] }, MM));
    const paper = { id: 'a4', name: 'A4', width: 210, height: 297 };
    return { members, chosen: ['tape-down'], paper, profile: null, as, style: MM, date: '2026-01-02' };
  };
  const madeFile = async (as: SetJob['as']) => {
    const { bytes } = unwrap(
      await runSet(
        job(as),
        async (document) => makePdf(document, FONTS),
        () => {},
      ),
    );
    const file = fileNamed(`set.${as}`);
    writeFileSync(file, bytes);
    return file;
  };

  it('is one PDF of one page size, by qpdf and poppler, whose contents name its pages', async () => {
    const file = await madeFile('pdf');
    sayWhole(runReader('qpdf', ['--check', file]));
    const sizes = runReader('pdfinfo', ['-box', '-l', '13', file]).match(/MediaBox.*/g);
    expect(sizes).toHaveLength(13);
    expect(new Set(sizes?.map((line) => line.replace(/\s+/g, ' '))).size).toBe(1);
    const contents = runReader('pdftotext', ['-layout', '-l', '1', file, '-']);
    const row = contents.split('\n').find((line) => line.includes('650.0 mm, left hand')) ?? '';
    const page = /page (\d+)/.exec(row)?.[1] ?? '';
    expect(runReader('pdftotext', ['-f', page, '-l', page, file, '-'])).toMatch(/left hand[\s\S]*scale 650.0 mm/);
  });

  it('is a zip that Python reads: every member whole, by its name, dated and stored', async () => {
    const file = await madeFile('zip');
    const read = [
      'import json, sys, zipfile',
      'z = zipfile.ZipFile(sys.argv[1])',
      'assert z.testzip() is None',
      'print(json.dumps([[i.filename, i.date_time[:3], i.compress_type, z.read(i)[:5].decode()] for i in z.infolist()]))',
    ].join('\n');
    const members: unknown = JSON.parse(execFileSync('/usr/bin/python3', ['-c', read, file], { encoding: 'utf8' }));
    const names = job('zip').members.map(({ name }) => `${name}.pdf`);
    expect(members).toEqual(names.map((name) => [name, [2026, 1, 2], 0, '%PDF-']));
  });
});
