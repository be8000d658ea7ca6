import type { LibraryEntry } from '../../../src/core/library/libraryEntry';

/** An entry of the library that is like this one but for what a test is about. */
export const inventedEntry = (change: Partial<LibraryEntry>): LibraryEntry => ({
  id: 'a',
  revision: 1,
  name: 'Wren 14',
  serial: null,
  parent: null,
  hand: 'right',
  scale: 632,
  shape: 'belly',
  strings: 6,
  kind: 'steel',
  words: '',
  pictures: [],
  created: '2026-01-01T09:00:00Z',
  changed: '2026-01-01T09:00:00Z',
  archived: false,
  ...change,
});
