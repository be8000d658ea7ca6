import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { createAround } from '../../../src/core/derive/createAround';
import { createDerive } from '../../../src/core/derive/createDerive';
import { deriveRepairAreas } from '../../../src/core/derive/deriveRepairAreas';
import { allFields, fieldAt } from '../../../src/core/document/fieldAt';
import { withFieldValue } from '../../../src/core/document/fieldValue';
import { repairFields } from '../../../src/core/document/repairFields';
import type { FormerHoles, Repair } from '../../../src/core/document/repairTypes';
import { SHAPE_NAMES } from '../../../src/core/document/shapeNames';
import { SHAPE_PARAMETERS, usualParameters } from '../../../src/core/document/shapeParameters';
import type { Project, ShapeName } from '../../../src/core/document/types';
import { circlePath } from '../../../src/core/geom/circlePath';
import { decodeProject } from '../../../src/persistence/decodeProject';
import { encodeProject } from '../../../src/persistence/encodeProject';
import { valueFor } from '../derive/randomProject';
import { FORMER, repairWith, rowWith, slotWith } from '../repair/formerCase';
import { steelProject } from './steelProject';

const each: FormerHoles = {
  from: 'nut',
  kind: 'each',
  each: [
    { id: 'h1', x: 20, y: 660, diameter: 5 },
    { id: 'h2', x: -20, y: 662, diameter: 5 },
  ],
};
const drawn: Repair['footprint'] = {
  ...FORMER,
  outline: { kind: 'drawn', path: circlePath({ x: 0, y: 20 }, 20), symmetric: true },
};

const shapes = Object.keys(SHAPE_NAMES) as readonly ShapeName[];
const repairs: readonly (readonly [string, Repair])[] = [
  ...shapes.map((shape): readonly [string, Repair] => [
    shape,
    repairWith({
      footprint: { ...FORMER, outline: { shape, parameters: usualParameters(shape) } },
      holes: rowWith(),
      slot: slotWith(),
    }),
  ]),
  ['a drawn outline and holes one by one', repairWith({ footprint: drawn, holes: each })],
];
const projectOf = (repair: Repair | null): Project => ({ ...steelProject, repair });

/** What no row edits: chosen by commands, or kept by the program. */
const WITHOUT_ROW = [
  /^repair\.footprint\.outline\.(kind|symmetric|path\..*)$/,
  /^repair\.holes\.kind$/,
  /^repair\.holes\.each\.\d+\.id$/,
];

const leaves = (value: unknown, path: string): readonly string[] =>
  typeof value === 'object' && value !== null
    ? Object.entries(value).flatMap(([key, child]) => leaves(child, `${path}.${key}`))
    : value === null
      ? []
      : [path];

describe('the rows of the old bridge', () => {
  it.each(repairs)('there is one for every figure and choice: %s', (_, repair) => {
    const project = projectOf(repair);
    const paths = new Set(repairFields(project).map(({ path }) => path));
    const without = leaves(repair, 'repair').filter((leaf) => !paths.has(leaf));
    expect(without.filter((leaf) => !WITHOUT_ROW.some((pattern) => pattern.test(leaf)))).toEqual([]);
    for (const path of paths) expect(fieldAt(project, path)?.path).toBe(path);
  });

  it.each(repairs)('has each path and label once, with a sentence of help: %s', (_, repair) => {
    const fields = allFields(projectOf(repair));
    expect(new Set(fields.map(({ path }) => path)).size).toBe(fields.length);
    expect(new Set(fields.map(({ label }) => label)).size).toBe(fields.length);
    for (const { help } of repairFields(projectOf(repair))) expect(help).toMatch(/^[A-Z].*\.$/s);
  });

  it('are those of the shapes, told as old', () => {
    const rows = repairFields(projectOf(repairs[0]?.[1] ?? null));
    for (const { name, min, max, source } of SHAPE_PARAMETERS.rectangular)
      expect(rows).toContainEqual(
        expect.objectContaining({ path: `repair.footprint.outline.parameters.${name}`, min, max, source }),
      );
    expect(rows.map(({ label }) => label)).toContain('Old bridge length');
  });

  it('are none for new work', () => {
    expect(repairFields(projectOf(null))).toEqual([]);
    expect(fieldAt(projectOf(null), 'repair.footprint.front')).toBeNull();
  });
});

describe('an old bridge with any figures that its rows allow', () => {
  const edited = fc.constantFrom(...repairs.map(([, repair]) => projectOf(repair))).chain((project) => {
    const fields = repairFields(project).filter(({ path }) => path !== 'repair.footprint.outline.shape');
    const edit = fc.constantFrom(...fields).chain((field) => fc.tuple(fc.constant(field.path), valueFor(field)));
    return fc
      .array(edit, { maxLength: 12 })
      .map((edits) => edits.reduce((now, [path, value]) => withFieldValue(now, path, value), project));
  });

  it('comes back from its file with the same bytes', () => {
    fc.assert(
      fc.property(edited, (project) => {
        const text = encodeProject(project);
        const read = decodeProject(text);
        if (!read.ok) throw new Error(read.issues.map(({ message }) => message).join(' '));
        expect(encodeProject(read.value)).toBe(text);
      }),
      { seed: 5, numRuns: 200 },
    );
  });

  it('is computed, or says why not', async () => {
    await fc.assert(
      fc.asyncProperty(edited, async (project) => {
        const derived = createDerive()(project);
        const { repair } = createAround(() => null)(project, derived);
        const { bridge, slot } = derived;
        if (!repair?.place.ok || !bridge.ok || !slot.ok) {
          expect(repair?.place.ok === false && repair.place.issues.length).toBeGreaterThan(0);
          return;
        }
        const areas = await deriveRepairAreas(repair.place.value, bridge.value.footprint.outline, slot.value.outline);
        if (!areas.ok) throw new Error(areas.issues[0]?.message);
        const { former, covered, showing, beyond } = areas.value;
        expect(covered + showing.area).toBeCloseTo(former, 1);
        // What the two bridges share is the same seen from either.
        expect(bridge.value.area - beyond.area).toBeCloseTo(covered, 1);
        const { checks } = createAround(() => areas)(project, derived);
        expect(checks.every(({ message }) => message !== '' && !message.includes('NaN'))).toBe(true);
      }),
      { seed: 6, numRuns: 100 },
    );
  });
});

describe('a file', () => {
  const text = encodeProject(projectOf(repairs[0]?.[1] ?? null));

  it.each([
    ['"front": 620', '"front": 62000'],
    ['"front": 620', '"front": "620"'],
    ['"count": 6', '"count": 100'],
    ['"count": 6', '"count": 2.5'],
    ['"kind": "row"', '"kind": "ring"'],
    ['"aside": 0', '"aside": 0, "colour": 1'],
  ])('with %s as %s is refused', (from, to) => {
    const at = text.indexOf('"repair"');
    const changed = text.slice(0, at) + text.slice(at).replace(from, to);
    expect(changed).not.toBe(text);
    expect(decodeProject(changed).ok).toBe(false);
  });
});
