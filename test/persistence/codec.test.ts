import { describe, expect, it } from 'vitest';
import { demoProject } from '../../src/core/kinds/demo';
import { KINDS } from '../../src/core/kinds/kinds';
import { decodeProject } from '../../src/persistence/decodeProject';
import { encodeProject } from '../../src/persistence/encodeProject';

const WHEN = '2026-03-01T09:00:00.000Z';
const demo = demoProject('demo', WHEN);

interface ParsedFile {
  readonly instrument: object;
  readonly bridge: { readonly outline: { readonly parameters: object } };
}

/** The demo's file with one thing changed in its parsed form. */
const tampered = (change: (file: ParsedFile) => void): string => {
  const file = JSON.parse(encodeProject(demo));
  change(file);
  return JSON.stringify(file);
};

const refusal = (text: string) => {
  const read = decodeProject(text);
  if (read.ok) throw new Error('the file was taken');
  return read.issues[0];
};

describe('encodeProject', () => {
  it.each(KINDS)('$name comes back the same', ({ make }) => {
    const project = make('a', WHEN);
    expect(decodeProject(encodeProject(project))).toEqual({ ok: true, value: project });
  });

  it('writes the same text whatever order the keys were in, and ends it with a line feed', () => {
    const shuffle = (value: unknown): unknown =>
      typeof value === 'object' && value !== null && !Array.isArray(value)
        ? Object.fromEntries(
            Object.entries(value)
              .reverse()
              .map(([key, inner]) => [key, shuffle(inner)]),
          )
        : value;
    const own = { ...demo, compensation: { ...demo.compensation, own: { s2: 2, s1: 1 } } };
    const text = encodeProject(own);
    expect(encodeProject(shuffle(own) as typeof demo)).toBe(text);
    expect(text.startsWith('{\n  "format": "saddlemark-project",\n  "version": 1,')).toBe(true);
    expect(text.endsWith('}\n')).toBe(true);
  });

  it('refuses a number that a file cannot hold', () => {
    const bad = { ...demo, setup: { ...demo.setup, relief: Number.NaN } };
    expect(() => encodeProject(bad)).toThrow();
  });
});

describe('decodeProject', () => {
  it.each([
    ['nothing', ''],
    ['words', 'Dear maker,'],
    ['half a file', encodeProject(demo).slice(0, 400)],
    ['bytes of a picture', '\u0089PNG\r\n\u001a\n\u0000'],
  ])('says that %s is not a project', (_, text) => {
    expect(refusal(text)?.code).toBe('file.text');
    expect(refusal(text)?.message).toContain('not a Saddlemark project');
  });

  it.each([['{}'], ['[]'], ['null'], ['7'], ['{"format":"other","version":1}']])('says that %s is not ours', (text) => {
    expect(refusal(text)?.code).toBe('file.foreign');
  });

  it('takes a file that begins with a byte order mark', () => {
    expect(decodeProject(`\uFEFF${encodeProject(demo)}`).ok).toBe(true);
  });

  it('refuses what is too large before reading it', () => {
    expect(refusal(' '.repeat(5_000_001))?.code).toBe('file.large');
  });

  it('says that a later version or an unknown group comes from a newer Saddlemark', () => {
    const later = refusal(tampered((file) => Object.assign(file, { version: 2 })));
    expect(later).toMatchObject({ code: 'file.newer' });
    expect(later?.message).toContain('made by a newer Saddlemark');
    const group = refusal(tampered((file) => Object.assign(file, { height: {} })));
    expect(group).toMatchObject({ code: 'file.newer', path: 'height' });
    expect(group?.message).toContain('made by a newer Saddlemark');
  });

  it('names the value that is damaged and what was expected', () => {
    const text = refusal(tampered((file) => Object.assign(file.instrument, { widths: { nut: 'wide', twelfth: 57 } })));
    expect(text).toMatchObject({ code: 'file.damaged', path: 'instrument.widths.nut' });
    expect(text?.message).toBe('The file is damaged: "instrument.widths.nut" is "wide", expected a number.');
    const missing = refusal(tampered((file) => Reflect.deleteProperty(file, 'setup')));
    expect(missing?.message).toBe('The file is damaged: "setup" is missing.');
    const hand = refusal(tampered((file) => Object.assign(file.instrument, { hand: 'both' })));
    expect(hand?.message).toContain('"instrument.hand" is "both", expected ("right" | "left")');
  });

  it('holds every value against its own field', () => {
    const wide = refusal(tampered((file) => Object.assign(file.instrument, { widths: { nut: 4000, twelfth: 57 } })));
    expect(wide).toMatchObject({ code: 'field.range', path: 'instrument.widths.nut' });
    expect(wide?.message).toContain('Nut width goes from 20 mm to 90 mm');
  });

  it.each(['__proto__', 'constructor', 'prototype'])('refuses the key %s wherever it stands', (key) => {
    const own = encodeProject(demo).replace('"own": {}', `"own": {"${key}": 1}`);
    expect(refusal(own)).toMatchObject({ code: 'file.damaged', path: key });
    const top = encodeProject(demo).replace('{', `{"${key}": {"x": 1},`);
    expect(refusal(top)?.code).toBe('file.damaged');
    expect(Object.hasOwn(Object.prototype, 'x')).toBe(false);
  });

  it.each([
    ['no strings', []],
    ['25 strings', Array.from({ length: 25 }, (_, index) => ({ id: `s${index}`, name: 'E', diameter: 1 }))],
    [
      'a string id that could reach elsewhere',
      [
        { id: 'a.b', name: 'E', diameter: 1 },
        { id: 'c', name: 'E', diameter: 1 },
      ],
    ],
    [
      'two strings of one id',
      [
        { id: 'a', name: 'E', diameter: 1 },
        { id: 'a', name: 'E', diameter: 1 },
      ],
    ],
  ])('refuses %s', (_, strings) => {
    expect(refusal(tampered((file) => Object.assign(file, { strings })))?.code).toBe('file.damaged');
  });

  it('leaves out no dimension of the shape', () => {
    const text = refusal(tampered((file) => Reflect.deleteProperty(file.bridge.outline.parameters, 'length')));
    expect(text?.path).toBe('bridge.outline.parameters.length');
  });
});
