import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { createAround } from '../../../src/core/derive/createAround';
import { createDerive } from '../../../src/core/derive/createDerive';
import { bodyFields } from '../../../src/core/document/bodyFields';
import type { Body } from '../../../src/core/document/bodyTypes';
import { allFields, fieldAt } from '../../../src/core/document/fieldAt';
import { withFieldValue } from '../../../src/core/document/fieldValue';
import type { Project } from '../../../src/core/document/types';
import { validateProject } from '../../../src/core/document/validateProject';
import { drawAround } from '../../../src/core/drawing/drawAround';
import { decodeProject } from '../../../src/persistence/decodeProject';
import { encodeProject } from '../../../src/persistence/encodeProject';
import { bodyWith, braceWith, plateWith } from '../body/bodyCase';
import { valueFor } from '../derive/randomProject';
import { steelProject } from './steelProject';

const full: Body = bodyWith({
  hand: 'left',
  from: 'octave',
  braces: [braceWith({ height: 12 }), braceWith({ id: 'b2', name: 'bar', kind: 'tone-bar', read: false })],
  plate: plateWith(),
  soundhole: { centre: 500, across: 100, along: 80 },
  cutaway: { side: 'treble', aside: 40, end: 450 },
  wireHole: { at: { x: -30, y: 647 }, diameter: 2.5 },
});
const project: Project = { ...steelProject, body: full };

/** What no row edits: chosen by commands, or kept by the program. */
const WITHOUT_ROW = [/^body\.hand$/, /^body\.braces\.\d+\.(id|read)$/, /^body\.plate\.read$/];

const leaves = (value: unknown, path: string): readonly string[] =>
  typeof value === 'object' && value !== null
    ? Object.entries(value).flatMap(([key, child]) => leaves(child, `${path}.${key}`))
    : [path];

describe('the rows of the body', () => {
  it('are one for every figure and choice, each with its own label and a sentence of help', () => {
    const rows = bodyFields(project);
    const paths = new Set(rows.map(({ path }) => path));
    const without = leaves(full, 'body').filter((leaf) => !paths.has(leaf));
    expect(without.filter((leaf) => !WITHOUT_ROW.some((pattern) => pattern.test(leaf)))).toEqual([]);
    for (const path of paths) expect(fieldAt(project, path)?.path).toBe(path);
    const all = allFields(project);
    expect(new Set(all.map(({ label }) => label)).size).toBe(all.length);
    for (const { help } of rows) expect(help).toMatch(/^[A-Z].*\.$/s);
  });

  it('are none while nothing is said of it, but for the limits', () => {
    expect(bodyFields(steelProject)).toEqual([]);
    expect(fieldAt(steelProject, 'body.plate.front')).toBeNull();
    for (const name of ['braceToPin', 'braceToHole', 'plateAroundPins', 'caulThickness', 'caulAcross', 'caulGroove'])
      expect(fieldAt(steelProject, `limits.${name}`)).toMatchObject({ kind: 'length', optional: true });
  });

  it('judge a file', () => {
    expect(validateProject(project)).toEqual([]);
    const wide = { ...project, body: { ...full, braces: [braceWith({ width: 0 })] } };
    expect(validateProject(wide).map(({ path, code }) => [path, code])).toEqual([
      ['body.braces.0.width', 'field.range'],
    ]);
  });
});

describe('a body with any figures that its rows allow', () => {
  const fields = bodyFields(project);
  const edited = fc
    .array(
      fc.constantFrom(...fields).chain((field) => fc.tuple(fc.constant(field.path), valueFor(field))),
      { maxLength: 14 },
    )
    .map((edits) => edits.reduce((now, [path, value]) => withFieldValue(now, path, value), project));

  it('comes back from its file with the same bytes', () => {
    fc.assert(
      fc.property(edited, (any) => {
        const text = encodeProject(any);
        const read = decodeProject(text);
        if (!read.ok) throw new Error(read.issues.map(({ message }) => message).join(' '));
        expect(encodeProject(read.value)).toBe(text);
      }),
      { seed: 11, numRuns: 200 },
    );
  });

  it('is checked and drawn, in figures alone', () => {
    fc.assert(
      fc.property(edited, fc.constantFrom('right' as const, 'left' as const), (any, hand) => {
        const strung = { ...any, instrument: { ...any.instrument, hand } };
        const derived = createDerive()(strung);
        const around = createAround(() => null)(strung, derived);
        for (const { message, lengths } of around.body?.checks ?? []) {
          expect(message).not.toMatch(/NaN|undefined/);
          expect(lengths.every((mm) => Number.isFinite(mm) && mm >= 0)).toBe(true);
        }
        const view = { hand, datum: 'front' as const, style: { unit: 'mm' as const, decimals: 1 as const } };
        const ids = drawAround(strung, derived, around, view).over.map(({ id }) => id);
        expect(new Set(ids).size).toBe(ids.length);
      }),
      { seed: 12, numRuns: 150 },
    );
  });
});

describe('a file', () => {
  const text = encodeProject(project);

  it('that was written before a body had a size has none measured', () => {
    const older = text.replace(/\s*"(across|tail)": null,/g, '');
    expect(older).not.toContain('"tail"');
    const read = decodeProject(older);
    expect(read.ok && read.value.body).toEqual(full);
  });

  it.each([
    ['"kind": "x-leg"', '"kind": "y-leg"'],
    ['"read": true', '"read": 1'],
    ['"height": 12', '"height": "12"'],
    ['"hand": "left"', '"hand": "both"'],
    ['"from": "octave"', '"from": "moon"'],
    ['"width": 8', '"width": 8000'],
    ['"id": "b2"', '"id": "b 2"'],
    ['"aside": 40', '"aside": 40, "depth": 1'],
  ])('with %s as %s is refused', (from, to) => {
    const at = text.indexOf('"body": {');
    const changed = text.slice(0, at) + text.slice(at).replace(from, to);
    expect(changed).not.toBe(text);
    expect(decodeProject(changed).ok).toBe(false);
  });

  it('with more braces than a top has is refused', () => {
    const file = JSON.parse(text);
    const [brace] = file.body.braces;
    const withBraces = (count: number) => {
      file.body.braces = Array.from({ length: count }, (_, index) => ({ ...brace, id: `b${index}` }));
      return decodeProject(JSON.stringify(file)).ok;
    };
    expect(withBraces(40)).toBe(true);
    expect(withBraces(41)).toBe(false);
  });
});
