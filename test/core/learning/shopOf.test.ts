import { describe, expect, it } from 'vitest';
import type { Project } from '../../../src/core/document/types';
import { type Likeness, type NextOne, USUAL_LIKENESS } from '../../../src/core/learning/likeness';
import { shopOf } from '../../../src/core/learning/shopOf';
import { whatToExpect } from '../../../src/core/learning/whatToExpect';
import { steelProject } from '../document/steelProject';
import { atTwelfth, stringUp, strung } from './strung';

const cents = atTwelfth([1, 1, 1, 1, 1, 1]);
const next: NextOne = { kind: 'steel', scaleLength: 645, strings: steelProject.strings, model: 'p1' };
let number = 0;
const one = (changes: Partial<Project> = {}): Project => {
  number += 1;
  return strung([stringUp({ id: `u${number}`, cents })], { id: `i${number}`, ...changes });
};
const scaled = (entered: number): Partial<Project> => ({
  instrument: { ...steelProject.instrument, scale: { ...steelProject.instrument.scale, entered } },
});
const strings = (change: (diameter: number, frequency: number) => object): Partial<Project> => ({
  strings: steelProject.strings.map((string) => ({ ...string, ...change(string.diameter, string.frequency) })),
});
const asideOf = (project: Project, likeness: Partial<Likeness> = {}) =>
  shopOf([project], next, { ...USUAL_LIKENESS, ...likeness }).aside;

describe('shopOf', () => {
  it('counts each strung instrument of like kind once, the first one strung first', () => {
    const late = strung([stringUp({ id: 'late', at: '2026-05-01T00:00:00.000Z', cents })], { id: 'late' });
    const early = strung([stringUp({ id: 'early', at: '2026-01-01T00:00:00.000Z', cents })], { id: 'early' });
    const copy: Project = { ...early, id: 'copy', about: { ...early.about, created: '2026-09-09T00:00:00.000Z' } };
    const { outcomes, aside } = shopOf([copy, late, early, steelProject], next, USUAL_LIKENESS);
    expect(outcomes.map(({ id }) => id)).toEqual(['early', 'late']);
    expect(aside).toEqual({ copy: 1 });
  });

  it.each([
    ['another kind', { height: { ...steelProject.height, kind: 'classical' } }, { kind: 1 }],
    ['fewer strings', { strings: steelProject.strings.slice(0, 5) }, { count: 1 }],
    ['a whole tone lower', strings((_, frequency) => ({ frequency: frequency / 2 ** (2 / 12) })), { pitches: 1 }],
    ['a thousandth of an inch thicker', strings((diameter) => ({ diameter: diameter + 0.0254 })), { gauges: 1 }],
    ['a scale 11 mm longer', scaled(656), { scale: 1 }],
    ['nothing read', { build: strung([stringUp()]).build }, { unread: 1 }],
  ] as const)('leaves aside %s, and says why', (_, changes, aside) => {
    expect(asideOf(one(changes as Partial<Project>))).toEqual(aside);
  });

  it('widens and narrows as the maker says', () => {
    expect(asideOf(one(scaled(656)), { scaleWithin: 11 })).toEqual({});
    expect(asideOf(one(scaled(654)))).toEqual({});
    const thicker = one(strings((diameter) => ({ diameter: diameter + 0.0254 })));
    expect(asideOf(thicker, { strings: 'pitches' })).toEqual({});
    const lower = one(strings((_, frequency) => ({ frequency: frequency / 2 ** (2 / 12) })));
    expect(asideOf(lower, { strings: 'count' })).toEqual({});
    const of = (id: string | null): Project =>
      one({ about: { ...steelProject.about, parent: id === null ? null : { id, revision: 1 } } });
    expect(asideOf(of('p1'), { model: 'same' })).toEqual({});
    expect(asideOf(of('other'), { model: 'same' })).toEqual({ model: 1 });
    expect(asideOf(of(null), { model: 'same' })).toEqual({ model: 1 });
  });

  it('goes on past an instrument that cannot be computed', () => {
    const broken = one({ setup: { ...steelProject.setup, relief: 400 } });
    expect(shopOf([broken, one()], next, USUAL_LIKENESS)).toMatchObject({
      outcomes: [expect.anything()],
      aside: { failed: 1 },
    });
  });
});

describe('whatToExpect', () => {
  const models = steelProject.strings.map(({ id, name }) => ({ id, name, saddle: 2, sigma: 0.3 }));

  it('has no figure for a string that was never read, and says what one instrument changes', () => {
    const partly = strung([stringUp({ id: 'partly', cents: { s1: { '12': 20 } } })], { id: 'partly' });
    const { outcomes } = shopOf([partly, one(), one()], next, USUAL_LIKENESS);
    const { strings: each, without } = whatToExpect(models, outcomes, 0.5);
    expect(each.map((string) => string.next?.count)).toEqual([3, 2, 2, 2, 2, 2]);
    const left = without.find(({ outcome }) => outcome.id === 'partly');
    expect(left?.most.string).toBe(0);
    const others = whatToExpect(
      models,
      outcomes.filter(({ id }) => id !== 'partly'),
      0.5,
    );
    expect(left?.estimates[0]).toBe(others.strings[0]?.next?.estimate);
    expect(left?.most.change).toBe((each[0]?.next?.estimate ?? 0) - (others.strings[0]?.next?.estimate ?? 0));
    // Where it was not read, the figure stays as it is without it.
    expect(left?.estimates[5]).toBe(each[5]?.next?.estimate);
    const alone = whatToExpect(models, outcomes.slice(0, 1), 0.5);
    expect(alone.without[0]?.estimates.filter((estimate) => estimate !== null)).toEqual([]);
  });
});
