import { describe, expect, it } from 'vitest';
import type { HoleMatch } from '../../src/core/repair/types';
import { fillWords } from '../../src/ui/draw/repair/fillWords';
import { fine, signedFine } from '../../src/ui/draw/repair/fineLengths';
import { matchWords } from '../../src/ui/draw/repair/matchWords';
import { plainSide, sideWords, turnWords } from '../../src/ui/draw/repair/sideText';

const show = (mm: number): string => `${mm.toFixed(2)} mm`;

describe('sides in words', () => {
  it.each([
    ['0.5 bass', '-0.5'],
    ['1/32 in to the bass side', '-1/32 in'],
    ['0.5 mm to treble', '0.5 mm'],
    ['2 Treble side', '2'],
    ['-0.5', '-0.5'],
    ['', ''],
    ['1.5', '1.5'],
  ])('"%s" is "%s"', (text, plain) => expect(plainSide(text)).toBe(plain));

  it.each([
    [-0.5, '0.50 mm to the bass side.'],
    [2, '2.00 mm to the treble side.'],
    [0, 'In the middle.'],
  ])('%f', (mm, words) => expect(sideWords(mm, show)).toBe(words));

  it.each([
    [Math.PI / 180, 'The bass end lies farther back, by 1.00°.'],
    [-Math.PI / 360, 'The treble end lies farther back, by 0.50°.'],
    [0, 'Square to the centreline.'],
  ])('a turn of %f', (radians, words) => expect(turnWords(radians)).toBe(words));
});

describe('matchWords', () => {
  const match = (x: number, y: number, angle: number): HoleMatch => ({
    pairs: [],
    worstPlaced: 0,
    spread: { pins: 0, old: 0 },
    fit: { pose: { x: 0, y: 0, angle }, residuals: [], rms: 0, worst: 0 },
    shift: { x, y },
    costs: [
      { name: 'E', along: y, cents: -2.147 },
      { name: 'E', along: y, cents: 0.04 },
    ],
  });

  it('tells the move of the bridge and its cost', () => {
    expect(matchWords(match(-0.2, 0.8, Math.PI / 180), show)).toBe(
      'The holes match best with the bridge 0.80 mm toward the tail, 0.20 mm to the bass side, turned 1.00° with the treble end back. At the 12th fret that makes E −2.1 cents, E 0.0 cents (+ is sharp).',
    );
    expect(matchWords(match(0, -0.8, 0), show)).toContain('with the bridge 0.80 mm toward the nut. At');
  });

  it('says when there is no move', () => {
    expect(matchWords(match(0, 0, 0), show)).toBe('The holes match best with the bridge where the strings want it.');
  });
});

describe('fillWords', () => {
  const slot = {
    from: 'front' as const,
    distance: 6,
    aside: 0,
    slant: 0,
    length: 76.2,
    width: 3.2,
    depth: 6.5,
    ends: 'square' as const,
  };

  it('tells the strip and how the new slot lies to it', () => {
    expect(fillWords(slot, null, show)).toBe(
      'Fill strip: 3.20 mm wide, 6.50 mm deep, 76.20 mm long; grain along the bridge.',
    );
    expect(fillWords({ ...slot, ends: 'round' }, null, show)).toContain('its ends rounded to the slot');
    const fill = { shared: 140.4, beside: 70.2, wall: 1.5, at: [] };
    expect(fillWords(slot, { ...fill, lies: 'partly' }, show)).toContain(
      '140 mm² of it in the fill, 70 mm² in old wood',
    );
    expect(fillWords(slot, { ...fill, lies: 'inside' }, show)).toContain('wholly in the fill');
    expect(fillWords(slot, { ...fill, lies: 'clear' }, show)).toContain('1.50 mm of wood between');
  });
});

describe('fine lengths', () => {
  it('are read to a hundredth of a millimetre or a thousandth of an inch', () => {
    expect(fine(0.79375, 'mm')).toBe('0.79');
    expect(fine(0.79375, 'in')).toBe('0.031');
    expect(signedFine(-0.15875, 'mm')).toBe('−0.16');
    expect(signedFine(0.001, 'mm')).toBe('0.00');
  });
});
