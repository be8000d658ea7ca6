import { describe, expect, it } from 'vitest';
import { centsText } from '../../../../src/ui/record/stringUp/centsText';
import { parseCents } from '../../../../src/ui/record/stringUp/parseCents';
import { parseFrets } from '../../../../src/ui/record/stringUp/parseFrets';
import { valueOf as answerOf, codesOf } from '../../../core/document/valueOf';

describe('parseCents', () => {
  it.each([
    ['3', 3],
    ['+3', 3],
    ['+ 3', 3],
    ['-2.5', -2.5],
    ['−2,5', -2.5],
    ['– 4', -4],
    ['.5', 0.5],
    ['3 sharp', 3],
    ['3 Flat', -3],
    ['2.5 cents flat', -2.5],
    ['+1c', 1],
    ['-0', 0],
    ['100', 100],
    ['  ', null],
  ])('reads %j as %s', (text, cents) => {
    expect(answerOf(parseCents(text))).toBe(cents);
  });

  it.each([
    ['abc', 'cents.wrong'],
    ['3..2', 'cents.wrong'],
    ['1e2', 'cents.wrong'],
    ['--3', 'cents.wrong'],
    ['3 mm', 'cents.wrong'],
    ['-3 flat', 'cents.twice'],
    ['101', 'cents.range'],
    ['-100.5', 'cents.range'],
  ])('refuses %j', (text, code) => {
    expect(codesOf(parseCents(text))).toEqual([code]);
  });

  it('says what was expected', () => {
    const read = parseCents('flat');
    expect(read.ok ? [] : read.issues.map(({ message }) => message)).toEqual([
      '“flat” is no cents: type a figure with its sign, such as +3 or −2.5.',
    ]);
  });
});

describe('centsText', () => {
  it.each([
    [undefined, ''],
    [0, '0'],
    [3, '+3'],
    [-2.5, '−2.5'],
    [1.239, '+1.24'],
  ])('writes %s as %j', (cents, text) => {
    expect(centsText(cents)).toBe(text);
  });
});

describe('parseFrets', () => {
  it.each([
    ['12', [12]],
    ['5, 7, 12', [5, 7, 12]],
    ['12 7;5 12', [5, 7, 12]],
  ])('reads %j', (text, frets) => {
    expect(answerOf(parseFrets(text))).toEqual(frets);
  });

  it.each([
    ['', 'frets.none'],
    [' , ', 'frets.none'],
    ['0', 'frets.wrong'],
    ['25', 'frets.wrong'],
    ['12.5', 'frets.wrong'],
    ['twelve', 'frets.wrong'],
    ['1 2 3 4 5 6 7', 'frets.many'],
  ])('refuses %j', (text, code) => {
    expect(codesOf(parseFrets(text))).toEqual([code]);
  });
});
