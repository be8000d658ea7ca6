import { describe, expect, it } from 'vitest';
import {
  addPaper,
  paperOf,
  papersOf,
  readPrintSettings,
  USUAL_PRINT_SETTINGS,
} from '../../../src/core/sheets/printSettings';

const CARD = { name: 'Card', width: 152.4, height: 101.6 };
const withCard = () => {
  const added = addPaper(USUAL_PRINT_SETTINGS, CARD);
  if (!added.ok) throw new Error('Expected the card to be added.');
  return added.value;
};

describe('readPrintSettings', () => {
  it('gives back what was kept, as text between', () => {
    const settings = { ...withCard(), margin: 8, owned: ['letter', 'a0'], loaded: 'own-1' };
    expect(readPrintSettings(JSON.parse(JSON.stringify(settings)))).toEqual(settings);
  });

  it.each([
    ['nothing', {}],
    ['a list', []],
    ['margins that no page has', { margin: 5 }],
    ['margins that leave no room', { margin: 31 }],
    ['a margin that is no number', { margin: '10' }],
    ['papers that are no list', { own: { id: 'own-1' }, owned: 'a4' }],
    ['a paper without a name', { own: [{ id: 'own-1', name: '', width: 100, height: 200 }] }],
    ['a paper of endless length', { own: [{ id: 'own-1', name: 'Roll', width: 100, height: 1e9 }] }],
    ['a paper that passes for a usual one', { own: [{ id: 'a4', name: 'A4', width: 100, height: 200 }] }],
    ['a paper in the printer that there is not', { loaded: 'own-9' }],
    ['no paper at all', { own: [null, 3, 'a4'] }],
  ])('takes the usual from %s', (_, kept) => expect(readPrintSettings(kept)).toEqual(USUAL_PRINT_SETTINGS));

  it('keeps twenty papers at most, and nothing but what a paper is made of', () => {
    const own = Array.from({ length: 30 }, (_, index) => ({
      id: `own-${index}`,
      name: `P${index}`,
      width: 100,
      height: 200,
      script: 'x',
    }));
    const read = readPrintSettings({ own });
    expect(read.own).toHaveLength(20);
    expect(Object.keys(read.own[0] ?? {})).toEqual(['id', 'name', 'width', 'height']);
  });
});

describe('papers to choose from', () => {
  it('are those that the maker owns first, each with the margin that was set', () => {
    const { first, others } = papersOf({ ...withCard(), margin: 7, owned: ['a3'] });
    expect(first.map(({ name }) => name)).toEqual(['A3', 'Card']);
    expect(others.map(({ id }) => id)).toContain('a4');
    expect(first.every(({ margin }) => margin === 7)).toBe(true);
  });

  it('fall back on the first when the chosen one is gone', () => {
    expect(paperOf(withCard(), 'own-1')).toMatchObject({ width: 101.6, height: 152.4 });
    expect(paperOf(USUAL_PRINT_SETTINGS, 'own-1').id).toBe('a4');
  });
});

describe('addPaper', () => {
  it('lays the paper upright and names it apart', () => {
    const twice = addPaper(withCard(), { name: ' Strip ', width: 90, height: 400 });
    expect(twice.ok && twice.value.own).toEqual([
      { id: 'own-1', name: 'Card', width: 101.6, height: 152.4 },
      { id: 'own-2', name: 'Strip', width: 90, height: 400 },
    ]);
  });

  it.each([
    ['paper.name', { ...CARD, name: ' ' }],
    ['paper.name', { ...CARD, name: 'x'.repeat(41) }],
    ['paper.name', { ...CARD, name: 'a4' }],
    ['paper.size', { ...CARD, width: 79 }],
    ['paper.size', { ...CARD, height: 5081 }],
    ['paper.size', { ...CARD, height: Number.NaN }],
  ])('refuses with %s: %o', (code, paper) => {
    const added = addPaper(USUAL_PRINT_SETTINGS, paper);
    expect(added.ok ? '' : added.issues[0]?.code).toBe(code);
  });
});
