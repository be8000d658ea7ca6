import { describe, expect, it } from 'vitest';
import { newBuild } from '../../../../src/core/document/newBuild';
import { usualParameters } from '../../../../src/core/document/shapeParameters';
import type { Project } from '../../../../src/core/document/types';
import { namedPair, pairName } from '../../../../src/core/placement/reading/cornerLines';
import { dropped } from '../../../../src/core/placement/reading/dropped';
import { setHand } from '../../../../src/store/commands/setHand';
import { steelProject, steelWith } from '../../document/steelProject';
import { valueOf as answerOf } from '../../document/valueOf';
import { lineOf, linesOf, readCaseOf } from './readCaseOf';

const MM = { unit: 'mm', decimals: 1 } as const;
const FLAT = { by: 'top', angle: 0, height: 0 } as const;

const withDrop = (project: Project, drop: NonNullable<Project['build']>['drop']): Project => ({
  ...project,
  build: { ...newBuild(), drop },
});

/**
 * An instrument of our own invention: scale 632, board 46 at the nut and 57 at the 12th fret, body join there, a square-ended
 * bridge 152.4 long whose front edge lies 625.8 from the nut.
 */
const squareEnded = (): Project => {
  const base = steelWith({
    instrument: {
      scale: { from: 'entered', entered: 632, readings: [] },
      widths: { nut: 46, twelfth: 57, last: null },
      frets: { count: 20, bodyJoin: 12 },
    },
    bridge: { outline: { shape: 'rectangular', parameters: { length: 152.4, full: 25.4, corner: 0 } } },
  });
  const { slot } = readCaseOf(base);
  const { bridge } = base;
  return withDrop({ ...base, bridge: { ...bridge, slot: { ...bridge.slot, fromFront: slot.front - 625.8 } } }, FLAT);
};

describe('readLines', () => {
  it('expects what hand arithmetic gives from fret ends and nut corners', () => {
    const read = readCaseOf(squareEnded());
    // √(309.8² + 47.7²), √(309.8² + 104.7²); √(625.8² + 53.2²), √(625.8² + 99.2²).
    expect(lineOf(read, 'twelfth-treble-to-front-treble').expected).toBeCloseTo(313.45, 2);
    expect(lineOf(read, 'twelfth-bass-to-front-treble').expected).toBeCloseTo(327.01, 2);
    expect(lineOf(read, 'nut-bass-to-front-bass').expected).toBeCloseTo(628.06, 2);
    expect(lineOf(read, 'nut-bass-to-front-treble').expected).toBeCloseTo(633.61, 2);
    expect(linesOf(read).filter(({ id }) => id.startsWith('join-'))).toEqual([]);
  });

  it('allows for the height that a rule rises by', () => {
    const read = readCaseOf(withDrop(squareEnded(), { by: 'top', angle: 0, height: 10 }));
    // √(313.45² + 10²) = 313.61; the plan figure itself is not rounded.
    const line = lineOf(read, 'twelfth-treble-to-front-treble');
    expect(line.expected).toBeCloseTo(Math.sqrt(309.8 ** 2 + 47.7 ** 2 + 100), 9);
    expect(line.how).toContain('one end 10.0 mm higher: 0.16 mm longer than on the plan');
  });

  // A bridge stands square to its top. Below frets that rise by 1.5° its corner, 10 mm down, comes 10 · sin 1.5° = 0.2618 mm
  // nearer the nut on their plane: √((309.8 − 0.2618)² + 47.7² + 10²) = 313.3516 (python3, math).
  it('allows for the lean of the neck as well', () => {
    const angle = (1.5 * Math.PI) / 180;
    const read = readCaseOf(withDrop(squareEnded(), { by: 'top', angle, height: 10 }));
    expect(lineOf(read, 'twelfth-treble-to-front-treble').expected).toBeCloseTo(313.3516, 4);
    // The same in the frame of the top: the fret end 10 − 309.8 · sin 1.5° = 1.8903 over it, 309.8 · cos 1.5° = 309.6938
    // away: √(309.6938² + 47.7² + 1.8903²) = 313.3514; both leave out what is smaller than a hair.
    expect(lineOf(read, 'twelfth-treble-to-front-treble').expected).toBeCloseTo(313.3514, 3);
  });

  it('has the square line of the template at its round figure, from both datums', () => {
    // The front edge at 625.8 leaves 15 mm to 610 (common practice, no source); the 12th fret lies at 316.
    const read = readCaseOf(squareEnded());
    for (const side of ['treble', 'bass']) {
      expect(lineOf(read, `nut-square-${side}`).expected).toBeCloseTo(610, 9);
      expect(lineOf(read, `twelfth-square-${side}`).expected).toBeCloseTo(294, 9);
    }
  });

  it('reads to the front edge only where that is straight', () => {
    const has = (project: Project): boolean =>
      linesOf(readCaseOf(project)).some(({ id }) => id === 'twelfth-front-bass');
    expect(has(squareEnded())).toBe(true);
    const bowed = { shape: 'belly-nut', parameters: usualParameters('belly-nut') } as const;
    expect(has(steelWith({ bridge: { outline: bowed } }))).toBe(false);
  });

  it('puts right what a square held to the rule reads short', () => {
    // 10 · sin 1.5° = 0.2618 mm; 2.68 cents a mm at 645 (trade arithmetic) make 0.70 of it.
    const angle = (1.5 * Math.PI) / 180;
    const { by, words } = dropped({ by: 'rule', angle, height: 10 }, 2.684, MM);
    expect(by).toBeCloseTo(0.2618, 4);
    expect(words).toContain('0.26 mm added (0.7 cents)');
    expect(dropped({ by: 'top', angle, height: 10 }, 2.684, MM).by).toBe(0);
    const plain = readCaseOf(withDrop(steelProject, { by: 'top', angle, height: 10 }));
    const held = readCaseOf(withDrop(steelProject, { by: 'rule', angle, height: 10 }));
    const id = 'nut-square-treble';
    expect(lineOf(plain, id).expected - lineOf(held, id).expected).toBeCloseTo(0.2618, 4);
    // The slot lies on the bridge's face, 10 − 9.525 = 0.475 below: 0.0124.
    const slot = 'nut-slot-treble';
    expect(lineOf(plain, slot).expected - lineOf(held, slot).expected).toBeCloseTo(0.0124, 4);
    // What is read there comes out the same.
    const of = (read: typeof plain) => lineOf(read, id).reading(lineOf(read, id).expected, 0.3).value;
    expect(of(held)).toBeCloseTo(of(plain), 12);
  });

  it('has the slot at the outer strings from both datums, a scale apart by the 12th fret', () => {
    const read = readCaseOf(steelProject);
    for (const side of ['treble', 'bass'])
      expect(lineOf(read, `nut-slot-${side}`).expected - lineOf(read, `twelfth-slot-${side}`).expected).toBeCloseTo(
        read.board.twelfth,
        9,
      );
  });

  it('expects nothing over or under of the stick, and nothing longer in a straight bridge', () => {
    const read = readCaseOf(squareEnded());
    for (const id of ['stick-treble', 'stick-bass', 'longer-straight', 'longer-across'])
      expect(lineOf(read, id).expected).toBeCloseTo(0, 9);
  });

  it('gives the same figures and words for either hand', () => {
    const told = (project: Project) =>
      linesOf(readCaseOf(project)).map(({ id, label, expected }) => [id, label, expected]);
    expect(told(answerOf(setHand(steelProject, 'left')))).toEqual(told(steelProject));
  });

  it('knows a distance between any two of its points, and none of others', () => {
    const read = readCaseOf(squareEnded());
    expect(namedPair(read, pairName('twelfth-treble', 'front-treble'))?.expected).toBeCloseTo(313.45, 2);
    expect(namedPair(read, pairName('twelfth-treble', 'nowhere'))).toBeNull();
    expect(namedPair(read, 'twelfth-slot-treble')).toBeNull();
  });

  it('expects every line to come back as the planned place', () => {
    for (const project of [steelProject, squareEnded()]) {
      const ids = linesOf(readCaseOf(project)).map(({ id }) => id);
      expect(new Set(ids).size).toBe(ids.length);
      expect(ids.length).toBeGreaterThan(20);
    }
  });
});
