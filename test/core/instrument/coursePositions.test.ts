import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { boardOf } from '../../../src/core/instrument/boardOf';
import { type CoursePositionsArguments, coursePositions } from '../../../src/core/instrument/coursePositions';
import { scaleOf } from '../../../src/core/instrument/scaleOf';
import { stringPlaces } from '../../../src/core/instrument/stringPlaces';
import { stringPositions } from '../../../src/core/instrument/stringPositions';
import { TWELVE_55 } from '../../reference/bench';
import { plainStrings, steelProject } from '../document/steelProject';
import { valueOf as answerOf, codesOf } from '../document/valueOf';

const PAIRS = [1, 1, 2, 2, 3, 3, 4, 4, 5, 5, 6, 6];
/** A twelve-string's gauges, thousandths of an inch: thick and thin in one course. */
const GAUGES = [10, 10, 14, 14, 23, 8, 30, 12, 39, 17, 47, 26].map((thousandths) => (thousandths / 1000) * 25.4);
const expectPlaces = (places: readonly number[], expected: readonly number[]): void => {
  expect(places).toHaveLength(expected.length);
  for (const [index, x] of expected.entries()) expect(places[index]).toBeCloseTo(x, 10);
};

describe('coursePositions, equal centres', () => {
  const { instrument } = steelProject;
  const scale = answerOf(scaleOf(instrument));
  const board = answerOf(boardOf(instrument, scale));
  const placesOf = (gauges: readonly number[], gapRule: 'equal-centres' | 'equal-gaps', pairGap = 2) =>
    stringPlaces(
      { ...instrument, gapRule, pairGap, spread: { from: 'own', own: 55 } },
      plainStrings(gauges).map((string, index) => ({ ...string, course: PAIRS[index] ?? 0 })),
      board,
    );

  it.each([
    ['strings of one thickness', Array.from({ length: 12 }, () => 0.3)],
    ['a twelve-string’s gauges, which equal centres ignore', GAUGES],
  ])('lie as a maker works them out, with %s', (_, gauges) => {
    const places = answerOf(placesOf(gauges, 'equal-centres')).map(({ saddleX }) => saddleX);
    expectPlaces(places, TWELVE_55.places);
    // From the first string of a course to the first of the next.
    expect((places[0] ?? 0) - (places[2] ?? 0)).toBeCloseTo(TWELVE_55.coursePitch, 10);
  });

  // Wound 47 and its octave of 26 thousandths: (1.1938 + 0.6604) / 2 = 0.9271; they touch when set 0.927 apart, not at 0.928.
  it('fail where the strings of a pair touch, at the field for it', () => {
    const touching = placesOf(GAUGES, 'equal-centres', 0.927);
    expect(codesOf(touching)).toEqual(['strings.pair']);
    expect(touching.ok ? '' : touching.issues[0]?.path).toBe('instrument.pairGap');
    expect(placesOf(GAUGES, 'equal-centres', 0.928).ok).toBe(true);
    expect(codesOf(placesOf(GAUGES, 'equal-gaps', 0.927))).toEqual(['strings.pair']);
  });

  it('leave one string in a course in the middle of it', () => {
    // Four strings in three courses, the middle one a pair: outer ±20, the pair about 0.
    const args = { width: 41, marginTreble: 0, marginBass: 0, diameters: [1, 1, 1, 1], pairGap: 2 };
    const places = answerOf(coursePositions({ ...args, courses: [1, 2, 2, 3], rule: 'equal-centres' }));
    expectPlaces(places, [20, 1, -1, -20]);
  });
});

describe('coursePositions, equal gaps', () => {
  it('leaves the same air between the outsides of the courses, and pairs as far apart as asked', () => {
    const args: CoursePositionsArguments = {
      width: 60,
      marginTreble: 3,
      marginBass: 4,
      diameters: GAUGES,
      courses: PAIRS,
      pairGap: 2,
      rule: 'equal-gaps',
    };
    const places = answerOf(coursePositions(args));
    // Board edge to the outsides of the outer strings.
    expect(30 - (places[0] ?? 0) - 0.254 / 2).toBeCloseTo(3, 10);
    expect((places[11] ?? 0) - 0.6604 / 2 + 30).toBeCloseTo(4, 10);
    const air = (index: number): number =>
      (places[index] ?? 0) - (places[index + 1] ?? 0) - ((GAUGES[index] ?? 0) + (GAUGES[index + 1] ?? 0)) / 2;
    for (const index of [0, 2, 4, 6, 8, 10]) expect((places[index] ?? 0) - (places[index + 1] ?? 0)).toBeCloseTo(2, 10);
    // 53 over all, less six courses that are 2 and half of both their strings' thickness wide, by five gaps: all alike.
    for (const index of [3, 5, 7, 9]) expect(air(index)).toBeCloseTo(air(1), 10);
    const thickness = GAUGES.reduce((sum, each) => sum + each, 0);
    expect(air(1)).toBeCloseTo((53 - 6 * 2 - thickness / 2) / 5, 10);
  });
});

describe('coursePositions, single strings', () => {
  it('are those of stringPositions by either rule', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.5, max: 6, noNaN: true }),
        fc.double({ min: 0.5, max: 6, noNaN: true }),
        fc.array(fc.double({ min: 0.2, max: 1.5, noNaN: true }), { minLength: 2, maxLength: 10 }),
        fc.constantFrom('equal-gaps' as const, 'equal-centres' as const),
        (marginTreble, marginBass, diameters, rule) => {
          const args = { width: 50, marginTreble, marginBass, diameters, rule };
          const courses = diameters.map((_, index) => index + 1);
          const single = answerOf(coursePositions({ ...args, courses, pairGap: 2 }));
          expectPlaces(single, answerOf(stringPositions(args)));
        },
      ),
      { seed: 3, numRuns: 200 },
    );
  });

  it('fail as stringPositions does', () => {
    const args = { width: 10, marginTreble: 6, marginBass: 6, diameters: [1, 1], rule: 'equal-gaps' } as const;
    expect(codesOf(coursePositions({ ...args, courses: [1, 2], pairGap: 2 }))).toEqual(['strings.tight']);
    expect(codesOf(coursePositions({ ...args, diameters: [], courses: [], pairGap: 2 }))).toEqual(['strings.few']);
  });
});
