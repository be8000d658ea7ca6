import { describe, expect, it } from 'vitest';
import { bytesInWords } from '../../../src/ui/record/keeping/bytesInWords';
import { importedWords } from '../../../src/ui/record/keeping/importedWords';
import { entryLine, entryTitle } from '../../../src/ui/record/list/entryWords';
import { inventedEntry } from '../../core/library/inventedEntries';

describe('entryTitle', () => {
  it('tells a model from an instrument, with a number or without', () => {
    expect(entryTitle({ name: 'Wren 14', serial: null })).toBe('Wren 14');
    expect(entryTitle({ name: 'Wren 14', serial: 'No. 12' })).toBe('Wren 14, No. 12');
    expect(entryTitle({ name: 'Wren 14', serial: ' ' })).toBe('Wren 14, no number yet');
    expect(entryTitle({ name: '', serial: null })).toBe('Unnamed');
  });
});

describe('entryLine', () => {
  it('tells kind, scale, strings, hand and shape', () => {
    const line = (change: object): string => entryLine(inventedEntry(change), (mm) => `${mm} mm`);
    expect(line({})).toBe('Steel-string · 632 mm · 6 strings · right-handed · Belly, toward the tail');
    expect(line({ scale: null, hand: 'left', shape: 'drawn', kind: 'ukulele', strings: 4 })).toBe(
      'Ukulele · scale not known · 4 strings · left-handed · Drawn freely',
    );
  });
});

describe('bytesInWords', () => {
  it.each([
    [0, '0 bytes'],
    [999, '999 bytes'],
    [1000, '1.0 KB'],
    [9949, '9.9 KB'],
    [3_240_000, '3.2 MB'],
    [12_300_000, '12 MB'],
    [2_000_000_000, '2.0 GB'],
    [999_600, '1.0 MB'],
  ])('%i is %s', (bytes, words) => {
    expect(bytesInWords(bytes)).toBe(words);
  });
});

describe('importedWords', () => {
  it('tells only what happened', () => {
    expect(importedWords({ added: 0, copies: 0, same: 0 })).toBe('nothing new');
    expect(importedWords({ added: 2, copies: 0, same: 1 })).toBe('2 were added; 1 was here already, just the same');
    expect(importedWords({ added: 1, copies: 2, same: 0 })).toBe(
      '1 was added; 2 are here with other content and came as copies',
    );
  });
});
