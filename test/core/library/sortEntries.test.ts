import { describe, expect, it } from 'vitest';
import type { LibraryEntry } from '../../../src/core/library/libraryEntry';
import { type LibraryOrder, sortEntries } from '../../../src/core/library/sortEntries';
import { inventedEntry } from './inventedEntries';

const entries: readonly LibraryEntry[] = [
  inventedEntry({ id: 'a', name: 'Wren 14', serial: 'No. 10', scale: 632, changed: '2026-02-01T00:00:00Z' }),
  inventedEntry({ id: 'b', name: 'Wren 9', serial: null, scale: null, changed: '2026-02-03T00:00:00Z' }),
  inventedEntry({ id: 'c', name: 'wren 14', serial: 'No. 9', scale: 630, changed: '2026-02-02T00:00:00Z' }),
  inventedEntry({ id: 'd', name: 'Dove', serial: null, scale: 650, created: '2026-03-01T00:00:00Z' }),
];

const ids = (order: LibraryOrder): string =>
  sortEntries(entries, order)
    .map(({ id }) => id)
    .join('');

describe('sortEntries', () => {
  it('puts the latest first', () => {
    expect(ids('changed')).toBe('bcad');
    expect(ids('created')).toBe('dabc');
  });

  it('counts numbers in names as numbers, whatever the size of letters', () => {
    expect(ids('name')).toBe('dbca');
  });

  it('puts models after what is numbered, and what has no scale last', () => {
    expect(ids('serial')).toBe('cadb');
    expect(ids('scale')).toBe('cadb');
  });

  it('gives the same order however the entries came', () => {
    expect(sortEntries([...entries].reverse(), 'name')).toEqual(sortEntries(entries, 'name'));
  });
});
