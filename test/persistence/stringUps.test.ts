import { describe, expect, it } from 'vitest';
import type { StringUp } from '../../src/core/document/buildTypes';
import type { Learned, Project } from '../../src/core/document/types';
import { decodeProject } from '../../src/persistence/decodeProject';
import { encodeProject } from '../../src/persistence/encodeProject';
import { steelProject } from '../core/document/steelProject';
import { atTwelfth, stringUp, strung } from '../core/learning/strung';

const learned: Learned = { byString: { s6: 0.41, s1: 0.2 }, builds: 12, accepted: '2026-11-25T10:00:00.000Z' };
const project: Project = {
  ...strung([stringUp({ cents: atTwelfth([1, -2, 3, -4, 5, -6]), humidity: 44, meter: 'the dial in the case' })]),
  compensation: { ...steelProject.compensation, learned },
};

/** The file with one string-up, or what was learned, changed in it. */
const withUp = (change: object): string => {
  const file = JSON.parse(encodeProject(project)) as { build: { stringUps: StringUp[] } };
  file.build.stringUps = file.build.stringUps.map((each) => ({ ...each, ...change }) as StringUp);
  return JSON.stringify(file);
};
const withLearned = (change: object): string => {
  const file = JSON.parse(encodeProject(project)) as { compensation: { learned: object } };
  file.compensation.learned = { ...file.compensation.learned, ...change };
  return JSON.stringify(file);
};

describe('a file with string-ups and what was learned', () => {
  it('comes back the same, its strings always in the same order', () => {
    expect(decodeProject(encodeProject(project))).toEqual({ ok: true, value: project });
    expect(encodeProject(project)).toContain('"byString": {\n        "s1": 0.2,\n        "s6": 0.41\n      }');
  });

  it('from before there was such a thing has learned nothing', () => {
    const file = JSON.parse(encodeProject(steelProject)) as { compensation: { learned?: unknown } };
    delete file.compensation.learned;
    expect(decodeProject(JSON.stringify(file))).toEqual({ ok: true, value: steelProject });
  });

  it.each([
    ['cents of another note', withUp({ cents: { s1: { '12': 101 } } })],
    ['a fret that there is not', withUp({ cents: { s1: { '25': 1 } } })],
    ['a fret in words', withUp({ cents: { s1: { twelve: 1 } } })],
    ['a tuner without doubt', withUp({ tuner: 0 })],
    ['a humidity above all', withUp({ humidity: 400 })],
    ['a break point beyond the bridge', withUp({ stood: { s1: 1e9 } })],
    ['a setting of no name', withUp({ stage: 'later' })],
    ['a crown of no name', withUp({ crown: 'bent' })],
    ['a day that is none', withUp({ at: 'yesterday' })],
    ['a word too many', withUp({ note: 'x'.repeat(2001) })],
    ['a learned figure beyond the bridge', withLearned({ byString: { s1: 16 } })],
    ['learning from no instrument', withLearned({ builds: 0 })],
    ['an acceptance on no day', withLearned({ accepted: '' })],
  ])('is refused with %s', (_, file) => {
    expect(decodeProject(file).ok).toBe(false);
  });
});
