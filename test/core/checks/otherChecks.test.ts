import { describe, expect, it } from 'vitest';
import { checkMessage } from '../../../src/core/checks/checkMessage';
import { finishLineCheck } from '../../../src/core/checks/finishLineCheck';
import type { Project } from '../../../src/core/document/types';
import { circlePath } from '../../../src/core/geom/circlePath';
import type { Path } from '../../../src/core/geom/types';
import { checkOf, checksOf } from './checksOf';
import { plainBridge as plain } from './plainBridge';

const toMm = (mm: number) => `${mm.toFixed(2)} mm`;
const has = (project: Project, id: string): boolean => checksOf(project).some((check) => check.id === id);

describe('pins-strings', () => {
  // Strings over 54 at the break points 647, and at the nut over 46 less 2 · 3 less a string of 0.6, so 39.4; pins 8 + 1.25
  // behind: 27 + 7.3 · 9.25 / 647 = 27.1044.
  it('carries the strings on to their pins', () => {
    const found = checkOf(plain({}, { spread: 54 }), 'pins-strings');
    expect(found.verdict).toBe('good');
    expect(found.lengths[0]).toBeCloseTo(0.1044, 4);
  });

  it('names the pin that stands aside', () => {
    const found = checkOf(plain({}, { spread: 50 }), 'pins-strings');
    expect(found.verdict).toBe('look');
    // 27.1044 − 25.
    expect(checkMessage(found, toMm)).toBe('Pin 1 stands 2.10 mm aside of its string 1; 1.50 mm at most is usual.');
    expect(found.at).toHaveLength(1);
  });
});

describe('strings-holes', () => {
  it('is not asked of one row', () => expect(has(plain(), 'strings-holes')).toBe(false));

  // Second row 10 behind the first, pins of 5 over 54: string 2, of 0.6, runs from 9 to pin 2 at 9, past pin 1 at 27 and
  // pin 3 at −9: nearest 18 off, less 2.5 and 0.3. Strings evenly spaced over 54 as well, nearly straight on.
  it('measures from each string to the rims of the other holes', () => {
    const found = checkOf(plain({}, { spread: 54, stagger: 10 }), 'strings-holes');
    expect(found.verdict).toBe('good');
    expect(found.lengths[0]).toBeCloseTo(18 - 2.5 - 0.3, 0);
  });

  it('is wrong where a string runs over another hole', () => {
    // Pins over 12, 4 apart: string 2, from 9, comes in to its pin at 2, 10 behind the row, past pin 1 at 6.
    const found = checkOf(plain({}, { spread: 12, stagger: 10 }), 'strings-holes');
    expect(found.verdict).toBe('wrong');
    expect(found.message).toMatch(/^String \d runs over pin \d by/);
  });
});

describe('symmetry', () => {
  const outline = (bulge: number): Path => ({
    start: { x: -80, y: 0 },
    segments: [
      { kind: 'line', to: { x: 80, y: 0 } },
      { kind: 'line', to: { x: 80, y: 26 } },
      { kind: 'cubic', c1: { x: 40, y: 26 }, c2: { x: 30, y: 36 + bulge }, to: { x: 0, y: 36 } },
      { kind: 'cubic', c1: { x: -30, y: 36 }, c2: { x: -40, y: 26 }, to: { x: -80, y: 26 } },
    ],
    closed: true,
  });
  const drawn = (bulge: number, symmetric = true): Project =>
    plain({}, null, { outline: { kind: 'drawn', path: outline(bulge), symmetric } });

  it('is good for a mirrored outline', () => {
    expect(checkOf(drawn(0), 'symmetry').verdict).toBe('good');
  });

  // A handle 0.5 off moves its curve by up to 3 · (¼) … of it, at t = ⅔: 3·(4/9)·(1/3)·0.5 = 0.222.
  it('finds a curve that its fellow does not mirror', () => {
    const found = checkOf(drawn(0.5), 'symmetry');
    expect(found.verdict).toBe('look');
    expect(found.lengths[0]).toBeGreaterThan(0.1);
    expect(found.lengths[0]).toBeLessThan(0.23);
  });

  it('is asked only where it is said to be symmetric', () => expect(has(drawn(0.5, false), 'symmetry')).toBe(false));
});

describe('finish-line', () => {
  const ring = circlePath({ x: 0, y: 0 }, 5);

  it.each<[number, readonly Path[], readonly string[]]>([
    [0, [], []],
    [1, [ring], ['good']],
    [1, [ring, ring], ['look']],
    [14, [], ['wrong']],
  ])('with a rim of %s and these lines is %s', (rim, lines, verdicts) => {
    expect(finishLineCheck(rim, lines).map(({ verdict }) => verdict)).toEqual(verdicts);
  });
});

describe('ties', () => {
  const ties = { kind: 'tie-block' as const, from: 6, spread: 54, hole: 1.8, rise: 4.5 };

  // 54 / 3 − 1.8; 6; 9.525 − 4.5 − 0.9 above, 4.5 − 0.9 beneath.
  it('have their walls measured', () => {
    const walls = ['ties-apart', 'ties-slot', 'ties-wall'].map((id) => checkOf(plain({}, null, { ties }), id));
    for (const [index, wall] of [16.2, 6, 3.6].entries()) expect(walls[index]?.lengths[0]).toBeCloseTo(wall, 9);
    expect(checkMessage(walls[2] ?? { message: '', lengths: [] }, toMm)).toBe(
      'String holes keep wood beneath them by 3.60 mm.',
    );
  });

  it('are wrong behind the bridge', () => {
    expect(checkOf(plain({}, null, { ties: { ...ties, from: 25 } }), 'ties-block').verdict).toBe('wrong');
  });
});
