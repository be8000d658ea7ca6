import { describe, expect, it } from 'vitest';
import { allFields, fieldAt } from '../../../src/core/document/fieldAt';
import { FIELDS } from '../../../src/core/document/fieldTable';
import { READING_COUNT } from '../../../src/core/document/instrumentFields';
import { SHAPE_PARAMETERS, usualParameters } from '../../../src/core/document/shapeParameters';
import { validateField } from '../../../src/core/document/validateField';
import { KINDS } from '../../../src/core/kinds/kinds';
import { plainStrings, steelProject, steelWith } from './steelProject';

/** Leaves of a project that no row edits, and why. */
const WITHOUT_ROW = [
  /^(format|version|id|revision)$/, // kept by the program
  /^about\.(created|changed|notes|parent|pictures)$/, // kept by the program, or not figures
  /^instrument\.scale\.from$/, // follows what was typed last
  /^instrument\.scale\.readings\.\d+\.(fret|value)$/, // their rows go by the fret, see below
  /^strings\.\d+\.(id|course|wound)$/, // commands of their own
  /^bridge\.ties\.kind$/, // a command of its own
  /^strings\.\d+\.elastic\.(kind|at\.scaleLength|at\.frequency)$/, // a command of its own
  // Ticked, not typed.
  /^sheets\.chosen\.\d+$/,
];

/** Groups that hold null while nothing was said of them. */
const NULL_GROUPS = [
  'body',
  'repair',
  'build',
  'compensation.learned',
  'bridge.pins',
  'bridge.pins.ramp',
  'bridge.ties',
  'bridge.cutting',
  'bridge.sole',
  'bridge.locating.points',
];

const leaves = (value: unknown, path: string): readonly string[] =>
  typeof value === 'object' && value !== null
    ? Object.entries(value).flatMap(([key, child]) => leaves(child, path === '' ? key : `${path}.${key}`))
    : [path];

const readings = [
  { fret: 5, value: 162 },
  { fret: 12, value: 322.5 },
  { fret: 12, value: 322.6 },
];
const read = { from: 'readings' as const, entered: 645, readings };
/** Every doubt and limit that a maker can set, copied by hand from what the model, the heights and the audit take. */
const DOUBTS = 'action nutHeight relief fingerDistance pushDown coreDiameter modulus massPerLength kappa b0'.split(' ');
const HEIGHT_LIMITS =
  'airspaceLeast airspaceMost proudLeast proudMost thicknessLeast thicknessMost woodUnder share shareAim breakDeg'.split(
    ' ',
  );
const AUDIT_LIMITS = 'leaveCents centsAgree land recutMost wallAroundSlot wallAroundPins pinAside'.split(' ');
const WALL_LIMITS = 'wallBetweenHoles wallAroundLocating wallAroundTies stringPastHole symmetry pinAsideTwoRows'.split(
  ' ',
);
const atOne = (names: readonly string[]) => Object.fromEntries(names.map((name) => [name, 1]));
const projects = [
  ...KINDS.map(({ make }) => make('p', '2026-01-01T00:00:00Z')),
  {
    ...steelWith({ instrument: { scale: read, widths: { nut: 46, twelfth: 57, last: 60 }, boardRadius: 400 } }),
    doubts: atOne(DOUBTS),
    limits: atOne([...HEIGHT_LIMITS, ...AUDIT_LIMITS, ...WALL_LIMITS]),
  },
  steelWith({ compensation: { own: { s1: 1.5 } } }),
  steelWith({
    bridge: {
      pins: steelProject.bridge.pins && { ...steelProject.bridge.pins, ramp: { length: 5, width: 2 } },
      cutting: { cutter: 3.175, base: 76.2 },
      locating: {
        ...steelProject.bridge.locating,
        site: 'free',
        points: { treble: { x: 60, y: 12 }, bass: { x: -60, y: 12 } },
      },
    },
  }),
  steelWith({ bridge: { pins: null, ties: { kind: 'tie-block', from: 3, spread: 54, hole: 1.8, rise: 6 } } }),
];

describe('the field table', () => {
  it.each(projects.map((project) => [project.about.name, project] as const))(
    'has a row for every figure and choice of %s',
    (_, project) => {
      const paths = new Set(allFields(project).map(({ path }) => path));
      const without = leaves(project, '').filter((leaf) => {
        return !paths.has(leaf) && !WITHOUT_ROW.some((pattern) => pattern.test(leaf));
      });
      expect(without.filter((leaf) => !NULL_GROUPS.includes(leaf))).toEqual([]);
    },
  );

  it('has rows for readings to any fret', () => {
    const paths = allFields(steelWith({ instrument: { scale: read } })).map(({ path }) => path);
    for (const place of ['5.0', '12.0', '12.1', '12.4']) expect(paths).toContain(`instrument.scale.readings.${place}`);
    expect(paths).not.toContain('instrument.scale.readings.5.1');
    expect(fieldAt(steelProject, 'instrument.scale.readings.7.2')?.label).toBe('Nut to 7th fret, 3rd reading');
  });

  it('has no doubt or limit that nothing takes', () => {
    const named = FIELDS.measure.map(({ path }) => path).filter((path) => /^(doubts|limits)\./.test(path));
    expect([...named].sort()).toEqual(
      [
        ...DOUBTS.map((name) => `doubts.${name}`),
        ...[...HEIGHT_LIMITS, ...AUDIT_LIMITS, ...WALL_LIMITS, 'rim', 'holeOff', 'showing'].map(
          (name) => `limits.${name}`,
        ),
      ].sort(),
    );
  });

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
    ['instrument.scale.readings.12.0', 'Nut to 12th fret, 1st reading'],
    ['instrument.scale.readings.12.1', 'Nut to 12th fret, 2nd reading'],
    ['instrument.scale.readings.12.2', 'Nut to 12th fret, 3rd reading'],
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

  it('has room for five readings', () => expect(READING_COUNT).toBe(5));

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

  it('has rows for the figures of a string by its core, or as they were measured', () => {
    expect(fieldAt(steelProject, 'strings.5.elastic.coreDiameter')).toMatchObject({ label: 'Core, string 6' });
    expect(fieldAt(steelProject, 'strings.5.elastic.kappa')).toBeNull();
    const elastic = { kind: 'measured' as const, kappa: 50, b0: 0.002 };
    const measured = { ...steelProject, strings: plainStrings([1, 1, 1]).map((each) => ({ ...each, elastic })) };
    expect(fieldAt(measured, 'strings.2.elastic.kappa')).toMatchObject({ kind: 'number', source: 'a test' });
    expect(fieldAt(measured, 'strings.2.elastic.coreDiameter')).toBeNull();
  });

  it.each([
    '',
    'instrument',
    'strings.6.diameter',
    'strings.0.id',
    'strings.0.elastic.kind',
    'instrument.scale.readings.0.0',
    'instrument.scale.readings.37.0',
    'doubts.nothing',
    'compensation.own.s9',
    '__proto__',
    'instrument.hand.length',
  ])('has none for "%s"', (path) => expect(fieldAt(steelProject, path)).toBeNull());
});
