import { describe, expect, it } from 'vitest';
import type { TakenReading } from '../../../../src/core/document/buildTypes';
import { KINDS } from '../../../../src/core/kinds/kinds';
import { seededRandom } from '../../../../src/core/numeric/seededRandom';
import type { Pose } from '../../../../src/core/placement/poseTypes';
import { payingOrder } from '../../../../src/core/placement/reading/payingOrder';
import { placeAnswer, tolerancesOf } from '../../../../src/core/placement/reading/placeAnswer';
import { nominalPose, type ReadCase } from '../../../../src/core/placement/reading/readCase';
import { readLineAt } from '../../../../src/core/placement/reading/readLines';
import { READ_TOOLS } from '../../../../src/core/placement/reading/readTools';
import type { ReadLine } from '../../../../src/core/placement/reading/types';
import { steelProject } from '../../document/steelProject';
import { valueOf as answerOf, codesOf } from '../../document/valueOf';
import { readAt } from '../readAt';
import { linesOf, readCaseOf } from './readCaseOf';

const sigmaOf = (line: ReadLine): number => READ_TOOLS.find(({ id }) => id === line.tool)?.sigma ?? 0.25;

const steel = readCaseOf(steelProject);
const lines = linesOf(steel);
const DEGREE = Math.PI / 180;

/** Off its place by so much, mm and degrees. */
const off = (read: ReadCase, x: number, y: number, degrees: number): Pose => {
  const nominal = nominalPose(read);
  return { x: nominal.x + x, y: nominal.y + y, angle: degrees * DEGREE };
};

/** What the tool shows on a line where the bridge sits so: the reading's own arithmetic turned round. */
const shown = (line: ReadLine, sits: Pose): number => {
  const [zero, one] = [line.reading(0, 1).value, line.reading(1, 1).value];
  return (readAt(line.reading(0, 1), sits) - zero) / (one - zero);
};

const taken = (line: ReadLine, value: number): TakenReading => ({
  id: line.id,
  line: line.id,
  value,
  tool: line.tool,
  sigma: sigmaOf(line),
});

const named = (...ids: readonly string[]): readonly ReadLine[] =>
  ids.map((id) => {
    const line = lines.find((each) => each.id === id);
    if (line === undefined) throw new Error(`There is no ${id}.`);
    return line;
  });

const answerTo = (of: readonly ReadLine[], sits: Pose) =>
  answerOf(
    placeAnswer(
      steel,
      lines,
      of.map((line) => taken(line, shown(line, sits))),
      sigmaOf,
    ),
  );

describe('placeAnswer', () => {
  it('finds a thousand places within 1 µm and 1 µrad from exact readings of every kind', () => {
    const random = seededRandom(20261125);
    const cases = KINDS.map(({ make }) => readCaseOf(make('k', '2026-01-01T00:00:00.000Z')));
    const kinds = new Set<string>();
    let worst = 0;
    for (let count = 0; count < 1000; count += 1) {
      const read = cases[count % cases.length] as ReadCase;
      const all = linesOf(read);
      const pairs = ['pair:twelfth-centre:locating-bass', 'pair:nut-centre:slot-end-treble'].flatMap(
        (id) => readLineAt(read, all, id) ?? [],
      );
      const some = [...all, ...pairs].sort(() => random.uniform() - 0.5).slice(0, 6);
      const sure = all.filter(({ group, id }) => group === 'margins' || id.startsWith('twelfth-slot'));
      for (const { group } of some) kinds.add(group);
      const sits = off(read, 3 * random.uniform() - 1.5, 3 * random.uniform() - 1.5, random.uniform() - 0.5);
      const readings = [...new Set([...sure, ...some])].map((line) => taken(line, shown(line, sits)));
      const { fit } = answerOf(placeAnswer(read, all, readings, sigmaOf));
      worst = Math.max(
        worst,
        Math.abs(fit.pose.x - sits.x),
        Math.abs(fit.pose.y - sits.y),
        1000 * Math.abs(fit.pose.angle - sits.angle),
      );
    }
    expect(worst).toBeLessThan(0.001);
    expect([...kinds].sort()).toEqual(['along', 'compare', 'corners', 'edges', 'margins', 'pair', 'pins', 'stick']);
  });

  it('holds its ± in 93 to 97 of 100 noisy rounds', () => {
    const random = seededRandom(7);
    const round = payingOrder(lines, nominalPose(steel), tolerancesOf(steel), sigmaOf, 6);
    const inside = { x: 0, y: 0, angle: 0 };
    const rounds = 1000;
    for (let count = 0; count < rounds; count += 1) {
      const sits = off(steel, 2 * random.uniform() - 1, 2 * random.uniform() - 1, random.uniform() - 0.5);
      const readings = round.map((line) => taken(line, shown(line, sits) + sigmaOf(line) * random.normal()));
      const { fit } = answerOf(placeAnswer(steel, lines, readings, sigmaOf));
      for (const freedom of ['x', 'y', 'angle'] as const)
        if (Math.abs(fit.pose[freedom] - sits[freedom]) <= 1.96 * fit.sigma[freedom]) inside[freedom] += 1;
    }
    for (const share of Object.values(inside).map((count) => count / rounds)) {
      expect(share).toBeGreaterThan(0.93);
      expect(share).toBeLessThan(0.97);
    }
  });

  it('says which way readings leave open, and what to read for it', () => {
    const sits = off(steel, 0.8, 0.5, 0.2);
    const along = answerTo(named('twelfth-slot-treble', 'twelfth-slot-bass'), sits);
    // A slanted slot may slide along itself: that moves it aside and along at once.
    expect(along.fit.unseen).toEqual(['x', 'y']);
    expect(along.freedoms.map(({ verdict }) => verdict).slice(0, 2)).toEqual(['unseen', 'unseen']);
    expect(along.fit.sigma.x).toBe(Number.POSITIVE_INFINITY);
    expect(along.next?.group).toBe('margins');
    for (const alone of ['twelfth-slot-treble', 'margin-treble', 'stick-bass', 'longer-across'])
      expect(answerTo(named(alone), sits).fit.unseen.length).toBeGreaterThanOrEqual(2);
    const square = answerTo(named('margin-treble', 'margin-bass'), sits);
    expect(square.fit.unseen).toEqual(expect.arrayContaining(['angle']));
    expect(answerTo(named('margin-treble', 'twelfth-slot-treble', 'twelfth-slot-bass'), sits).fit.unseen).toEqual([]);
  });

  it('is not taken in by equal lengths across', () => {
    // 1 mm aside and −0.284° turned: hand-worked for the 14th fret of another guitar; here the turn that does it is found.
    const [across] = named('longer-across') as [ReadLine];
    let turn = -0.28;
    for (let step = 0; step < 40; step += 1) turn -= shown(across, off(steel, 1, 0, turn)) / 2;
    const sits = off(steel, 1, 0, turn);
    expect(shown(across, sits)).toBeCloseTo(0, 6);
    const answer = answerTo([across], sits);
    expect(answer.crossesAlone).toBe(true);
    expect(answer.fit.unseen).toEqual(expect.arrayContaining(['x', 'angle']));
    expect(answer.verdict).not.toBe('good');
    // The same sides tell it: trade arithmetic has 0.395 mm between them.
    expect(Math.abs(shown(named('longer-straight')[0] as ReadLine, sits))).toBeGreaterThan(0.3);
  });

  it('points at a reading that quarrels with the rest', () => {
    const sits = off(steel, 0.2, 0.1, 0.05);
    const some = named(
      'twelfth-slot-treble',
      'twelfth-slot-bass',
      'nut-slot-treble',
      'nut-slot-bass',
      'margin-treble',
      'margin-bass',
    );
    const readings = some.map((line) => taken(line, shown(line, sits) + (line.id === 'nut-slot-bass' ? 2 : 0)));
    const { quarrel } = answerOf(placeAnswer(steel, lines, readings, sigmaOf));
    // From nut and 12th fret the same place is read twice on each side, so one cannot be told from the other.
    expect([...quarrel.ids].sort()).toEqual(['nut-slot-bass', 'twelfth-slot-bass']);
    // Between two readings of 0.3 mm each that differ by 2: 2 / (0.3 · √2) = 4.71 times; the margins add a hair.
    expect(quarrel.times).toBeCloseTo(4.71, 1);
    const third = taken(
      named('twelfth-square-bass')[0] as ReadLine,
      shown(named('twelfth-square-bass')[0] as ReadLine, sits),
    );
    expect(answerOf(placeAnswer(steel, lines, [...readings, third], sigmaOf)).quarrel.ids).toEqual(['nut-slot-bass']);
    const sound = some.map((line) => taken(line, shown(line, sits)));
    expect(answerOf(placeAnswer(steel, lines, sound, sigmaOf)).quarrel).toMatchObject({ ids: [], together: false });
  });

  it('sees a quarrel in readings that fix nothing yet, and none where they only lie off the plan', () => {
    const [line] = named('margin-treble') as [ReadLine];
    // 1 mm off the plan, and so it may be: one alone has nothing to quarrel with, two that agree do not.
    const at = (...by: readonly number[]) =>
      by.map((each, index) => ({ ...taken(line, line.expected + each), id: `${index}` }));
    for (const agreeing of [at(1), at(1, 1), at(1, 1.05)])
      expect(answerOf(placeAnswer(steel, lines, agreeing, sigmaOf)).quarrel.ids).toEqual([]);
    // A third of a calliper's ± 0.05, 1 mm off two that agree: (2/3) / (0.05 · √(2/3)) = 16.33 times.
    const { quarrel, fit } = answerOf(placeAnswer(steel, lines, at(0, 0, 1), sigmaOf));
    expect(fit.unseen).toEqual(['x', 'y', 'angle']);
    expect(quarrel.ids).toEqual(['2']);
    expect(quarrel.times).toBeCloseTo(16.33, 2);
  });

  it('says when readings fit worse together than their tools allow, though none stands out', () => {
    const [line] = named('stick-treble') as [ReadLine];
    // Six readings of one line, three 0.4 mm over and three under, ± 0.15 each: chi-square 6 · (0.4 / 0.15)² = 42.7 on
    // 5 degrees of freedom, where 15.086 is the 1 % point (NIST/SEMATECH e-Handbook, 1.3.6.7.4); each is only
    // 0.4 / (0.15 · √(5/6)) = 2.92 times its own spread off.
    const readings = [0.4, -0.4, 0.4, -0.4, 0.4, -0.4].map((value, index) => ({
      ...taken(line, value),
      id: `${index}`,
    }));
    expect(answerOf(placeAnswer(steel, lines, readings, sigmaOf)).quarrel).toMatchObject({ ids: [], together: true });
    const near = readings.map((reading) => ({ ...reading, value: reading.value / 4 }));
    expect(answerOf(placeAnswer(steel, lines, near, sigmaOf)).quarrel).toMatchObject({ ids: [], together: false });
  });

  it('tells what is left in cents: 2.68 a mm at 645, flat when it sits toward the tail', () => {
    const { strings, margins, fit } = answerTo(
      named('twelfth-slot-treble', 'twelfth-slot-bass', 'margin-treble', 'margin-bass'),
      off(steel, 0.5, 1, 0),
    );
    for (const { off: by, cents } of strings) {
      expect(by).toBeCloseTo(1, 6);
      // trade arithmetic: 1731 · d / L · (2 − 1) cents.
      expect(cents).toBeCloseTo(-2.684, 2);
    }
    // In the middle of the bridge it is known as well as fore and aft is: the line of string places has its middle there.
    const middle = strings.map(({ centsSigma }) => centsSigma);
    expect(Math.min(...middle)).toBeGreaterThan(2.684 * fit.sigma.y * 0.9);
    expect(Math.max(...middle)).toBeLessThan(2.684 * 0.45);
    // String 1 from 18.9 at the nut to 27, or 27.5, at the saddle 646.6, or 647.6, away, at fret 20 of 645, 441.8 from the
    // nut: 18.9 + 8.1 · 441.8 / 646.6 = 24.434, and 18.9 + 8.6 · 441.8 / 647.6 = 24.767.
    const treble = margins.find(({ side }) => side === 'treble');
    expect((treble?.now ?? 0) - (treble?.meant ?? 0)).toBeCloseTo(-0.333, 2);
  });

  it('calls a place good, off or not to be told', () => {
    const some = named('stick-treble', 'stick-bass', 'margin-treble', 'margin-bass', 'longer-straight');
    expect(answerTo(some, off(steel, 0.05, 0.1, 0.02)).verdict).toBe('good');
    expect(answerTo(some, off(steel, 0.8, 0.1, 0)).verdict).toBe('off');
    const coarse = some.map((line) => ({ ...taken(line, line.expected), sigma: 2 }));
    expect(answerOf(placeAnswer(steel, lines, coarse, sigmaOf)).verdict).toBe('unsure');
  });

  it('has no answer to nothing, and says when none goes with the readings', () => {
    expect(codesOf(placeAnswer(steel, lines, [], sigmaOf))).toEqual(['place.none']);
    const gone = { id: 'a', line: 'pair:nowhere:at-all', value: 3, tool: 'rule', sigma: 0.3 };
    expect(codesOf(placeAnswer(steel, lines, [gone], sigmaOf))).toEqual(['place.none']);
  });
});
