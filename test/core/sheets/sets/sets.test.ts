import { describe, expect, it } from 'vitest';
import { demoProject } from '../../../../src/core/kinds/demo';
import { KINDS } from '../../../../src/core/kinds/kinds';
import { expandSet } from '../../../../src/core/sheets/sets/expandSet';
import { laySet } from '../../../../src/core/sheets/sets/laySet';
import type { SetPrint } from '../../../../src/core/sheets/sets/setTypes';
import type { Page } from '../../../../src/core/sheets/types';
import { valueOf as answerOf } from '../../document/valueOf';
import { itemBox } from '../itemBox';
import { contextOf, INCH, MM } from '../parts/partCase';

const WHEN = '2026-01-01T00:00:00.000Z';
const A4 = { id: 'a4', name: 'A4', width: 210, height: 297 };
const demo = demoProject('demo', WHEN);
const kind = (name: string) => {
  const found = KINDS.find((each) => each.name === name);
  if (found === undefined) throw new Error(`There is no ${name}.`);
  return found.make(name, WHEN);
};
const PRINT: SetPrint = { chosen: ['tape-down'], paper: A4, profile: null, shared: false };
const words = ({ items }: Page): readonly string[] =>
  items.flatMap((item) => (item.kind === 'text' ? [item.text] : []));

type Members = readonly { readonly name: string; readonly project: typeof demo }[];
const withContexts = (members: Members) =>
  Promise.all(members.map(async ({ name, project }) => ({ name, context: await contextOf(project) })));

describe('expandSet', () => {
  it('makes every model at every scale in both hands, in that order', () => {
    const scales = [645, 650];
    const members = answerOf(expandSet({ models: [demo, kind('Tenor ukulele')], hands: 'both', scales }, MM));
    expect(members.map(({ name }) => name)).toEqual([
      'Wren 14, 645.0 mm, right hand',
      'Wren 14, 645.0 mm, left hand',
      'Wren 14, 650.0 mm, right hand',
      'Wren 14, 650.0 mm, left hand',
      'New tenor ukulele, 645.0 mm, right hand',
      'New tenor ukulele, 645.0 mm, left hand',
      'New tenor ukulele, 650.0 mm, right hand',
      'New tenor ukulele, 650.0 mm, left hand',
    ]);
    expect(members[3]?.project.instrument).toMatchObject({ hand: 'left', scale: { from: 'entered', entered: 650 } });
  });

  it('leaves a model as it is when nothing else is asked, and tells two of one name apart', () => {
    const members = answerOf(expandSet({ models: [demo, demo], hands: 'own', scales: [] }, MM));
    expect(members.map(({ name }) => name)).toEqual(['Wren 14, right hand', 'Wren 14, right hand (2)']);
    expect(members[0]?.project).toEqual(demo);
  });

  it.each([
    ['set.empty', { models: [], hands: 'own', scales: [] }],
    ['set.many', { models: Array(251).fill(demo), hands: 'both', scales: [] }],
    ['field.range', { models: [demo], hands: 'own', scales: [645, 64.5] }],
    ['field.kind', { models: [demo], hands: 'own', scales: [Number.NaN] }],
  ] as const)('refuses with %s', (code, request) => {
    const made = expandSet(request, INCH);
    expect(made.ok ? '' : made.issues[0]?.code).toBe(code);
  });
});

describe('laySet', () => {
  it('puts the contents first, which name the pages that each instrument is on', async () => {
    const members = answerOf(expandSet({ models: [demo], hands: 'both', scales: [600, 650, 700] }, MM));
    const { document, left } = answerOf(laySet(await withContexts(members), PRINT));
    expect(left).toEqual([]);
    expect(document.pages).toHaveLength(7);
    const [contents, ...pages] = document.pages.map(words);
    for (const [index, { name }] of members.entries()) {
      expect(contents).toContain(name);
      expect(contents).toContain(`page ${index + 2}`);
      expect(pages[index]?.join(' ')).toContain(index % 2 === 0 ? 'Wren 14 · right hand' : 'Wren 14 · left hand');
      expect(pages[index]?.join(' ')).toContain(`scale ${[600, 600, 650, 650, 700, 700][index]}.0 mm as entered`);
    }
  });

  it('lays all pages of one size, one way, each with both long lines, the contents too', async () => {
    const members = answerOf(
      expandSet({ models: [kind('Classical guitar'), kind('Soprano ukulele'), demo], hands: 'own', scales: [] }, MM),
    );
    const { document } = answerOf(laySet(await withContexts(members), PRINT));
    // The classical bridge takes A4 on its side, so all do.
    for (const page of document.pages) {
      expect([page.width, page.height]).toEqual([297, 210]);
      for (const id of ['long-across', 'long-along'])
        expect(page.items.filter((item) => item.id === id)).toHaveLength(1);
      expect(new Set(page.items.map(({ id }) => id)).size).toBe(page.items.length);
      for (const item of page.items) {
        const { minX, minY, maxX, maxY } = itemBox(item);
        expect(Math.min(minX, minY, 297 - maxX, 210 - maxY), item.id).toBeGreaterThan(6.4);
      }
    }
  });

  it('names what is left out, in the contents as well, and goes on', async () => {
    const outline = { shape: 'tie-block', parameters: { length: 290, full: 28, block: 80, corner: 0 } } as const;
    const wide = { ...demo, bridge: { ...demo.bridge, outline } };
    const members = answerOf(expandSet({ models: [wide, demo], hands: 'own', scales: [] }, MM));
    const { document, left } = answerOf(laySet(await withContexts(members), PRINT));
    expect(left).toHaveLength(1);
    expect(left[0]?.name).toBe('Wren 14, right hand');
    expect(left[0]?.reason).toMatch(/too much for A4/);
    expect(document.pages).toHaveLength(2);
    expect(document.pages.map(words)[0]).toEqual(expect.arrayContaining(['left out', 'page 2']));
  });

  it('says which sheets an instrument does not have', async () => {
    const members = answerOf(expandSet({ models: [demo], hands: 'own', scales: [] }, MM));
    const print = { ...PRINT, chosen: ['tape-down', 'inside-caul'] };
    const { left } = answerOf(laySet(await withContexts(members), print));
    expect(left[0]?.reason).toMatch(/^without inside caul: .*brace/i);
  });

  it('lets small sheets of many instruments share pages, each under its instrument', async () => {
    const members = answerOf(expandSet({ models: [demo], hands: 'both', scales: [600, 650] }, MM));
    const known = await withContexts(members);
    const print = { ...PRINT, chosen: ['saddle-blank'], shared: true };
    const { document } = answerOf(laySet(known, print));
    const apart = answerOf(laySet(known, { ...print, shared: false }));
    expect(document.pages.length).toBeLessThan(apart.document.pages.length - 1);
    const text = document.pages.flatMap(words).join('\n');
    for (const { name } of members) expect(text).toContain(name);
    for (const { items } of document.pages) expect(new Set(items.map(({ id }) => id)).size).toBe(items.length);
    expect(laySet(known, { ...PRINT, shared: true })).toMatchObject({ ok: false, issues: [{ code: 'set.shared' }] });
  });

  it('takes as many pages of contents as it needs', async () => {
    const scales = Array.from({ length: 60 }, (_, index) => 600 + index);
    const members = answerOf(expandSet({ models: [demo], hands: 'own', scales }, MM));
    const { document } = answerOf(laySet(await withContexts(members), PRINT));
    // A4 upright leaves 257 along, 235 under the head: 47 rows of 5 mm, so 60 take two pages.
    expect(document.pages).toHaveLength(62);
    expect(document.pages.map(words)[1]).toContain('page 62');
  });
});
