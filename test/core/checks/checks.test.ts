import { describe, expect, it } from 'vitest';
import { checkMessage } from '../../../src/core/checks/checkMessage';
import type { Project } from '../../../src/core/document/types';
import { steelProject, steelWith } from '../document/steelProject';
import { checkOf as check, checksOf } from './checksOf';
import { plainBridge as plain } from './plainBridge';

const toMm = (mm: number) => `${mm.toFixed(2)} mm`;

describe('slot-front, slot-ends, slot-back', () => {
  // Front wall 6 behind the front edge, back wall 6 + 2.5, 28 − 8.5 = 19.5 ahead of the back edge; ends 95 − 40 = 55.
  it('are good at 6 mm', () => {
    const walls = ['slot-front', 'slot-ends', 'slot-back'].map((id) => check(plain({}, null), id));
    expect(walls.map(({ verdict, source }) => [verdict, source])).toEqual(
      Array.from({ length: 3 }, () => ['good', 'common practice, no source']),
    );
    for (const [index, wall] of [6, 55, 19.5].entries()) expect(walls[index]?.lengths[0]).toBeCloseTo(wall, 6);
    // Midway between front wall and front edge, which lies 6 ahead of it.
    expect(walls[0]?.at?.[0]?.y).toBeCloseTo(647 - 1.25 - 3, 6);
    expect(walls[0]).toMatchObject({ part: 'check: the slot clears the front edge', limit: 'limits.wallAroundSlot' });
  });

  // 28 − 24 − 2.5 = 1.5 to the back edge.
  it('want a look at 1.5 mm', () => {
    const found = check(plain({ fromFront: 24 }, null), 'slot-back');
    expect(found.verdict).toBe('look');
    expect(found.lengths[0]).toBeCloseTo(1.5, 6);
    expect(checkMessage(found, toMm)).toBe('The slot clears the back edge by 1.50 mm only; 2.00 mm is usual.');
  });

  // 28 − 27 − 2.5: beyond the back edge by 1.5; a slot of 200 sticks out by 5 at each end.
  it.each([
    ['slot-back', { fromFront: 27 }, 1.5],
    ['slot-ends', { length: 200 }, 5],
  ])('%s is wrong outside: %o', (id, slot, beyond) => {
    const found = check(plain(slot, null), id);
    expect(found.verdict).toBe('wrong');
    expect(found.lengths[0]).toBeCloseTo(beyond, 6);
    expect(checkMessage(found, toMm)).toMatch(/overlap by \d\.50 mm|overlap by 5\.00 mm/);
  });

  // The round corner of the slot, half a width across, keeps 1.25 · (√2 − 1) = 0.518 more wood than a square one would.
  it('goes by round ends: nearest beyond the very end, not at a corner that is not there', () => {
    const rounded = check(plain({ length: 186, ends: 'round' }, null), 'slot-ends');
    expect(rounded.lengths[0]).toBeCloseTo(2, 6);
  });

  it('asks nothing of the ends of an open slot', () => {
    const ids = checksOf(plain({ run: 'open' }, null)).map(({ id }) => id);
    expect(ids).toContain('slot-front');
    expect(ids).not.toContain('slot-ends');
    expect(check(plain({ run: 'open' }, null), 'slot-front').lengths[0]).toBeCloseTo(6, 6);
  });
});

describe('pins-slot', () => {
  // Back wall to pin centre less the hole's radius: 8 − 2.5.
  it.each([
    [8, 'good', 5.5],
    [5.6, 'good', 3.1],
    [5.4, 'look', 2.9],
    [2, 'wrong', 0.5],
  ])('at %s from slot to pin row is %s', (from, verdict, wall) => {
    const found = check(plain({}, { from }), 'pins-slot');
    expect(found.verdict).toBe(verdict);
    expect(found.lengths[0]).toBeCloseTo(wall, 9);
  });
});

describe('pins-edge', () => {
  // 28 − 8.5 − from − 2.5 to the back edge.
  it.each([
    [8, 'good', 9],
    [15, 'look', 2],
    [18, 'wrong', 1],
    [25, 'wrong', 8],
  ])('at %s from slot to pin row is %s', (from, verdict, wall) => {
    const found = check(plain({}, { from }), 'pins-edge');
    expect(found.verdict).toBe(verdict);
    expect(found.lengths[0]).toBeCloseTo(wall, 9);
  });

  it('is not asked without pins', () => {
    expect(checksOf(plain({}, null)).map(({ id }) => id)).toEqual([
      'strings-board',
      'crown',
      'crown-model',
      'slot-front',
      'slot-ends',
      'slot-back',
      'locating-hidden',
    ]);
  });
});

describe('pins-apart', () => {
  // Four pins of 5 over the spread: a third of it less 5.
  it.each([
    [42, 'good', 9],
    [21.3, 'good', 2.1],
    [20.7, 'look', 1.9],
    [12, 'wrong', 1],
  ])('over %s mm is %s', (spread, verdict, wall) => {
    const found = check(plain({}, { spread }), 'pins-apart');
    expect(found.verdict).toBe(verdict);
    expect(found.lengths[0]).toBeCloseTo(wall, 9);
    expect(found.source).toBe('common practice, no source');
  });

  // Reamed to 6 the same holes keep 1 less: a third of 24 less 6.
  it('goes by the mouth that is reamed, not by the drill', () => {
    expect(check(plain({}, { spread: 24, underHead: 6 }), 'pins-apart').lengths[0]).toBeCloseTo(2, 9);
    expect(check(plain({}, { underHead: 6 }), 'pins-slot').lengths[0]).toBeCloseTo(5, 9);
  });

  it('goes by the maker’s own limit', () => {
    const project = { ...plain({}, { spread: 24.3 }), limits: { wallBetweenHoles: 4 } };
    expect(check(project, 'pins-apart')).toMatchObject({ verdict: 'look', source: 'set by the maker' });
  });

  // Twelve pins of 5.1 in one row over 55: 5.0 apart, so they overlap by 0.1; pairs 2.0 apart would by far more.
  it('proposes two rows to twelve strings whose pins would collide in one', () => {
    const found = check(plain({}, { spread: 55, hole: 5.1 }, {}, 12), 'pins-apart');
    expect(found.verdict).toBe('look');
    expect(checkMessage(found, toMm)).toBe('12 pin holes in one row would overlap by 0.10 mm: they take two rows.');
  });
});

// The worked example of intonation: over 54 the six strings want 1.818 3.458 1.970 2.762 3.377 4.772; the line of least
// squares misses string 2 by 1.088, the rule of 1/16 and 5/32 in by 1.394, and 0.3 of land is kept.
describe('crown', () => {
  const { slot } = steelProject.bridge;
  const byStrings = (width: number, limits: Project['limits'] = {}): Project => ({
    ...steelWith({ compensation: { by: 'strings' }, bridge: { slot: { ...slot, width } } }),
    limits,
  });
  const crowns = (project: Project) => checksOf(project).filter(({ id }) => id.startsWith('crown'));

  it('is good where the saddle can be shaped to every mark, and then the model is not asked twice', () => {
    // 3.175 / 2 − 0.3 = 1.2875 either way.
    expect(crowns(byStrings(3.175)).map(({ id, verdict }) => [id, verdict])).toEqual([['crown', 'good']]);
  });

  it('names the strings whose mark lies beyond, and what is left at the worst', () => {
    // 2.38125 / 2 − 0.3 = 0.890625 across, 0.89136 along: 1.088 − 0.891 = 0.197.
    const [found] = crowns(byStrings(2.38125));
    expect(found?.verdict).toBe('look');
    expect(Math.abs((found?.lengths[0] ?? 0) - 0.197)).toBeLessThan(0.001);
    expect(found && checkMessage(found, toMm)).toBe(
      'The saddle is too thin to be shaped to the mark of B; 0.20 mm is left at the worst.',
    );
  });

  it('goes by the maker’s own land', () => {
    // 1.5875 − 0.6 = 0.9875 falls short of 1.088 alone.
    expect(crowns(byStrings(3.175, { land: 0.6 }))[0]).toMatchObject({ verdict: 'look' });
    expect(crowns(byStrings(3.175, { land: 0.4 }))[0]).toMatchObject({ verdict: 'good' });
  });

  it('holds a rule of thumb against the model: one saddle cannot serve both', () => {
    const [own, model] = crowns(steelProject);
    expect(own).toMatchObject({ id: 'crown', verdict: 'good' });
    expect(model).toMatchObject({ id: 'crown-model', verdict: 'look' });
    // 1.394 less 1.2875 · √(1 + 0.0441²) = 1.28875.
    expect(Math.abs((model?.lengths[0] ?? 0) - 0.1055)).toBeLessThan(0.001);
    expect(model && checkMessage(model, toMm)).toBe(
      'One saddle cannot serve both: the model’s mark for B lies up to 0.11 mm beyond the crown’s reach.',
    );
  });

  it('and says when one saddle serves both', () => {
    const wide = crowns(steelWith({ bridge: { slot: { ...slot, width: 4 } } }));
    expect(wide.map(({ id, verdict }) => [id, verdict])).toEqual([
      ['crown', 'good'],
      ['crown-model', 'good'],
    ]);
  });

  it('asks nothing of a model that has no answer', () => {
    const [first, ...rest] = steelProject.strings;
    const mute = { ...steelProject, strings: first ? [{ ...first, frequency: 0 }, ...rest] : [] };
    expect(crowns(mute).map(({ id }) => id)).toEqual(['crown']);
  });
});

describe('strings-board', () => {
  // Board 46 at the nut and 57 at 322.5; at 647 it is 46 + 11 · 647 / 322.5 = 68.068217 wide, half 34.034109; strings at ±27.
  it('is good inside the lines of the board edges', () => {
    const found = check(plain(), 'strings-board');
    expect(found.verdict).toBe('good');
    expect(found.lengths[0]).toBeCloseTo(7.034109, 6);
    expect(found.lengths[1]).toBeCloseTo(7.034109, 6);
    expect(checkMessage(found, toMm)).toBe(
      'At the saddle the outer strings lie inside the board edge lines by 7.03 mm treble, 7.03 mm bass.',
    );
  });

  it('is wrong outside of them', () => {
    const project = plain();
    const wide = { ...project.instrument, spread: { from: 'own' as const, own: 68.1 } };
    expect(check({ ...project, instrument: wide }, 'strings-board').verdict).toBe('wrong');
  });
});

describe('compensation sign', () => {
  it('asks about a string that breaks ahead of the octave line, and only about it', () => {
    const project = steelWith({ compensation: { rule: { treble: -1, bass: 3, reach: 'break-point', source: '' } } });
    // Six strings from −1 to 3 in steps of 0.8: strings 1 and 2 are ahead, by 1 and 0.2.
    const found = checksOf(project).filter(({ id }) => id.startsWith('compensation-'));
    expect(found.map(({ id, verdict }) => [id, verdict])).toEqual([
      ['compensation-s1', 'look'],
      ['compensation-s2', 'look'],
    ]);
    expect(found[0]?.lengths[0]).toBeCloseTo(1, 9);
    expect(found[1]?.lengths[0]).toBeCloseTo(0.2, 9);
  });

  it('asks about own figures too', () => {
    const own = { s1: -0.5, s2: 2, s3: 2, s4: 2.5, s5: 3, s6: 3.5 };
    const fit = { ...steelProject.compensation.fit, line: 'outer' as const };
    const found = checksOf(steelWith({ compensation: { by: 'own', own, fit } }));
    expect(found.filter(({ id }) => id.startsWith('compensation-')).map(({ id }) => id)).toEqual(['compensation-s1']);
  });

  // The line of least squares runs behind the octave line all the same, since five strings outweigh one.
  it('asks about one own figure that is negative though the straight saddle is not', () => {
    const found = checksOf(
      steelWith({ compensation: { by: 'own', own: { s1: 2, s2: -1, s3: 2, s4: 2.5, s5: 3, s6: 3.5 } } }),
    );
    const signs = found.filter(({ id }) => id.startsWith('compensation-'));
    expect(signs.map(({ id, lengths }) => [id, ...lengths])).toEqual([['compensation-s2', 1]]);
    expect(signs[0]?.message).toContain('is asked to break');
  });

  it('says nothing when none does', () => {
    expect(checksOf(steelProject).some(({ id }) => id.startsWith('compensation-'))).toBe(false);
  });
});

describe('locating-hidden', () => {
  it.each([
    [2.5, 'good'],
    [2.6, 'wrong'],
  ])('with %s mm holes in the ends of a 2.5 mm slot is %s', (drill, verdict) => {
    const found = check(
      plain({}, {}, { locating: { site: 'slot-ends', drill, points: null, clearance: 0.5 } }),
      'locating-hidden',
    );
    expect(found.verdict).toBe(verdict);
    expect(found.lengths.slice(0, 2)).toEqual([drill, 2.5]);
  });

  it('of outer pin holes is good while the pins fill them, and wrong where they do not', () => {
    const at = (drill: number) =>
      check(
        plain({}, {}, { locating: { site: 'outer-pin-holes', drill, points: null, clearance: 0.5 } }),
        'locating-hidden',
      );
    expect(at(4).verdict).toBe('good');
    expect(at(5.1).verdict).toBe('wrong');
  });

  it('of free points wants a look, since they show beside the saddle', () => {
    const points = { treble: { x: 70, y: 14 }, bass: { x: -70, y: 14 } };
    const project = plain({}, {}, { locating: { site: 'free', drill: 1.6, points, clearance: 0.5 } });
    expect(check(project, 'locating-hidden').verdict).toBe('look');
    // 14 from the back edge less 0.8; 70 − 40 = 30 beyond the slot's end, and 14 − 8.5 behind its back wall.
    expect(check(project, 'locating-edge').lengths[0]).toBeCloseTo(13.2, 9);
    expect(check(project, 'locating-slot').lengths[0]).toBeCloseTo(Math.hypot(30, 5.5) - 0.8, 9);
  });
});

it('every message names as many lengths as the check carries', () => {
  for (const project of [steelProject, plain({ fromFront: 24 }, { from: 2 }), plain({ length: 200 }, null)])
    for (const each of checksOf(project)) expect(checkMessage(each, toMm)).not.toMatch(/NaN|\{|\}/);
});
