import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { allFields } from '../../../src/core/document/fieldAt';
import { fieldValue, withFieldValue } from '../../../src/core/document/fieldValue';
import type { Project } from '../../../src/core/document/types';
import { valueFor } from '../derive/randomProject';
import { steelProject, steelWith } from './steelProject';

const reading = (n: number) => `instrument.scale.readings.${n}`;
const scaleOf = (project: Project) => project.instrument.scale;

describe('fieldValue and withFieldValue', () => {
  const fields = allFields(steelProject).filter(({ path }) => !path.startsWith(reading(1).slice(0, -1)));

  it('give back what was put in, and leave the project before as it was', () => {
    const before = JSON.stringify(steelProject);
    fc.assert(
      fc.property(
        fc.constantFrom(...fields).chain((field) => fc.tuple(fc.constant(field), valueFor(field))),
        ([field, value]) => {
          const changed = withFieldValue(steelProject, field.path, value);
          expect(fieldValue(changed, field.path)).toBe(value);
          // Every other field keeps its value.
          for (const other of fields)
            if (other.path !== field.path && other.path !== 'instrument.spread.from')
              expect(fieldValue(changed, other.path)).toBe(fieldValue(steelProject, other.path));
        },
      ),
      { seed: 11, numRuns: 300 },
    );
    expect(JSON.stringify(steelProject)).toBe(before);
  });

  it('keep the groups that did not change', () => {
    const changed = withFieldValue(steelProject, 'bridge.slot.width', 2.5);
    expect(changed.instrument).toBe(steelProject.instrument);
    expect(changed.bridge.pins).toBe(steelProject.bridge.pins);
    expect(changed.bridge.slot).toEqual({ ...steelProject.bridge.slot, width: 2.5 });
  });

  it('find nothing where there is nothing', () => {
    const bare = steelWith({ bridge: { pins: null } });
    expect(fieldValue(bare, 'bridge.pins.spread')).toBeNull();
    expect(fieldValue(bare, 'bridge.pins.spread.more')).toBeNull();
    expect(fieldValue(bare, reading(0))).toBeNull();
    expect(fieldValue(bare, '__proto__.toString')).toBeNull();
    expect(fieldValue(bare, 'instrument')).toBeNull();
    expect(() => withFieldValue(bare, 'bridge.pins.spread', 50)).toThrow(RangeError);
  });
});

describe('readings of nut to 12th fret', () => {
  const one = withFieldValue(steelProject, reading(0), 322.4);
  const three = withFieldValue(withFieldValue(one, reading(1), 322.5), reading(2), 322.6);

  it('count as soon as one is typed', () => {
    expect(scaleOf(one)).toEqual({ from: 'readings', entered: 645, readings: [{ fret: 12, value: 322.4 }] });
    expect([0, 1, 2].map((n) => fieldValue(three, reading(n)))).toEqual([322.4, 322.5, 322.6]);
  });

  it('are set aside, not lost, when a scale length is typed', () => {
    const typed = withFieldValue(three, 'instrument.scale.entered', 650);
    expect(scaleOf(typed)).toMatchObject({ from: 'entered', entered: 650 });
    expect(scaleOf(typed).readings).toHaveLength(3);
    expect(scaleOf(withFieldValue(typed, reading(1), 325)).from).toBe('readings');
  });

  it('close up when one is cleared, and the entered scale counts when the last goes', () => {
    const two = withFieldValue(three, reading(1), null);
    expect([0, 1, 2].map((n) => fieldValue(two, reading(n)))).toEqual([322.4, 322.6, null]);
    expect(scaleOf(two).from).toBe('readings');
    const none = withFieldValue(withFieldValue(two, reading(1), null), reading(0), null);
    expect(scaleOf(none)).toEqual({ from: 'entered', entered: 645, readings: [] });
  });

  it('never leave a gap: typed in the third box, the first reading is the first', () => {
    expect(scaleOf(withFieldValue(steelProject, reading(2), 320)).readings).toEqual([{ fret: 12, value: 320 }]);
  });
});

it('typing a spacing makes it the own one', () => {
  const edges = steelWith({ instrument: { spread: { from: 'edges', own: 54 } } });
  expect(withFieldValue(edges, 'instrument.spread.own', 56).instrument.spread).toEqual({ from: 'own', own: 56 });
});
