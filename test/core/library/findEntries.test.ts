import { describe, expect, it } from 'vitest';
import { ANY_ENTRY, findEntries, type LibraryFilter } from '../../../src/core/library/findEntries';
import { inventedEntry } from './inventedEntries';

const entries = [
  inventedEntry({ id: 'wren' }),
  inventedEntry({ id: 'no-9', serial: 'No. 9', parent: 'wren', words: 'Rosewood from Madagascar, bill 1131' }),
  inventedEntry({ id: 'no-10', serial: 'No. 10', parent: 'wren', words: 'Palo escrito, México', hand: 'left' }),
  inventedEntry({ id: 'dove', name: 'Dove', kind: 'classical', scale: 650, shape: 'tie-block' }),
  inventedEntry({
    id: 'finch',
    name: 'Finch',
    kind: 'ukulele',
    scale: 346,
    shape: 'drawn',
    strings: 4,
    archived: true,
  }),
  inventedEntry({ id: 'odd', name: 'Odd', scale: null }),
];

const ids = (change: Partial<LibraryFilter>): readonly string[] =>
  findEntries(entries, { ...ANY_ENTRY, ...change }).map(({ id }) => id);

describe('findEntries', () => {
  it('finds everything but the archived when nothing is asked for, in the order in which it came', () => {
    expect(ids({})).toEqual(['wren', 'no-9', 'no-10', 'dove', 'odd']);
  });

  it('finds words in name, number, notes, woods and origins, each of them somewhere', () => {
    expect(ids({ words: 'dove' })).toEqual(['dove']);
    expect(ids({ words: 'no. 10' })).toEqual(['no-10']);
    expect(ids({ words: '  WREN madagascar ' })).toEqual(['no-9']);
    expect(ids({ words: '1131' })).toEqual(['no-9']);
    expect(ids({ words: 'wren ebony' })).toEqual([]);
  });

  it('takes letters with and without accents for the same, however they are encoded', () => {
    expect(ids({ words: 'mexico' })).toEqual(['no-10']);
    expect(ids({ words: 'MÉXICO' })).toEqual(['no-10']);
    expect(ids({ words: 'Me\u0301xico' })).toEqual(['no-10']);
  });

  it('filters by each particular', () => {
    expect(ids({ of: 'models' })).toEqual(['wren', 'dove', 'odd']);
    expect(ids({ of: 'instruments' })).toEqual(['no-9', 'no-10']);
    expect(ids({ kind: 'classical' })).toEqual(['dove']);
    expect(ids({ hand: 'left' })).toEqual(['no-10']);
    expect(ids({ shape: 'tie-block' })).toEqual(['dove']);
    expect(ids({ strings: 4 })).toEqual([]);
    expect(ids({ strings: 4, archived: 'only' })).toEqual(['finch']);
    expect(ids({ archived: 'with' })).toHaveLength(6);
    expect(ids({ parent: 'wren' })).toEqual(['no-9', 'no-10']);
  });

  it('takes the ends of a range of scales as in it, and leaves out what has no scale', () => {
    expect(ids({ least: 632, most: 650 })).toEqual(['wren', 'no-9', 'no-10', 'dove']);
    expect(ids({ least: 632.1 })).toEqual(['dove']);
    expect(ids({ most: 632 })).toEqual(['wren', 'no-9', 'no-10']);
  });
});
