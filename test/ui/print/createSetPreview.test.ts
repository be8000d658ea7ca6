import { describe, expect, it } from 'vitest';
import type { SetJob, SetOutline, SetView } from '../../../src/core/ports';
import { fail, ok, type Result } from '../../../src/core/result';
import type { Page } from '../../../src/core/sheets/types';
import { createSetPreview } from '../../../src/ui/print/sets/createSetPreview';

const JOB = {} as SetJob;
const OUTLINE: SetOutline = { pages: 3, starts: [{ name: 'Contents', page: 0 }], left: [] };
const pageOf = (index: number): Page => ({ width: 210, height: 297 + index, items: [] });

/** A workshop that answers when it is told to. */
const slowWorkshop = () => {
  const laid: ((answer: Result<SetOutline>) => void)[] = [];
  const asked: { readonly index: number; readonly give: () => void }[] = [];
  const ended: number[] = [];
  const viewSet = (_: SetJob, onProgress: (share: number) => void): SetView => {
    const number = laid.length;
    onProgress(0.5);
    return {
      result: new Promise((resolve) => laid.push(resolve)),
      page: (index) => new Promise((resolve) => asked.push({ index, give: () => resolve(pageOf(index)) })),
      end: () => ended.push(number),
    };
  };
  return { laid, asked, ended, workshop: async () => ({ viewSet }) };
};
const settle = async (): Promise<void> => {
  for (let turn = 0; turn < 5; turn += 1) await Promise.resolve();
};

describe('a look through a set', () => {
  it('tells how far it is, then asks for one page at a time', async () => {
    const { laid, asked, workshop } = slowWorkshop();
    const preview = createSetPreview(workshop);
    expect(preview.getState()).toEqual({ kind: 'closed' });
    void preview.open(JOB);
    expect(preview.getState()).toEqual({ kind: 'laying', share: 0 });
    await settle();
    expect(preview.getState()).toEqual({ kind: 'laying', share: 0.5 });
    laid[0]?.(ok(OUTLINE));
    await settle();
    expect(preview.getState()).toEqual({ kind: 'open', outline: OUTLINE, index: 0, page: null });
    expect(asked.map(({ index }) => index)).toEqual([0]);
    asked[0]?.give();
    await settle();
    expect(preview.getState()).toMatchObject({ index: 0, page: pageOf(0) });
  });

  it('shows the page that was asked for last, whatever comes first', async () => {
    const { laid, asked, workshop } = slowWorkshop();
    const preview = createSetPreview(workshop);
    void preview.open(JOB);
    await settle();
    laid[0]?.(ok(OUTLINE));
    await settle();
    void preview.turnTo(1);
    void preview.turnTo(2);
    void preview.turnTo(3);
    void preview.turnTo(-1);
    expect(asked.map(({ index }) => index)).toEqual([0, 1, 2]);
    asked[2]?.give();
    asked[1]?.give();
    await settle();
    expect(preview.getState()).toMatchObject({ index: 2, page: pageOf(2) });
  });

  it('lets go of a set that is closed or opened anew, and hears no more of it', async () => {
    const { laid, ended, workshop } = slowWorkshop();
    const preview = createSetPreview(workshop);
    void preview.open(JOB);
    await settle();
    void preview.open(JOB);
    await settle();
    expect(ended).toEqual([0]);
    laid[0]?.(ok(OUTLINE));
    await settle();
    expect(preview.getState()).toMatchObject({ kind: 'laying' });
    preview.close();
    expect(ended).toEqual([0, 1]);
    laid[1]?.(ok(OUTLINE));
    await settle();
    expect(preview.getState()).toEqual({ kind: 'closed' });
  });

  it('says why there is nothing to see', async () => {
    const { laid, workshop } = slowWorkshop();
    const preview = createSetPreview(workshop);
    void preview.open(JOB);
    await settle();
    laid[0]?.(fail('models', 'set.empty', 'Nothing.'));
    await settle();
    expect(preview.getState()).toEqual({ kind: 'failed', message: 'Nothing.' });
  });
});
