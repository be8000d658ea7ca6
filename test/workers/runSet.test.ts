import { PDFDocument } from 'pdf-lib';
import { describe, expect, it } from 'vitest';
import { demoProject } from '../../src/core/kinds/demo';
import type { SetJob } from '../../src/core/ports';
import { expandSet } from '../../src/core/sheets/sets/expandSet';
import { makePdf } from '../../src/exporters/pdf/makePdf';
import { runSet, type WritePdf } from '../../src/workers/runSet';
import { FONTS } from '../exporters/pdf/handMadeSheet';
import { unwrap } from '../exporters/pdf/unwrap';

const demo = demoProject('demo', '2026-01-01T00:00:00.000Z');
const STYLE = { unit: 'mm', decimals: 1 } as const;
const jobOf = (changes: Partial<SetJob> = {}): SetJob => ({
  members: unwrap(expandSet({ models: [demo], hands: 'both', scales: [600, 650] }, STYLE)),
  chosen: ['tape-down'],
  paper: { id: 'a4', name: 'A4', width: 210, height: 297 },
  profile: null,
  as: 'pdf',
  style: STYLE,
  date: '2026-01-02',
  ...changes,
});
const write: WritePdf = async (document) => makePdf(document, FONTS);
const run = async (job: SetJob) => {
  const shares: number[] = [];
  const file = unwrap(await runSet(job, write, (share) => shares.push(share)));
  return { file, shares };
};

/** The names in a zip file's directory, which starts where the last 22 bytes say. Source: APPNOTE 4.3.12, 4.3.16. */
const namesIn = (zip: Uint8Array): readonly string[] => {
  const view = new DataView(zip.buffer, zip.byteOffset, zip.byteLength);
  const end = zip.length - 22;
  const names: string[] = [];
  let at = view.getUint32(end + 16, true);
  for (let left = view.getUint16(end + 10, true); left > 0; left -= 1) {
    const length = view.getUint16(at + 28, true);
    names.push(new TextDecoder().decode(zip.subarray(at + 46, at + 46 + length)));
    at += 46 + length;
  }
  return names;
};

describe('runSet', () => {
  it('makes one PDF of contents and a template each, and tells how far it is', async () => {
    const { file, shares } = await run(jobOf());
    expect((await PDFDocument.load(file.bytes)).getPageCount()).toBe(5);
    expect(shares).toEqual([...shares].sort((one, other) => one - other));
    expect(shares.at(-1)).toBe(1);
    expect(file).toMatchObject({ missing: [], left: [] });
  });

  it('makes a zip of a PDF each, named by the rule, the same for the same set', async () => {
    const { file, shares } = await run(jobOf({ as: 'zip' }));
    expect(namesIn(file.bytes)).toEqual([
      'Wren 14, 600.0 mm, right hand.pdf',
      'Wren 14, 600.0 mm, left hand.pdf',
      'Wren 14, 650.0 mm, right hand.pdf',
      'Wren 14, 650.0 mm, left hand.pdf',
    ]);
    expect(shares).toEqual([0.25, 0.5, 0.75, 1]);
    expect((await run(jobOf({ as: 'zip' }))).file.bytes).toEqual(file.bytes);
  });

  it('names files as every system takes them, each once', async () => {
    const member = (name: string) => ({ name, project: demo });
    const members = [member('A/B: "best"?'), member('a b best'), member('../..'), member('Łódź')];
    const { file } = await run(jobOf({ as: 'zip', members }));
    expect(namesIn(file.bytes)).toEqual(['A B best.pdf', 'a b best (2).pdf', 'Unnamed.pdf', 'Łódź.pdf']);
  });

  it('makes sheets that need more than the template, and says what is not there', async () => {
    const { file } = await run(jobOf({ chosen: ['tape-down', 'window', 'inside-caul'] }));
    expect((await PDFDocument.load(file.bytes)).getPageCount()).toBe(9);
    expect(file.left).toHaveLength(4);
  });

  it('says why when nothing can be made', async () => {
    const small = { id: 'own-1', name: 'Card', width: 100, height: 150 };
    for (const as of ['pdf', 'zip'] as const) {
      const made = await runSet(jobOf({ as, paper: small }), write, () => {});
      expect(made).toMatchObject({ ok: false, issues: [{ code: 'set.empty' }] });
      if (!made.ok) expect(made.issues[0]?.message).toMatch(/too much for Card/);
    }
  });
});
