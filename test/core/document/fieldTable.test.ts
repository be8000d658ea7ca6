import { describe, expect, it } from 'vitest';
import { allFields, fieldAt } from '../../../src/core/document/fieldAt';
import { FIELDS, READING_COUNT } from '../../../src/core/document/fieldTable';
import { SHAPE_PARAMETERS, usualParameters } from '../../../src/core/document/shapeParameters';
import { validateField } from '../../../src/core/document/validateField';
import { KINDS } from '../../../src/core/kinds/kinds';
import { steelProject, steelWith } from './steelProject';

/** Leaves of a project that no row edits, and why. */
const WITHOUT_ROW = [
  /^(format|version|id|revision)$/, // kept by the program
  /^about\.(created|changed|notes)$/, // kept by the program; notes have no box yet
  /^instrument\.scale\.from$/, // follows what was typed last
  /^instrument\.scale\.readings\.\d\.fret$/, // readings go to the 12th fret
  /^strings\.\d+\.(id|name|diameter)$/, // come with the string set
];

const leaves = (value: unknown, path: string): readonly string[] =>
  typeof value === 'object' && value !== null
    ? Object.entries(value).flatMap(([key, child]) => leaves(child, path === '' ? key : `${path}.${key}`))
    : [path];

const read = { from: 'readings' as const, entered: 645, readings: [{ fret: 12, value: 322.5 }] };
const projects = [
  ...KINDS.map(({ make }) => make('p', '2026-01-01T00:00:00Z')),
  steelWith({ instrument: { scale: read }, compensation: { own: { s1: 1.5 } } }),
];

describe('the field table', () => {
  it.each(projects.map((project) => [project.about.name, project] as const))(
    'has a row for every figure and choice of %s',
    (_, project) => {
      const paths = new Set(allFields(project).map(({ path }) => path));
      const without = leaves(project, '').filter((leaf) => {
        const path = leaf.replace(/^(instrument\.scale\.readings\.\d)\.value$/, '$1');
        return !paths.has(path) && !WITHOUT_ROW.some((pattern) => pattern.test(leaf));
      });
      // A bridge without pins holds null there.
      expect(without.filter((leaf) => leaf !== 'bridge.pins')).toEqual([]);
    },
  );

  it('has each path and label once, each with a sentence of help', () => {
    for (const project of projects) {
      const fields = allFields(project);
      expect(new Set(fields.map(({ path }) => path)).size).toBe(fields.length);
      expect(new Set(fields.map(({ label }) => label)).size).toBe(fields.length);
      for (const { help } of fields) expect(help).toMatch(/^[A-Z0-9].*\.$/s);
    }
  });

  it('shows the source of every bridge dimension it starts from', () => {
    for (const row of Object.values(SHAPE_PARAMETERS).flat()) {
      expect(row.source).toBeTruthy();
      expect(validateField(row, row.usual)).toEqual([]);
    }
    expect(usualParameters('tie-block')).toEqual({ length: 190, full: 28, block: 80, corner: 0 });
  });

  // Names that checks from outside the project drive the app by.
  it.each([
    ['instrument.scale.readings.0', 'Nut to 12th fret, 1st reading'],
    ['instrument.scale.readings.1', 'Nut to 12th fret, 2nd reading'],
    ['instrument.scale.readings.2', 'Nut to 12th fret, 3rd reading'],
    ['instrument.scale.entered', 'Scale length'],
    ['instrument.widths.nut', 'Nut width'],
    ['instrument.spread.own', 'String spacing at saddle, outer'],
    ['setup.action.treble', 'Action at 12th fret, treble'],
    ['setup.action.bass', 'Action at 12th fret, bass'],
    ['setup.relief', 'Neck relief'],
    ['bridge.slot.length', 'Slot length'],
    ['bridge.slot.width', 'Slot width'],
    ['bridge.pins.spread', 'Pin spacing, outer'],
    ['bridge.locating.drill', 'Locating-pin hole'],
    ['instrument.hand', 'Hand'],
    ['compensation.by', 'Compensation by'],
    ['bridge.outline.shape', 'Bridge shape'],
  ])('calls %s "%s"', (path, label) => {
    expect(fieldAt(steelProject, path)?.label).toBe(label);
  });

  it('has room for three readings', () => expect(READING_COUNT).toBe(3));

  it('keeps every limit in order', () => {
    for (const field of [...FIELDS.measure, ...FIELDS.draw])
      if (field.kind === 'length' || field.kind === 'number') expect(field.min).toBeLessThan(field.max);
  });
});

describe('fieldAt', () => {
  it('has a row for each string of its own compensation, by number and name', () => {
    expect(fieldAt(steelProject, 'compensation.own.s6')).toMatchObject({
      kind: 'length',
      label: 'Compensation, string 6 (E)',
    });
  });

  it('knows only the dimensions of the shape at hand', () => {
    expect(fieldAt(steelProject, 'bridge.outline.parameters.belly')?.label).toBe('Belly, across');
    expect(fieldAt(steelProject, 'bridge.outline.parameters.block')).toBeNull();
  });

  it.each(['', 'instrument', 'strings.0.diameter', 'compensation.own.s9', '__proto__', 'instrument.hand.length'])(
    'has none for "%s"',
    (path) => expect(fieldAt(steelProject, path)).toBeNull(),
  );
});
