import { describe, expect, it } from 'vitest';
import { MOST_STRING_UPS } from '../../../../src/core/document/mostOfBuild';
import type { Project } from '../../../../src/core/document/types';
import type { Result } from '../../../../src/core/result';
import { chooseStringSet } from '../../../../src/store/commands/chooseStringSet';
import { addStringUp } from '../../../../src/store/commands/stringUp/addStringUp';
import { changeStringUp } from '../../../../src/store/commands/stringUp/changeStringUp';
import { readCents } from '../../../../src/store/commands/stringUp/readCents';
import { removeStringUp } from '../../../../src/store/commands/stringUp/removeStringUp';
import { takeLearned } from '../../../../src/store/commands/stringUp/takeLearned';
import { steelProject } from '../../../core/document/steelProject';
import { codesOf, valueOf as onto } from '../../../core/document/valueOf';
import { atTwelfth, stringUp, strung } from '../../../core/learning/strung';
import { expectReversible } from '../../expectReversible';

const BEGUN = {
  id: 'a',
  at: '2026-11-25T10:00:00.000Z',
  crown: 'straight',
  predicted: {},
  stood: { s1: 1.7 },
} as const;

const done = (command: (project: Project) => Result<Project>, start: Project): Project =>
  expectReversible('A change', ({ change }) => change('A change', command), start);
const first = strung([stringUp({ tuner: 0.5, meter: 'the dial in the case', cents: atTwelfth([1, 2, 3, 4, 5, 6]) })]);

describe('addStringUp', () => {
  it('makes an instrument of a model, and begins with nothing read', () => {
    const after = done((project) => addStringUp(project, BEGUN), steelProject);
    expect(after.build?.stringUps).toEqual([
      {
        ...BEGUN,
        stage: 'first',
        tuner: 1,
        cents: {},
        action: { treble: null, bass: null },
        relief: null,
        humidity: null,
        meter: '',
        note: '',
      },
    ]);
  });

  it('goes on with the tuner and the meter of the one before, after settling', () => {
    const after = done((project) => addStringUp(project, BEGUN), first);
    expect(after.build?.stringUps[1]).toMatchObject({ stage: 'settled', tuner: 0.5, meter: 'the dial in the case' });
    expect(after.build?.stringUps[0]).toBe(first.build?.stringUps[0]);
  });

  it('has room for so many, each of its own name', () => {
    expect(codesOf(addStringUp(onto(addStringUp(steelProject, BEGUN)), BEGUN))).toEqual(['stringUp.taken']);
    const full = strung(Array.from({ length: MOST_STRING_UPS }, (_, index) => stringUp({ id: `u${index}` })));
    expect(codesOf(addStringUp(full, BEGUN))).toEqual(['stringUp.many']);
    expect(codesOf(addStringUp(steelProject, { ...BEGUN, stood: { s1: 51 } }))).toEqual(['stringUp.plan']);
    expect(codesOf(addStringUp(steelProject, { ...BEGUN, predicted: { s1: Number.NaN } }))).toEqual(['stringUp.plan']);
  });
});

describe('removeStringUp', () => {
  it('takes one out', () => {
    expect(done((project) => removeStringUp(project, 'u1'), first).build?.stringUps).toEqual([]);
  });

  it('refuses one that is not there', () => {
    expect(codesOf(removeStringUp(first, 'none'))).toEqual(['stringUp.unknown']);
    expect(codesOf(removeStringUp(steelProject, 'u1'))).toEqual(['stringUp.unknown']);
  });
});

describe('readCents', () => {
  const read = (fret: number, cents: number | null, string = 's1', id = 'u1') => ({ id, string, fret, cents });

  it('keeps what was read, and takes it out again', () => {
    const seventh = done((project) => readCents(project, read(7, -2.5)), first);
    expect(seventh.build?.stringUps[0]?.cents.s1).toEqual({ '7': -2.5, '12': 1 });
    const back = done((project) => readCents(project, read(12, null)), seventh);
    expect(back.build?.stringUps[0]?.cents.s1).toEqual({ '7': -2.5 });
    const none = onto(readCents(back, read(7, null))).build?.stringUps[0]?.cents;
    expect(Object.keys(none ?? {})).toEqual(['s2', 's3', 's4', 's5', 's6']);
  });

  it.each([
    [read(12, 100.1), 'stringUp.cents'],
    [read(12, -100.1), 'stringUp.cents'],
    [read(12, Number.NaN), 'stringUp.cents'],
    [read(25, 1), 'stringUp.fret'],
    [read(0, 1), 'stringUp.fret'],
    [read(1.5, 1), 'stringUp.fret'],
    [read(12, 1, 's9'), 'stringUp.string'],
    [read(12, 1, 's1', 'none'), 'stringUp.unknown'],
  ])('refuses %o', (reading, code) => {
    expect(codesOf(readCents(first, reading))).toEqual([code]);
  });

  it('holds six frets, on whichever strings', () => {
    const six = [3, 5, 7, 9, 10].reduce((project, fret) => onto(readCents(project, read(fret, 1))), first);
    expect(codesOf(readCents(six, read(1, 1, 's2')))).toEqual(['stringUp.frets']);
    expect(onto(readCents(six, read(10, 1, 's2'))).build?.stringUps[0]?.cents.s2).toEqual({ '10': 1, '12': 2 });
  });
});

describe('changeStringUp', () => {
  it('keeps what stands beside the cents, null where it was not read', () => {
    const action = { treble: 2.1, bass: null };
    const change = { stage: 'season', action, relief: 0.2, humidity: 44, note: 'new strings', meter: 'wall' } as const;
    const after = done((project) => changeStringUp(project, 'u1', change), first);
    expect(after.build?.stringUps[0]).toMatchObject(change);
    expect(onto(changeStringUp(after, 'u1', { humidity: null })).build?.stringUps[0]?.humidity).toBeNull();
  });

  it.each([
    [{ tuner: 0 }, 'stringUp.range'],
    [{ stood: { s1: Number.NaN } }, 'stringUp.range'],
    [{ tuner: 21 }, 'stringUp.range'],
    [{ action: { treble: 16, bass: null } }, 'stringUp.range'],
    [{ action: { treble: null, bass: -1 } }, 'stringUp.range'],
    [{ relief: 4 }, 'stringUp.range'],
    [{ humidity: 101 }, 'stringUp.range'],
    [{ meter: 'x'.repeat(101) }, 'stringUp.long'],
    [{ note: 'x'.repeat(2001) }, 'stringUp.long'],
  ])('refuses %o', (change, code) => {
    expect(codesOf(changeStringUp(first, 'u1', change))).toEqual([code]);
  });
});

describe('takeLearned', () => {
  const learned = { byString: { s1: 0.2, s6: 0.41 }, builds: 12, accepted: '2026-11-25T10:00:00.000Z' };

  it('copies the figures, and takes them out again', () => {
    const after = done((project) => takeLearned(project, learned), steelProject);
    expect(after.compensation.learned).toEqual(learned);
    expect(done((project) => takeLearned(project, null), after).compensation).toEqual(steelProject.compensation);
  });

  it('refuses a string that is not there, and what is no length', () => {
    expect(codesOf(takeLearned(steelProject, { ...learned, byString: { s9: 1 } }))).toEqual(['learned.string']);
    expect(codesOf(takeLearned(steelProject, { ...learned, byString: { s1: Number.NaN } }))).toEqual([
      'learned.figure',
    ]);
    expect(codesOf(takeLearned(steelProject, { ...learned, byString: { s1: 16 } }))).toEqual(['learned.figure']);
  });

  it('goes with the strings that it was learned from', () => {
    const after = onto(takeLearned(steelProject, learned));
    expect(onto(chooseStringSet(after, 'steel-13-56')).compensation.learned).toBeNull();
  });
});
