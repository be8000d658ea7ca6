import { afterAll, describe, expect, it } from 'vitest';
import { ALL_SHEETS, allSheetFiles, forHand, POINTS } from './allSheets';
import { checkSheets } from './checkSheets';
import { congruentOn } from './congruent';
import { READERS } from './readers';

/** A micron, mm. */
const MICRON = 0.001;

describe('long lines and named points of every sheet are found within a micron', () => {
  const worst = new Map<string, number>();
  afterAll(() => {
    for (const [reader, by] of worst)
      console.info(`${reader}: largest deviation on all sheets ${(1000 * by).toFixed(3)} µm`);
  });

  it.each(ALL_SHEETS)('of $name, $hand hand, $paper.name', async (sheets) => {
    const files = await allSheetFiles(sheets);
    for (const { reader, read } of READERS) {
      const pages = (await Promise.all(files.map(read))).flat();
      worst.set(reader, Math.max(worst.get(reader) ?? 0, checkSheets(pages, sheets, MICRON)));
    }
  });

  it('but those of a slanted slot not on the sheets of the other hand', async () => {
    const sheets = ALL_SHEETS.find(({ id, hand }) => id === 'steel-string' && hand === 'left');
    if (sheets === undefined) throw new Error('There is no left-handed steel-string.');
    const [reader] = READERS;
    const files = await allSheetFiles(sheets);
    const pages = (await Promise.all(files.map((bytes) => reader?.read(bytes) ?? []))).flat();
    for (const name of ['slot-drawing', 'finish-mask', 'gauge-saddle'])
      expect(congruentOn(pages, forHand(name, POINTS['steel-string']?.[name] ?? [], 'right'))).toBeNull();
  });
});
