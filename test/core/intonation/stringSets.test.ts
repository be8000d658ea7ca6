import { describe, expect, it } from 'vitest';
import { noteFrequency } from '../../../src/core/intonation/noteFrequency';
import { STRING_SETS } from '../../../src/core/intonation/stringSets';
import { stringTension } from '../../../src/core/intonation/stringTension';
import nylon from '../../reference/intonation-nylon.json';
import { WORKED } from '../../reference/intonation-worked';

const setOf = (id: string) => {
  const set = STRING_SETS.find((candidate) => candidate.id === id);
  if (!set) throw new Error(`no set ${id}`);
  return set;
};

describe('string sets', () => {
  it('have ids of their own, courses in order and a source beside every figure', () => {
    expect(new Set(STRING_SETS.map(({ id }) => id)).size).toBe(STRING_SETS.length);
    for (const { strings } of STRING_SETS) {
      expect(new Set(strings.map(({ name }) => name)).size).toBe(strings.length);
      let course = 1;
      for (const string of strings) {
        expect([course, course + 1]).toContain(string.course);
        course = string.course;
        for (const { says } of Object.values(string.sources)) expect(says.length).toBeGreaterThan(10);
      }
    }
  });

  it.each([
    ['steel-10-47', [10, 14, 23, 30, 39, 47]],
    ['steel-11-52', [11, 15, 22, 32, 42, 52]],
    ['steel-12-53', [12, 16, 24, 32, 42, 53]],
    ['steel-13-56', [13, 17, 26, 35, 45, 56]],
  ] as const)('%s has the gauges of its kind (from memory)', (id, gauges) => {
    expect(setOf(id).strings.map(({ diameter }) => Math.round((diameter / 25.4) * 1000))).toEqual(gauges);
  });

  // Independent evaluation at 645 mm, printed to 0.1 N.
  it('12-53 pulls as the worked example says', () => {
    setOf('steel-12-53').strings.forEach(({ massPerLength, frequency }, i) => {
      expect(Math.abs(stringTension(massPerLength, 645, frequency) - (WORKED.tension[i] as number))).toBeLessThan(0.06);
    });
  });

  it.each([
    ['nylon-normal', 'nylon normal'],
    ['nylon-hard', 'nylon hard'],
    ['carbon-normal', 'carbon normal'],
  ])('%s carries the published figures', (id, name) => {
    const rows = nylon.sets.find((set) => set.name === name)?.strings ?? [];
    expect(rows).toHaveLength(6);
    expect(setOf(id).strings.map(({ diameter, massPerLength, elastic }) => [diameter, massPerLength, elastic])).toEqual(
      rows.map((row) => [
        2 * row.radius_mm,
        row.massPerLength_g_per_m,
        expect.objectContaining({ kind: 'measured', kappa: row.kappa, b0: row.b0 }),
      ]),
    );
  });

  it('has twelve strings in six courses, octaves in the lower four', () => {
    const { strings } = setOf('steel-twelve-10-47');
    const ratios = [1, 2, 3, 4, 5, 6].map((course) => {
      const [first, second] = strings.filter((string) => string.course === course);
      return Math.round((1e6 * (second?.frequency ?? Number.NaN)) / (first?.frequency ?? Number.NaN)) / 1e6;
    });
    expect(ratios).toEqual([1, 1, 2, 2, 2, 2]);
  });

  // Sanity of estimates, common practice, no source: a ukulele string pulls 15 to 60 N, a steel guitar string 60 to 170 N.
  it.each(STRING_SETS.map((set) => [set.id, set] as const))(
    '%s pulls like its kind',
    (id, { scaleLength, strings }) => {
      const [low, high] = id.startsWith('ukulele') ? [15, 60] : [50, 170];
      for (const { massPerLength, frequency } of strings) {
        const tension = stringTension(massPerLength, scaleLength, frequency);
        expect(tension).toBeGreaterThan(low as number);
        expect(tension).toBeLessThan(high as number);
      }
    },
  );
});

describe('noteFrequency', () => {
  // ISO 16: A4 = 440; the others as any table of equal temperament prints them.
  it.each([
    ['A4', 440],
    ['E4', 329.628],
    ['B3', 246.942],
    ['C4', 261.626],
    ['E2', 82.407],
    ['F#3', 184.997],
    ['B1', 61.735],
  ])('%s', (note, hertz) => expect(noteFrequency(note)).toBeCloseTo(hertz, 3));
  it.each(['', 'H2', 'E', 'E44', 'Ex'])('refuses "%s"', (note) =>
    expect(() => noteFrequency(note)).toThrow(RangeError),
  );
});
