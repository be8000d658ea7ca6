import { describe, expect, it } from 'vitest';
import { AUDIT_LIMITS } from '../../../src/core/audit/auditLimits';
import { createDerive } from '../../../src/core/derive/createDerive';
import { changeSinceFirst } from '../../../src/core/learning/changeSinceFirst';
import { crownMoves } from '../../../src/core/learning/crownMoves';
import { planAsStrung } from '../../../src/core/learning/planAsStrung';
import { plannedAt } from '../../../src/core/learning/plannedAt';
import { saddleVerdict } from '../../../src/core/learning/saddleVerdict';
import { WORKED } from '../../reference/intonation-worked';
import { steelProject, steelWith } from '../document/steelProject';
import { valueOf as answerOf } from '../document/valueOf';
import { atTwelfth, stringUp } from './strung';

// A saddle 3.175 mm thick square across the strings at scale 645, break line in its middle, 1587.5 µm from the front face,
// 2 mm behind the octave line at every string; land 0.3 mm. One mm at the 12th fret is 2.684084 cents.
const project = steelWith({
  compensation: { rule: { treble: 2, bass: 2, reach: 'break-point', source: '' } },
});
const saddle = answerOf(createDerive()(project).saddle);
const { slot } = project.bridge;
const MM = 2.684084;
const movesFor = (millimetres: readonly number[], stood?: Readonly<Record<string, number>>) =>
  crownMoves(
    stringUp({
      cents: atTwelfth(millimetres.map((mm) => mm * MM)),
      stood: stood ?? planAsStrung(saddle, 'straight', null).stood,
    }),
    saddle,
    slot,
    645,
    0.3,
  );

describe('crownMoves', () => {
  it('says where each string broke, wants to and can be filed to, from the front face', () => {
    const [first, second, third] = movesFor([0.5, -1, 2]);
    expect(first).toMatchObject({ id: 's1', travel: expect.closeTo(0.5, 5), reached: true });
    expect(first?.from).toBeCloseTo(1.5875, 6);
    expect(first?.to).toBeCloseTo(2.0875, 5);
    expect(first?.found).toBeCloseTo(2.5, 5);
    expect(first?.leftCents).toBeCloseTo(0, 9);
    expect(second?.to).toBeCloseTo(0.5875, 5);
    // 3.5875 lies behind the land at 2.875: 0.7125 mm short, which stays 1.912 cents sharp.
    expect(third).toMatchObject({ reached: false, to: expect.closeTo(2.875, 9), wanted: expect.closeTo(3.5875, 5) });
    expect(third?.leftCents).toBeCloseTo(0.7125 * MM, 4);
    expect(third?.after).toBeCloseTo(2 + 1.2875, 5);
  });

  it('begins where the string broke, wherever the plan has it', () => {
    const [first] = movesFor([0.5], { s1: 2.4 });
    expect(first?.from).toBeCloseTo(1.9875, 6);
    expect(first?.to).toBeCloseTo(2.4875, 5);
  });

  it('leaves out what was not read', () => {
    expect(movesFor([]).length).toBe(0);
    expect(movesFor([1]).map(({ id }) => id)).toEqual(['s1']);
  });
});

describe('saddleVerdict', () => {
  const verdictFor = (millimetres: readonly number[]) =>
    saddleVerdict(movesFor(millimetres), saddle, slot, AUDIT_LIMITS);

  it('is none without a reading', () => {
    expect(verdictFor([])).toBeNull();
  });

  it.each([
    // 0.7 mm are 1.88 cents, 0.8 mm 2.15: the usual limit is 2.
    ['leaves', [0.7, -0.7, 0, 0, 0, 0], 'leave'],
    ['files', [0.8, -0.8, 0, 0, 0, 0], 'shape'],
    ['files as far as it goes', [2, 0, 0, 0, 0, 0], 'shape'],
    ['cuts anew', [2.5, 2.5, 2.5, 2.5, 2.5, 2.5], 'recut'],
    ['moves the bridge', [5, 5, 5, 5, 5, 5], 'move'],
  ] as const)('%s', (_, millimetres, verdict) => {
    expect(verdictFor(millimetres)?.verdict).toBe(verdict);
  });

  it('says how another saddle, and how another slot, would serve', () => {
    const beyond = verdictFor([2.5, 2.5, 2.5, 2.5, 2.5, 2.5])?.beyond;
    // All want 4.0875 from the front face; 2.875 is the last they can have: 1.2125 more behind.
    expect(beyond?.widen.ahead).toBe(0);
    expect(beyond?.widen.behind).toBeCloseTo(1.2125, 4);
    expect(beyond?.widen.thickness).toBeCloseTo(4.3875, 4);
    // Or the middle goes where they want it, and two lands are thickness enough.
    expect(beyond?.recut.treble).toBeCloseTo(2.5, 4);
    expect(beyond?.recut.bass).toBeCloseTo(2.5, 4);
    expect(beyond?.recut.thickness).toBeCloseTo(0.6, 4);
  });
});

describe('planAsStrung', () => {
  it('straight is the line, shaped is each mark as near as the crown reaches', () => {
    const plan = answerOf(createDerive()(steelWith({ compensation: { by: 'strings' } })).saddle);
    const straight = planAsStrung(plan, 'straight', null);
    const shaped = planAsStrung(plan, 'shaped', null);
    for (const [index, wanted] of WORKED.fit.entries()) {
      const id = `s${index + 1}`;
      expect(straight.predicted[id]).toBeCloseTo(wanted, 2);
      expect(straight.stood[id]).toBeCloseTo(wanted + (WORKED.fitLine.misses[index] ?? 0), 2);
      // Every mark lies within 1.2875 mm of the line, so that the crown reaches all of them.
      expect(shaped.stood[id]).toBeCloseTo(wanted, 2);
    }
  });

  it('filed begins where the earlier reading asked for, and stays where nothing was read', () => {
    const stood = planAsStrung(saddle, 'straight', null).stood;
    const filed = planAsStrung(saddle, 'filed', { stood: { ...stood, s6: 2.2 }, moves: movesFor([0.5, 2]) }).stood;
    expect(filed.s1).toBeCloseTo(2.5, 5);
    expect(filed.s2).toBeCloseTo(3.2875, 5);
    expect(filed.s6).toBe(2.2);
    expect(planAsStrung(saddle, 'filed', null).stood).toEqual(planAsStrung(saddle, 'shaped', null).stood);
  });
});

describe('changeSinceFirst', () => {
  const first = { cents: { s1: { '5': 1, '12': 2 } }, stood: { s1: 2 } };

  it('is the mean over the frets read both times', () => {
    const later = { cents: { s1: { '5': 2, '7': 9, '12': 5 } }, stood: { s1: 2 } };
    expect(changeSinceFirst(first, later, 's1', 645)).toBe(2);
  });

  // Filed 1 mm back at the 12th fret: 2.684 cents flatter by the file alone.
  it('takes off what was filed', () => {
    const filed = { cents: { s1: { '12': 2 - MM } }, stood: { s1: 3 } };
    expect(changeSinceFirst(first, filed, 's1', 645)).toBeCloseTo(0, 5);
  });

  it('is none where nothing was read both times', () => {
    expect(changeSinceFirst(first, { cents: { s1: { '7': 1 } }, stood: {} }, 's1', 645)).toBeNull();
    expect(changeSinceFirst(first, { cents: {}, stood: {} }, 's1', 645)).toBeNull();
  });
});

describe('plannedAt', () => {
  it('is what an independent evaluation leaves at the 12th fret of the range fit', () => {
    const models = answerOf(createDerive()(steelProject).models);
    for (const [index, cents] of plannedAt(models, 12).entries())
      expect(Math.abs(cents - ([-0.37, -0.7, -0.4, -0.57, -0.71, -1.05][index] ?? 0))).toBeLessThan(0.02);
  });
});
