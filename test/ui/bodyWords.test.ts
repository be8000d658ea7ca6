import { describe, expect, it } from 'vitest';
import { alongWords, plainAlong } from '../../src/ui/draw/body/alongText';
import { bodySideWords, plainBodySide } from '../../src/ui/draw/body/bodySideText';

const show = (mm: number): string => `${mm.toFixed(1)} mm`;

describe('plainAlong', () => {
  it.each([
    ['12', '12'],
    ['-12', '-12'],
    ['12 behind', '12'],
    ['12 ahead', '-12'],
    ['1 1/2 in ahead of the octave line', '-1 1/2 in'],
    ['3/4 behind the front edge', '3/4'],
    ['20 before the nut', '-20'],
    ['ahead', '-'],
    ['12 beside', '12 beside'],
  ])('%s is %s', (text, plain) => expect(plainAlong(text)).toBe(plain));
});

describe('alongWords', () => {
  it('tell a place from the line it is read from, and from the nut', () => {
    expect(alongWords(633, 'octave', 645, show)).toBe('12.0 mm ahead of the octave line; 633.0 mm from the nut.');
    expect(alongWords(660, 'front', 640, show)).toBe('20.0 mm behind the bridge’s front edge; 660.0 mm from the nut.');
    expect(alongWords(645, 'octave', 645, show)).toBe('On the octave line; 645.0 mm from the nut.');
    expect(alongWords(645, 'nut', 0, show)).toBe('');
  });
});

describe('sides of a body', () => {
  it.each([
    ['38 bass', 'right', '-38'],
    ['38 treble', 'left', '38'],
    // Seen from the front with the nut up, the bass side of a right-handed body is on the left.
    ['38 left', 'right', '-38'],
    ['38 right', 'right', '38'],
    ['38 left', 'left', '38'],
    ['1 1/2 to the right', 'left', '-1 1/2'],
    ['-38', 'right', '-38'],
  ] as const)('%s on a %s-handed body is %s', (text, hand, plain) => expect(plainBodySide(text, hand)).toBe(plain));

  it.each([
    [-38, 'right', '38.0 mm to the bass side, left as seen from the front.'],
    [38, 'right', '38.0 mm to the treble side, right as seen from the front.'],
    [-38, 'left', '38.0 mm to the bass side, right as seen from the front.'],
    [0, 'left', 'On the centreline.'],
  ] as const)('%f on a %s-handed body', (x, hand, words) => expect(bodySideWords(x, hand, show)).toBe(words));
});
