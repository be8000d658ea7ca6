import { describe, expect, it } from 'vitest';
import { thinVersions } from '../../src/persistence/library/thinVersions';

const NOON = Date.parse('2026-03-01T12:00:00.000Z');

/** A state so many seconds before noon; the clock says so, the order is the place in the list. */
const state = (secondsAgo: number, order: number, name: string | null = null) => ({
  id: `v${order}`,
  at: new Date(NOON - secondsAgo * 1000).toISOString(),
  revision: order,
  name,
  project: 'demo',
  order,
  pictures: [],
});

/** What is left when a state comes each second for so long, thinned with each. */
const everySecond = (seconds: number): readonly number[] => {
  let kept: ReturnType<typeof state>[] = [];
  for (let second = 0; second <= seconds; second += 1) {
    kept = [...kept, state(seconds - second, second)];
    const gone = new Set(thinVersions(kept));
    kept = kept.filter((each) => !gone.has(each));
  }
  return kept.map(({ at }) => (NOON - Date.parse(at)) / 1000);
};

// Expected ages by hand from the spans: whole ten seconds in the last minute, whole minutes in the last quarter of an hour,
// then ten minutes, each span standing by its last second. Computed here.
describe('thinVersions', () => {
  it('leaves traces of work without a pause: the last minute closely, the quarter of an hour by minutes, then by ten', () => {
    const ages = everySecond(3600);
    expect(ages.at(-1)).toBe(0);
    expect(ages.filter((age) => age <= 60).length).toBeGreaterThanOrEqual(6);
    expect(ages.filter((age) => age > 60 && age < 900)).toHaveLength(14);
    expect(ages.filter((age) => age >= 900).length).toBeGreaterThanOrEqual(4);
    expect(Math.max(...ages)).toBeGreaterThanOrEqual(3000);
    expect(ages.length).toBeLessThanOrEqual(50);
  });

  it('keeps fifty at most, and lets no named one go', () => {
    const days = Array.from({ length: 80 }, (_, day) => state((79 - day) * 86_400, day));
    const gone = thinVersions([state(1, 99, 'as drawn'), ...days]);
    expect(gone).toHaveLength(30);
    expect(gone.map(({ id }) => id)).toContain('v0');
    expect(gone.map(({ id }) => id)).not.toContain('v99');
  });

  it('lets the newest stay when the clock was set back', () => {
    const gone = thinVersions([state(0, 1), state(86_400, 2), state(86_399, 3)]);
    expect(gone.map(({ id }) => id)).not.toContain('v3');
    expect(gone.map(({ id }) => id)).not.toContain('v1');
  });
});
