import { describe, expect, it } from 'vitest';
import { createDerive } from '../../src/core/derive/createDerive';
import type { Project } from '../../src/core/document/types';
import { validateProject } from '../../src/core/document/validateProject';
import { demoProject } from '../../src/core/kinds/demo';
import { KINDS } from '../../src/core/kinds/kinds';
import { addString } from '../../src/store/commands/addString';
import { chooseElastic } from '../../src/store/commands/chooseElastic';
import { chooseWinding } from '../../src/store/commands/chooseWinding';
import { removeString } from '../../src/store/commands/removeString';
import { expectReversible } from './expectReversible';
import { MORNING } from './startStore';

const demo = demoProject('test', MORNING);
const ukulele = KINDS.find(({ id }) => id === 'tenor-ukulele')?.make('test', MORNING) ?? demo;
const courses = ({ strings }: Project): readonly number[] => strings.map(({ course }) => course);
const stepped = (start: Project, ...steps: readonly ((project: Project) => ReturnType<typeof addString>)[]): Project =>
  steps.reduce((project, step) => {
    const result = step(project);
    if (!result.ok) throw new Error(result.issues[0]?.message);
    return result.value;
  }, start);

describe('strings that come and go', () => {
  it('adds a string of its own course, and says where its figures come from', () => {
    const more = expectReversible('One string more', ({ change }) =>
      change('One string more', (project) => addString(project, { after: 5, pair: false })),
    );
    expect(courses(more)).toEqual([1, 2, 3, 4, 5, 6, 7]);
    expect(more.strings[6]).toMatchObject({ id: 's7', diameter: demo.strings[5]?.diameter });
    expect(more.strings[6]?.source).toMatch(/^copied from another string; /);
    expect(validateProject(more)).toEqual([]);
  });

  it('makes an eight-string ukulele of the four, in pairs, with eight marks and eight pins’ worth of places', () => {
    const pairs = [0, 2, 4, 6].map((at) => (project: Project) => addString(project, { after: at, pair: true }));
    const eight = stepped(ukulele, ...pairs);
    expect(courses(eight)).toEqual([1, 1, 2, 2, 3, 3, 4, 4]);
    expect(new Set(eight.strings.map(({ id }) => id)).size).toBe(8);
    const derived = createDerive()(eight);
    expect(derived.issues).toEqual([]);
    expect(derived.models).toMatchObject({ ok: true, value: { length: 8 } });
    // Strings of a pair lie 2 mm apart, from memory; the field beside it says so.
    const xs = derived.strings.ok ? derived.strings.value.map(({ saddleX }) => saddleX) : [];
    expect((xs[0] ?? 0) - (xs[1] ?? 0)).toBeCloseTo(2, 9);
  });

  it('puts a string behind the whole course that it follows', () => {
    const paired = stepped(ukulele, (project) => addString(project, { after: 0, pair: true }));
    const five = stepped(paired, (project) => addString(project, { after: 0, pair: false }));
    expect(courses(five)).toEqual([1, 1, 2, 3, 4, 5]);
    expect(five.strings[2]?.id).toBe('s6');
  });

  it('removes a string with its own compensation, and numbers the courses again', () => {
    const start = { ...demo, compensation: { ...demo.compensation, own: { s2: 2, s3: 3 } } };
    const fewer = expectReversible(
      'One string fewer',
      ({ change }) => change('One string fewer', (project) => removeString(project, 1)),
      start,
    );
    expect(courses(fewer)).toEqual([1, 2, 3, 4, 5]);
    expect(fewer.compensation.own).toEqual({ s3: 3 });
  });

  it('keeps from 3 to 12 strings, and one pair to a course', () => {
    const three = stepped(ukulele, (project) => removeString(project, 0));
    expect(removeString(three, 0)).toMatchObject({ ok: false, issues: [{ code: 'strings.few' }] });
    const twelve = stepped(
      demo,
      ...Array.from({ length: 6 }, () => (project: Project) => addString(project, { after: 0, pair: false })),
    );
    expect(twelve.strings).toHaveLength(12);
    expect(addString(twelve, { after: 0, pair: false })).toMatchObject({
      ok: false,
      issues: [{ code: 'strings.many' }],
    });
    const paired = stepped(demo, (project) => addString(project, { after: 0, pair: true }));
    expect(addString(paired, { after: 1, pair: true })).toMatchObject({
      ok: false,
      issues: [{ code: 'strings.paired' }],
    });
    expect(addString(demo, { after: 9, pair: false })).toMatchObject({
      ok: false,
      issues: [{ code: 'strings.unknown' }],
    });
  });
});

describe('a string told another way', () => {
  it('keeps its compensation when told by measurement instead of its core', () => {
    const told = expectReversible('By measurement', ({ change }) =>
      change('By measurement', (project) =>
        chooseElastic(project, { index: 5, kind: 'measured', scaleLength: 632, openLength: 637 }),
      ),
    );
    expect(told.strings[5]?.elastic.kind).toBe('measured');
    const [before, now] = [demo, told].map((project) => createDerive()(project).models);
    const setbacks = [before, now].map((models) => (models?.ok ? models.value[5]?.saddle : Number.NaN));
    // Told at the length that it sounds with, nearly 637: what is left is the setback's own slip from 5 mm.
    expect(Math.abs((setbacks[0] ?? 0) - (setbacks[1] ?? 0))).toBeLessThan(0.005);
  });

  it('refuses a core that cannot be', () => {
    const strings = demo.strings.map((string) => ({
      ...string,
      elastic: { kind: 'measured' as const, kappa: 1, b0: 0.04 },
    }));
    const found = chooseElastic({ ...demo, strings }, { index: 0, kind: 'core', scaleLength: 632, openLength: 637 });
    expect(found).toMatchObject({ ok: false, issues: [{ code: 'field.range' }, { code: 'field.range' }] });
  });

  it('is wound or plain as the maker says', () => {
    const plain = expectReversible('Plain', ({ change }) =>
      change('Plain', (project) => chooseWinding(project, 2, false)),
    );
    expect(plain.strings[2]?.wound).toBe(false);
  });

  it('no longer claims a source for figures that the maker changed', () => {
    const changed = expectReversible('Core, string 6 0.46', ({ setField }) =>
      setField('strings.5.elastic.coreDiameter', 0.46),
    );
    expect(changed.strings[5]?.source).toMatch(/^figures changed by the maker; before: gauge/);
    expect(changed.strings[4]?.source).toBe(demo.strings[4]?.source);
  });
});
