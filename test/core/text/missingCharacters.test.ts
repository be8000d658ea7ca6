import { describe, expect, it } from 'vitest';
import { missingCharacters } from '../../../src/core/text/missingCharacters';
import { printableText } from '../../../src/core/text/printableText';

describe('missingCharacters', () => {
  it('names each lacking character once, in order, a pair of surrogates as one', () => {
    expect(missingCharacters('Kōa 木目 木 🎸 1/8″')).toEqual(['木', '目', '🎸']);
  });

  it('has nothing to say of Latin, Greek, Cyrillic, accents typed apart, tabs and line breaks', () => {
    expect(missingCharacters('Fi\u0301g\tπ\nЖук\r\n½″')).toEqual([]);
  });
});

describe('printableText', () => {
  it('puts a box for each lacking character and leaves the rest', () => {
    expect(printableText('木 1/8″ 🎸')).toBe('□ 1/8″ □');
  });

  it('makes one line of several', () => {
    expect(printableText('one\r\n\ttwo')).toBe('one two');
  });
});
