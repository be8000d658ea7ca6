import { describe, expect, it } from 'vitest';
import type { TakenReading } from '../../../../src/core/document/buildTypes';
import { newBuild } from '../../../../src/core/document/newBuild';
import type { Project } from '../../../../src/core/document/types';
import { chooseRebate } from '../../../../src/store/commands/finish/chooseRebate';
import { acceptRound } from '../../../../src/store/commands/place/acceptRound';
import { beginRound } from '../../../../src/store/commands/place/beginRound';
import { chooseDrop } from '../../../../src/store/commands/place/chooseDrop';
import { chooseTool } from '../../../../src/store/commands/place/chooseTool';
import { removeReading } from '../../../../src/store/commands/place/removeReading';
import { removeRound } from '../../../../src/store/commands/place/removeRound';
import { takeReading } from '../../../../src/store/commands/place/takeReading';
import { takeTuned } from '../../../../src/store/commands/place/takeTuned';
import { steelProject } from '../../../core/document/steelProject';
import { valueOf as answerOf, codesOf } from '../../../core/document/valueOf';
import { expectReversible } from '../../expectReversible';

const AT = '2026-03-01T09:00:00.000Z';
const reading = (id: string, value = 317): TakenReading => ({
  id,
  line: 'twelfth-slot-treble',
  value,
  tool: 'rule',
  sigma: 0.25,
});
const round = (id: string, stage: 'dry' | 'taped' | 'wet' = 'taped') => ({ id, at: AT, stage });

const read = (project: Project, id: string, stage: 'dry' | 'taped' | 'wet' = 'taped'): Project =>
  answerOf(takeReading(project, reading(id), round(`round-${id}`, stage)));

describe('rounds of readings', () => {
  it('begin an instrument with the first reading, and take more while they are open at that stage', () => {
    const after = expectReversible('Read', (actions) =>
      actions.change('Read', (project) => takeReading(project, reading('a'), round('r1'))),
    );
    expect(after.build?.serial).toBe('');
    expect(after.build?.rounds).toEqual([{ ...round('r1'), readings: [reading('a')], accepted: false }]);
    const more = read(after, 'b');
    expect(more.build?.rounds.map(({ id, readings }) => [id, readings.length])).toEqual([['r1', 2]]);
    expect(read(more, 'c', 'wet').build?.rounds.map(({ stage }) => stage)).toEqual(['taped', 'wet']);
  });

  it('are closed by being accepted, and opened again by taking that back', () => {
    const one = read(steelProject, 'a');
    const id = one.build?.rounds[0]?.id ?? '';
    const accepted = answerOf(acceptRound(one, id, true));
    expect(read(accepted, 'b').build?.rounds).toHaveLength(2);
    expect(read(answerOf(acceptRound(accepted, id, false)), 'b').build?.rounds).toHaveLength(1);
  });

  it('begin anew when the bridge was moved', () => {
    const moved = answerOf(beginRound(read(steelProject, 'a'), round('r2')));
    expect(read(moved, 'b').build?.rounds.map(({ readings }) => readings.length)).toEqual([1, 1]);
  });

  it('take readings by their id too, once they are reopened', () => {
    const one = read(steelProject, 'a');
    const [first] = one.build?.rounds ?? [];
    const two = answerOf(beginRound(one, round('r2')));
    const into = { id: first?.id ?? '', at: AT, stage: 'taped' } as const;
    const back = answerOf(takeReading(two, reading('b'), into));
    expect(back.build?.rounds.map(({ readings }) => readings.length)).toEqual([2, 0]);
    const accepted = answerOf(acceptRound(back, into.id, true));
    expect(codesOf(takeReading(accepted, reading('c'), into))).toEqual(['round.accepted']);
    const reopened = answerOf(acceptRound(accepted, into.id, false));
    expect(answerOf(takeReading(reopened, reading('c'), into)).build?.rounds[0]?.readings).toHaveLength(3);
  });

  it('let the tool of a line be put right afterwards', () => {
    const two = read(read(steelProject, 'a'), 'b');
    const id = two.build?.rounds[0]?.id ?? '';
    const calliper = { tool: 'calliper', sigma: 0.05 };
    const after = answerOf(chooseTool(two, id, 'twelfth-slot-treble', calliper));
    expect(after.build?.rounds[0]?.readings).toEqual([
      { ...reading('a'), ...calliper },
      { ...reading('b'), ...calliper },
    ]);
    expect(answerOf(chooseTool(two, id, 'stick-bass', calliper))).toEqual(two);
    expect(codesOf(chooseTool(two, id, 'stick-bass', { tool: 'rule', sigma: 0 }))).toEqual(['reading.value']);
    expect(codesOf(chooseTool(two, 'none', 'stick-bass', calliper))).toEqual(['round.missing']);
  });

  it('let readings and whole rounds be taken out', () => {
    const two = read(read(steelProject, 'a'), 'b');
    const id = two.build?.rounds[0]?.id ?? '';
    expect(answerOf(removeReading(two, id, 'a')).build?.rounds[0]?.readings.map((each) => each.id)).toEqual(['b']);
    expect(answerOf(removeRound(two, id)).build?.rounds).toEqual([]);
    expect(codesOf(removeRound(two, 'none'))).toEqual(['round.missing']);
    expect(codesOf(acceptRound(steelProject, 'none', true))).toEqual(['round.missing']);
  });

  it('refuse what is no reading, and more than anyone takes', () => {
    expect(codesOf(takeReading(steelProject, reading('a', Number.NaN), round('r1')))).toEqual(['reading.value']);
    expect(codesOf(takeReading(steelProject, { ...reading('a'), sigma: 0 }, round('r1')))).toEqual(['reading.value']);
    let full = steelProject;
    for (let index = 0; index < 120; index += 1) full = read(full, `a${index}`);
    expect(codesOf(takeReading(full, reading('b'), round('r1')))).toEqual(['round.full']);
    let many = steelProject;
    for (let index = 0; index < 60; index += 1) many = answerOf(beginRound(many, round(`r${index}`)));
    expect(codesOf(beginRound(many, round('r60')))).toEqual(['round.many']);
  });
});

describe('how readings come down', () => {
  it('is kept, and within what a neck can be', () => {
    const drop = { by: 'rule', angle: 0.02, height: 11 } as const;
    expect(answerOf(chooseDrop(steelProject, drop)).build?.drop).toEqual(drop);
    expect(codesOf(chooseDrop(steelProject, { ...drop, angle: 0.2 }))).toEqual(['drop.angle']);
    expect(codesOf(chooseDrop(steelProject, { ...drop, height: -1 }))).toEqual(['drop.height']);
  });
});

describe('outer strings found in tune', () => {
  it('give every string its place on the straight line between them', () => {
    // From 1.6 at 27 to 4.0 at −27: 2.4 over 54, so 2.8 in the middle and 2.8 − 0.48 at 10.8.
    const across = [27, 16.2, 5.4, -5.4, -16.2, -27];
    const { compensation } = answerOf(takeTuned(steelProject, { treble: 1.6, bass: 4, across }));
    expect(compensation.by).toBe('own');
    const own = steelProject.strings.map(({ id }) => compensation.own[id] ?? Number.NaN);
    expect(own[0]).toBeCloseTo(1.6, 12);
    expect(own[2]).toBeCloseTo(2.56, 12);
    expect(own[5]).toBeCloseTo(4, 12);
  });

  it('are refused far from the octave line, or without places', () => {
    const across = [27, 16.2, 5.4, -5.4, -16.2, -27];
    expect(codesOf(takeTuned(steelProject, { treble: 25, bass: 4, across }))).toEqual(['tuned.far']);
    expect(codesOf(takeTuned(steelProject, { treble: 2, bass: 4, across: [] }))).toEqual(['tuned.across']);
  });
});

describe('the rebate', () => {
  it('is begun and given up', () => {
    const begun = answerOf(chooseRebate(steelProject, true));
    // 1/16 in wide.
    expect(begun.build?.rebate?.width).toBeCloseTo(1.5875, 9);
    // A film of 0.006 in, 0.152 mm, and 0.05 over it.
    expect(begun.build?.rebate?.depth).toBeCloseTo(0.2, 9);
    expect(answerOf(chooseRebate(begun, false)).build?.rebate).toBeNull();
  });

  it('goes by the rim that is left and the film that was measured', () => {
    const wide = { ...steelProject, bridge: { ...steelProject.bridge, rim: 2.4 } };
    const measured = { ...wide, build: { ...newBuild(), film: 0.3 } };
    expect(answerOf(chooseRebate(measured, true)).build?.rebate).toEqual({ width: 2.4, depth: 0.35 });
  });
});
