import { PDFDocument } from 'pdf-lib';
import { describe, expect, it } from 'vitest';
import { demoProject } from '../../src/core/kinds/demo';
import type { SetJob } from '../../src/core/ports';
import { expandSet } from '../../src/core/sheets/sets/expandSet';
import { makePdf } from '../../src/exporters/pdf/makePdf';
import { layPages } from '../../src/workers/laySetPages';
import { runSet } from '../../src/workers/runSet';
import { FONTS } from '../exporters/pdf/handMadeSheet';
import { unwrap } from '../exporters/pdf/unwrap';

const STYLE = { unit: 'mm', decimals: 1 } as const;
const jobOf = (changes: Partial<SetJob> = {}): SetJob => ({
  members: unwrap(
    expandSet({ models: [demoProject('demo', '2026-01-01T00:00:00.000Z')], hands: 'both', scales: [600, 650] }, STYLE),
  ),
  chosen: ['tape-down', 'long-gauge'],
  paper: { id: 'a4', name: 'A4', width: 210, height: 297 },
  profile: null,
  as: 'pdf',
  style: STYLE,
  date: '2026-01-02',
  ...changes,
});
const look = async (job: SetJob) => {
  const shares: number[] = [];
  return { ...unwrap(await layPages(job, (share) => shares.push(share))), shares };
};

describe('layPages', () => {
  // Of each instrument the template and a gauge of two pages: 4 × 3, and one page of contents.
  it('lays what is written: as many pages, contents first, each instrument where it begins', async () => {
    const { pages, starts, left, shares } = await look(jobOf());
    expect(pages).toHaveLength(13);
    expect(starts).toEqual([
      { name: 'Contents', page: 0 },
      { name: 'Wren 14, 600.0 mm, right hand', page: 1 },
      { name: 'Wren 14, 600.0 mm, left hand', page: 4 },
      { name: 'Wren 14, 650.0 mm, right hand', page: 7 },
      { name: 'Wren 14, 650.0 mm, left hand', page: 10 },
    ]);
    for (const { name, page } of starts.slice(1)) {
      const words = pages[page]?.items.flatMap((item) => (item.kind === 'text' ? [item.text] : [])).join(' ');
      expect(words).toContain(name.includes('left') ? 'left hand' : 'right hand');
      expect(words).toContain(name.includes('600') ? 'scale 600.0 mm' : 'scale 650.0 mm');
    }
    expect(left).toEqual([]);
    expect(shares.at(-1)).toBe(1);
    const file = unwrap(
      await runSet(
        jobOf(),
        async (document) => makePdf(document, FONTS),
        () => undefined,
      ),
    );
    expect((await PDFDocument.load(file.bytes)).getPageCount()).toBe(pages.length);
  });

  it('shows the files of a zip one after another, without contents', async () => {
    const { pages, starts } = await look(jobOf({ as: 'zip' }));
    expect(pages).toHaveLength(12);
    expect(starts.map(({ page }) => page)).toEqual([0, 3, 6, 9]);
  });

  it('names no starts where instruments share pages, and fails as the set does', async () => {
    const shared = await look(jobOf({ as: 'shared', chosen: ['saddle-blank'] }));
    expect(shared.starts).toEqual([]);
    expect(shared.pages.length).toBeGreaterThan(0);
    const none = await layPages(jobOf({ as: 'zip', chosen: [] }), () => undefined);
    expect(none).toMatchObject({ ok: false, issues: [{ code: 'set.empty' }] });
  });
});
