import { describe, expect, it } from 'vitest';
import { crc32 } from '../../../src/exporters/zip/crc32';
import { makeZip } from '../../../src/exporters/zip/makeZip';

const text = (words: string): Uint8Array => new TextEncoder().encode(words);

describe('crc32', () => {
  // The check value of CRC-32/ISO-HDLC for the digits 1 to 9, and that of nothing. Source: RevEng's catalogue, from memory.
  it('has the published check value', () => {
    expect(crc32(text('123456789'))).toBe(0xcbf43926);
    expect(crc32(text(''))).toBe(0);
  });

  // Source: the ITU's pangram sum 0x414FA339, quoted in many manuals, from memory.
  it('has the well-known sum of the quick brown fox', () =>
    expect(crc32(text('The quick brown fox jumps over the lazy dog'))).toBe(0x414fa339));
});

describe('makeZip', () => {
  // Written out by hand after APPNOTE 4.3: local header of 30 bytes, name, content; central header of 46; end of 22.
  it('writes one file byte for byte as the format has it', () => {
    const made = makeZip([{ name: 'a', bytes: text('123456789') }], '2026-01-02');
    if (!made.ok) throw new Error('Expected a zip file.');
    const hex = Array.from(made.value, (byte) => byte.toString(16).padStart(2, '0')).join('');
    // 2026 − 1980 = 46: 46 · 512 + 1 · 32 + 2 = 23586 = 0x5C22. The sum is 0xCBF43926.
    const told = '1400000800000000225c2639f4cb090000000900000001000000';
    expect(hex).toBe(
      `504b0304${told}61313233343536373839` +
        `504b01021400${told}000000000000000000000000000061` +
        '504b0506000000000100010' +
        '02f000000280000000000',
    );
  });

  it.each([
    ['a folder', ['a/b.pdf']],
    ['the way out of one', ['..']],
    ['no name', ['']],
    ['a name twice', ['a.pdf', 'a.pdf']],
    ['a backslash', ['a\\b.pdf']],
  ])('refuses %s', (_, names) => {
    const made = makeZip(
      names.map((name) => ({ name, bytes: text('x') })),
      '2026-01-02',
    );
    expect(made.ok ? '' : made.issues[0]?.code).toBe('zip.name');
  });
});
