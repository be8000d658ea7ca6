import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { allFields } from '../../src/core/document/fieldAt';
import { withFieldValue } from '../../src/core/document/fieldValue';
import { demoProject } from '../../src/core/kinds/demo';
import { KINDS } from '../../src/core/kinds/kinds';
import { usualBridge } from '../../src/core/kinds/usualBridge';
import { decodeProject } from '../../src/persistence/decodeProject';
import { encodeProject } from '../../src/persistence/encodeProject';
import { valueFor } from '../core/derive/randomProject';

const WHEN = '2026-03-01T09:00:00.000Z';
const demo = demoProject('demo', WHEN);

const [string] = demo.strings;

interface ParsedFile {
  readonly instrument: object;
  readonly setup: object;
  readonly compensation: object;
  readonly bridge: { readonly slot: object; readonly pins: object; readonly outline: { readonly parameters: object } };
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

  it.each(['rectangular', 'belly', 'belly-nut', 'pyramid-tip', 'tie-block', 'small-ukulele', 'double-sided'] as const)(
    'a %s bridge comes back the same',
    (shape) => {
      const project = { ...demo, bridge: usualBridge(shape) };
      expect(decodeProject(encodeProject(project))).toEqual({ ok: true, value: project });
    },
  );

  it('refuses a shape that there is not', () => {
    const file = encodeProject(demo).replace('"shape": "belly"', '"shape": "triangle"');
    expect(decodeProject(file).ok).toBe(false);
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
    const own = {
      ...demo,
      compensation: { ...demo.compensation, own: { s2: 2, s1: 1 } },
      doubts: { relief: 0.1, action: 0.2 },
      limits: { share: 0.6, land: 0.4 },
    };
    const text = encodeProject(own);
    expect(encodeProject(shuffle(own) as typeof demo)).toBe(text);
    expect(text.startsWith('{\n  "format": "saddlemark-project",\n  "version": 1,')).toBe(true);
    expect(text.endsWith('}\n')).toBe(true);
  });

  it.each(KINDS)('$name is written with the same bytes after any edits, and again once it was read', ({ make }) => {
    const start = make('a', WHEN);
    const fields = allFields(start).filter(({ path }) => path !== 'bridge.outline.shape');
    const edit = fc.constantFrom(...fields).chain((field) => fc.tuple(fc.constant(field.path), valueFor(field)));
    fc.assert(
      fc.property(fc.array(edit, { maxLength: 12 }), (edits) => {
        const edited = edits.reduce((now, [path, value]) => withFieldValue(now, path, value), start);
        const text = encodeProject(edited);
        const read = decodeProject(text);
        if (!read.ok) throw new Error(read.issues.map(({ message }) => message).join(' '));
        expect(encodeProject(read.value)).toBe(text);
      }),
      { seed: 7, numRuns: 200 },
    );
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
    const group = refusal(tampered((file) => Object.assign(file, { loans: {} })));
    expect(group).toMatchObject({ code: 'file.newer', path: 'loans' });
    expect(group?.message).toContain('made by a newer Saddlemark');
  });

  it('names the value that is damaged and what was expected', () => {
    const text = refusal(
      tampered((file) => Object.assign(file.instrument, { widths: { nut: 'wide', twelfth: 57, last: null } })),
    );
    expect(text).toMatchObject({ code: 'file.damaged', path: 'instrument.widths.nut' });
    expect(text?.message).toBe('The file is damaged: "instrument.widths.nut" is "wide", expected a number.');
    const missing = refusal(tampered((file) => Reflect.deleteProperty(file, 'compensation')));
    expect(missing?.message).toBe('The file is damaged: "compensation" is missing.');
    const hand = refusal(tampered((file) => Object.assign(file.instrument, { hand: 'both' })));
    expect(hand?.message).toContain('"instrument.hand" is "both", expected ("right" | "left")');
  });

  it('holds every value against its own field', () => {
    const wide = refusal(tampered((file) => Object.assign(file.instrument, { widths: { nut: 4000, twelfth: 57 } })));
    expect(wide).toMatchObject({ code: 'field.range', path: 'instrument.widths.nut' });
    expect(wide?.message).toContain('Nut width goes from 20 mm to 90 mm');
  });

  // What a file of the first kind lacks, and what is then taken: written out by hand.
  it('takes the usual where a group is absent', () => {
    const usual = {
      fit: { firstFret: 1, lastFret: 12, match: 'range', nut: 'stays', line: 'least-squares' },
      height: { kind: 'steel', straightedge: null, pickup: 0, run: 9.5 },
      audit: {
        from: 'nut',
        treble: null,
        bass: null,
        centsTreble: null,
        centsBass: null,
        actionTreble: null,
        actionBass: null,
        saddleThickness: 3.175,
        crown: 1.6,
        slotWidth: 3.175,
        pinSpread: null,
        pinsFromSlot: null,
        pinsToBack: null,
        ahead: null,
      },
    };
    const text = tampered((file) => {
      const drop = (from: object, ...keys: readonly string[]) => {
        for (const key of keys) Reflect.deleteProperty(from, key);
      };
      drop(file, 'height', 'audit', 'doubts', 'limits');
      drop(file.setup, 'nutHeight', 'reliefFrets', 'fingerDistance', 'pushDown');
      drop(file.compensation, 'fit');
      drop(file.instrument, 'boardRadius', 'pairGap', 'seamOffset');
      Object.assign(file.instrument, { frets: { bodyJoin: 14 }, widths: { nut: 46, twelfth: 57 } });
      drop(file.bridge.slot, 'depth', 'slant');
      drop(file.bridge, 'thickness', 'rim', 'density');
      drop(file.bridge.pins, 'taper', 'underHead');
    });
    const read = decodeProject(text);
    if (!read.ok) throw new Error(read.issues[0]?.message);
    const { value } = read;
    expect(value).toMatchObject({ height: usual.height, audit: usual.audit, doubts: {}, limits: {} });
    expect(value.compensation.fit).toEqual(usual.fit);
    expect(value.setup).toEqual({
      action: demo.setup.action,
      relief: demo.setup.relief,
      nutHeight: { treble: 0.3, bass: 0.4 },
      reliefFrets: { from: 1, to: 14 },
      fingerDistance: 0,
      pushDown: 0,
    });
    const { frets, widths, boardRadius, pairGap, seamOffset } = value.instrument;
    expect({ frets, widths, boardRadius, pairGap, seamOffset }).toEqual({
      frets: { count: 20, bodyJoin: 14 },
      widths: { nut: 46, twelfth: 57, last: null },
      boardRadius: null,
      pairGap: 2,
      seamOffset: 0,
    });
    expect([value.bridge.slot.depth, value.bridge.slot.slant, value.bridge.thickness]).toEqual([6, null, 9]);
    // Glue to the very edge, and rosewood: the joiner's page that the field names gives 870 kg/m³ dry.
    expect([value.bridge.rim, value.bridge.density]).toEqual([0, 870]);
    // Under the skirt of a 3° pin, on average: guitaringpassionately.com, bridge pin sizing.
    expect(value.bridge.pins).toMatchObject({ taper: 3, underHead: 5.4 });
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
    ['two strings', demo.strings.slice(0, 2)],
    ['13 strings', Array.from({ length: 13 }, (_, index) => ({ ...string, id: `s${index}` }))],
    ['a string id that could reach elsewhere', [{ ...string, id: 'a.b' }, ...demo.strings.slice(1)]],
    ['two strings of one id', [{ ...string, id: 's2' }, ...demo.strings.slice(1)]],
    ['half a course', [{ ...string, course: 1.5 }, ...demo.strings.slice(1)]],
    [
      'a core without a shape',
      [{ ...string, elastic: { kind: 'core', coreDiameter: 0.3, modulus: 200 } }, ...demo.strings.slice(1)],
    ],
  ])('refuses %s', (_, strings) => {
    expect(refusal(tampered((file) => Object.assign(file, { strings })))?.code).toBe('file.damaged');
  });

  it('takes the strings that those were made from', () => {
    const twelve = Array.from({ length: 12 }, (_, index) => ({ ...string, id: `s${index}` }));
    expect(decodeProject(tampered((file) => Object.assign(file, { strings: twelve }))).ok).toBe(true);
  });

  // −5 mm to the 5th fret, and a sixth reading to the 12th: neither has a box of its own in every project.
  it.each([
    [[{ fret: 5, value: -5 }], 'instrument.scale.readings.5.0'],
    [[1, 2, 3, 4, 5, 6].map((n) => ({ fret: 12, value: n === 6 ? 4000 : 316 })), 'instrument.scale.readings.12.5'],
  ])('holds every reading against what a reading may be: %#', (readings, path) => {
    const text = tampered((file) => Object.assign(file.instrument, { scale: { ...demo.instrument.scale, readings } }));
    expect(refusal(text)).toMatchObject({ code: 'field.range', path });
  });

  it('leaves out no dimension of the shape', () => {
    const text = refusal(tampered((file) => Reflect.deleteProperty(file.bridge.outline.parameters, 'length')));
    expect(text?.path).toBe('bridge.outline.parameters.length');
  });
});
