import { describe, expect, it } from 'vitest';
import { boardOf, boardWidthAt } from '../../../src/core/instrument/boardOf';
import { scaleOf } from '../../../src/core/instrument/scaleOf';
import { stringPlaces } from '../../../src/core/instrument/stringPlaces';
import { plainStrings, steelProject } from '../document/steelProject';
import { valueOf as answerOf, codesOf } from '../document/valueOf';

const { instrument } = steelProject;
/** 640 with a board of 45 at the nut and 55 at the 12th (320): 65 at 640 by straight lines, 60 at 480. */
const straight = {
  ...instrument,
  scale: { from: 'entered' as const, entered: 640, readings: [] },
  widths: { nut: 45, twelfth: 55, last: null },
};
const strings = plainStrings([1, 1, 1]);

describe('scaleOf', () => {
  it('takes the entered scale when that counts', () => {
    const scale = answerOf(scaleOf(straight));
    expect(scale).toMatchObject({ scaleLength: 640, nutOffset: 0, from: 'entered', readings: 0 });
  });

  it('takes twice the mean reading when readings count, and tells how they spread', () => {
    const readings = [316, 316.1, 315.9].map((value) => ({ fret: 12, value }));
    const scale = answerOf(scaleOf({ ...instrument, scale: { from: 'readings', entered: 700, readings } }));
    expect(scale.scaleLength).toBeCloseTo(632, 10);
    expect(scale.readings).toBe(3);
    expect(scale.readingSpread).toBeCloseTo(0.2, 10);
  });

  // Frets laid out for 640 and 0.4 cut off the nut end: nut to 12th reads 319.6; the frets are still those of 640.
  it('takes a known nut offset off the readings first', () => {
    const scale = answerOf(
      scaleOf({
        ...instrument,
        nut: { datum: 'front', offset: -0.4, face: 0 },
        scale: { from: 'readings', entered: 700, readings: [{ fret: 12, value: 319.6 }] },
      }),
    );
    expect(scale.scaleLength).toBeCloseTo(640, 10);
    expect(scale.nutOffset).toBeCloseTo(-0.4, 10);
  });

  it('fails when readings should count and there are none', () => {
    expect(codesOf(scaleOf({ ...instrument, scale: { from: 'readings', entered: 640, readings: [] } }))).toEqual([
      'scale.none',
    ]);
  });
});

describe('boardOf', () => {
  const board = answerOf(boardOf(straight, answerOf(scaleOf(straight))));

  it('runs its edges straight through both widths', () => {
    expect(boardWidthAt(board, 0)).toBeCloseTo(45, 12);
    expect(boardWidthAt(board, 320)).toBeCloseTo(55, 12);
    expect(boardWidthAt(board, 640)).toBeCloseTo(65, 12);
    expect(boardWidthAt(board, 480)).toBeCloseTo(60, 12);
  });

  // 640 · (1 − 2^(−14/12)) = 640 · (1 − 0.445449359) = 354.912410
  it('knows the 12th fret, the fret at the body join and the octave line', () => {
    expect(board.twelfth).toBeCloseTo(320, 10);
    expect(board.bodyJoin).toBeCloseTo(354.91241, 5);
    expect(board.octave).toBeCloseTo(640, 10);
  });

  it('moves frets and octave line alike for a nut nearer the bridge', () => {
    const shortened = { ...straight, nut: { datum: 'board-end' as const, offset: -0.5, face: 0 } };
    const moved = answerOf(boardOf(shortened, answerOf(scaleOf(shortened))));
    expect(moved.twelfth).toBeCloseTo(319.5, 10);
    expect(moved.octave).toBeCloseTo(639.5, 10);
  });
});

describe('stringPlaces', () => {
  const board = answerOf(boardOf(straight, answerOf(scaleOf(straight))));

  // Margins 3 to the outside of strings 1 thick: 22.5 − 3.5 = 19 at the nut, 32.5 − 3.5 = 29 at the octave line.
  it('follows the board edges', () => {
    const places = answerOf(stringPlaces({ ...straight, spread: { from: 'edges', own: 10 } }, strings, board));
    expect(places.map(({ nutX }) => nutX)).toEqual([19, 0, -19]);
    for (const [index, x] of [29, 0, -29].entries()) expect(places[index]?.saddleX).toBeCloseTo(x, 10);
  });

  // Outer centres at ±27 whatever the gauges; equal gaps: outsides span 54 + (0.3048 + 1.3462) / 2 = 54.8255, gauges
  // add up to 4.5466, five gaps of 10.05578; string 2 lies 10.05578 + (0.3048 + 0.4064) / 2 inside string 1.
  it('keeps the own spacing of the outer centres, even about the centreline', () => {
    const gaps = { ...straight, gapRule: 'equal-gaps' as const, spread: { from: 'own' as const, own: 54 } };
    const places = answerOf(stringPlaces(gaps, steelProject.strings, board));
    expect(places[0]?.saddleX).toBeCloseTo(27, 10);
    expect(places[5]?.saddleX).toBeCloseTo(-27, 10);
    expect(places[1]?.saddleX).toBeCloseTo(27 - 10.05578 - 0.3556, 5);
    expect(places.map(({ id }) => id)).toEqual(['s1', 's2', 's3', 's4', 's5', 's6']);
  });

  /** The code, and the field that a maker can change. */
  const refusal = (...args: Parameters<typeof stringPlaces>) => {
    const found = stringPlaces(...args);
    return found.ok ? [] : found.issues.map(({ code, path }) => [code, path]);
  };
  const thick = strings.map((string) => ({ ...string, diameter: 6 }));

  it('fails when the strings do not fit at the nut', () => {
    const wide = { ...straight, gapRule: 'equal-gaps' as const, margins: { treble: 15, bass: 15 } };
    expect(refusal(wide, thick, board)).toEqual([['strings.tight', 'instrument.margins.treble']]);
  });

  it('fails when the strings do not fit at the saddle', () => {
    const tight = { ...straight, gapRule: 'equal-gaps' as const, spread: { from: 'own' as const, own: 10 } };
    expect(refusal(tight, thick, board)).toEqual([['strings.tight', 'instrument.spread.own']]);
    // Edges that close in toward the tail: 20 at 640 leave no room for three strings of 6 inside margins of 3.
    const closing = { ...board, taper: -25 / 640 };
    const edges = { ...straight, gapRule: 'equal-gaps' as const, spread: { from: 'edges' as const, own: 54 } };
    expect(refusal(edges, thick, closing)).toEqual([['strings.tight', 'instrument.margins.treble']]);
  });

  it('fails by the strings themselves when there is but one course', () => {
    const one = strings.map((string) => ({ ...string, course: 1 }));
    expect(refusal(straight, one, board)).toEqual([['strings.few', 'strings']]);
  });
});
