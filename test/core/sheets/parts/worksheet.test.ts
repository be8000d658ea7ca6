import { describe, expect, it } from 'vitest';
import { newBuild } from '../../../../src/core/document/newBuild';
import type { Project } from '../../../../src/core/document/types';
import { KINDS } from '../../../../src/core/kinds/kinds';
import { runCase } from '../../../../src/core/run/runCase';
import { runSteps } from '../../../../src/core/run/runSteps';
import { makeSheets } from '../../../../src/core/sheets/makeSheets';
import { PAPERS } from '../../../../src/core/sheets/papers';
import type { SheetPart } from '../../../../src/core/sheets/parts/types';
import { worksheet } from '../../../../src/core/sheets/parts/worksheet';
import { chooseCutting } from '../../../../src/store/commands/chooseCutting';
import { chooseRepair } from '../../../../src/store/commands/repair/chooseRepair';
import { WORKSHEET } from '../../../reference/worksheet';
import { steelProject, steelWith } from '../../document/steelProject';
import { valueOf as answerOf } from '../../document/valueOf';
import { itemBox, overlap } from '../itemBox';
import { contextOf, INCH, MM, partNamed, proseOn } from './partCase';

const WHEN = '2026-03-01T09:00:00.000Z';

/** Rows with figures: what stands before them, and the figures. */
const figuresOf = (part: SheetPart): readonly (readonly string[])[] =>
  part.items.flatMap((item) => {
    if (item.kind !== 'text' || item.role !== 'label') return [];
    const figures = part.items.flatMap((other) =>
      other.kind === 'text' && other.id.startsWith(`${item.id}-`) && other.id.endsWith('-figure') ? [other.text] : [],
    );
    return [[item.text, ...figures]];
  });

const partsOf = async (project = steelProject, style = MM) => answerOf(worksheet.make(await contextOf(project, style)));

describe('the bench worksheet', () => {
  it('shows what this instrument is to read, beside blanks', async () => {
    const parts = await partsOf();
    const place = partNamed(parts, 'worksheet-place');
    expect(figuresOf(place)).toEqual(WORKSHEET.place);
    const blanks = place.items.filter(({ id }) => id.endsWith('-blank'));
    expect(blanks).toHaveLength(16);
    const ready = figuresOf(partNamed(parts, 'worksheet-ready'));
    for (const figure of WORKSHEET.square.mm) expect(ready.flat().filter((each) => each === figure)).toHaveLength(2);
    expect(figuresOf(partNamed(parts, 'worksheet-glue'))).toContainEqual([
      'Action at the 12th fret',
      '1.9 mm',
      '2.5 mm',
    ]);
  });

  it('is written in inches for those who work in inches', async () => {
    const ready = figuresOf(partNamed(await partsOf(steelProject, INCH), 'worksheet-ready'));
    for (const figure of WORKSHEET.square.in) expect(ready.flat().filter((each) => each === figure)).toHaveLength(2);
  });

  // The order: the whole run of the work, from the neck to the record.
  it('keeps the order of the work, each step with a box', async () => {
    const steps = (await partsOf()).flatMap(({ items }) =>
      items.flatMap((item) =>
        item.kind === 'text' && /^\d+ /.test(item.text) && item.role === 'key' ? [item.text] : [],
      ),
    );
    expect(steps.map((text) => Number.parseInt(text, 10))).toEqual(Array.from({ length: 17 }, (_, index) => index + 1));
    const order = ['Neck', 'Braces', 'Sole', 'Print', 'Square line', 'sideways', 'taped', 'locating hole', 'Pin in'];
    const after = ['Finish', 'Dry run', 'Glue on', 'wet', 'Pins out', 'Squeeze-out', 'Cured', 'strung'];
    for (const [index, word] of [...order, ...after].entries()) expect(steps[index]).toContain(word);
    const boxes = (await partsOf()).flatMap(({ items }) => items.filter(({ id }) => id.endsWith('-box')));
    expect(boxes).toHaveLength(17);
  });

  it('warns where the danger is, and says what paper is worth', async () => {
    const words = (await partsOf()).map(proseOn).join(' ');
    for (const danger of [
      'Back up the plate',
      'respirator',
      'cut away from the holding hand',
      'cracks braces',
      'labels and local rules',
    ])
      expect(words).toContain(danger);
    expect(words).toContain('steel carries length');
    expect(words).toContain('never with wet glue');
  });

  it('is the run of the screen: the same steps, and those ticked there are ticked here', async () => {
    const ticked: Project = { ...steelProject, build: { ...newBuild(), steps: { neck: WHEN, print: WHEN } } };
    const parts = await partsOf(ticked);
    const titles = parts.flatMap(({ items }) =>
      items.flatMap((item) => (item.kind === 'text' && item.role === 'key' && /^\d+ /.test(item.text) ? [item] : [])),
    );
    expect(titles.map(({ text }) => text.replace(/^\d+ /, ''))).toEqual(
      runSteps(runCase(ticked, 2)).map(({ title }) => title),
    );
    const ticks = parts.flatMap(({ items }) => items.filter(({ id }) => id.endsWith('-tick')));
    expect(ticks.map(({ id }) => titles.find((title) => `${title.id}-tick` === id)?.text)).toEqual([
      '1 Neck angle and height pass',
      '4 Print read both ways, and true',
    ]);
    expect((await partsOf()).flatMap(({ items }) => items.filter(({ id }) => id.endsWith('-tick')))).toEqual([]);
  });

  it.each([false, true].flatMap((repair) => [false, true].map((after) => ({ repair, after }))))(
    'of repair $repair and slot after gluing $after keeps each block on a page',
    async ({ repair, after }) => {
      const worked = answerOf(chooseRepair(answerOf(chooseCutting(steelProject, after)), repair));
      const parts = await partsOf(worked);
      expect(parts.map(({ id }) => id.replace('worksheet-', ''))).toEqual(
        ['ready', 'place', 'drill', 'glue'].concat(after ? ['cut'] : []),
      );
      for (const { width, height } of parts) {
        expect(width).toBeLessThanOrEqual(WORKSHEET.widest);
        expect(height).toBeLessThanOrEqual(WORKSHEET.tallest);
      }
      const words = parts.map(proseOn).join(' ');
      expect(words.includes('Heat loosens braces')).toBe(repair);
      expect(words.includes('both hands on the base')).toBe(after);
    },
  );

  it('says which hand, and tells treble from bass alike for both', async () => {
    const left = await partsOf(steelWith({ instrument: { hand: 'left' } }));
    for (const part of left) expect(part.name).toContain('left hand');
    expect(figuresOf(partNamed(left, 'worksheet-place'))).toEqual(WORKSHEET.place);
  });

  it.each(KINDS.map((kind) => ({ name: kind.name, kind })))('fits two pages for $name', async ({ kind }) => {
    const project = kind.make('k', '2026-01-01T00:00:00.000Z');
    for (const style of [MM, INCH]) {
      const context = await contextOf(project, style);
      for (const part of answerOf(worksheet.make(context))) {
        expect(part.width).toBeLessThanOrEqual(WORKSHEET.widest);
        expect(part.height).toBeLessThanOrEqual(WORKSHEET.tallest);
        const texts = part.items.filter((item) => item.kind === 'text');
        for (const [index, item] of texts.entries()) {
          const box = itemBox(item);
          expect(Math.min(box.minX, part.width - box.maxX), item.id).toBeGreaterThanOrEqual(0);
          for (const other of texts.slice(index + 1))
            expect(overlap(box, itemBox(other)), `${item.text} over ${other.text}`).toBeLessThanOrEqual(0.2);
        }
      }
      for (const paper of PAPERS)
        expect(answerOf(makeSheets(['worksheet'], paper, context)).document.pages.length).toBeLessThanOrEqual(2);
    }
  });
});
