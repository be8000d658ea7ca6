import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { allFields } from '../../../src/core/document/fieldAt';
import { fieldValue, withFieldValue } from '../../../src/core/document/fieldValue';
import type { Project } from '../../../src/core/document/types';
import { valueFor } from '../derive/randomProject';
import { steelProject, steelWith } from './steelProject';

const reading = (n: number, fret = 12) => `instrument.scale.readings.${fret}.${n}`;
const scaleOf = (project: Project) => project.instrument.scale;

describe('fieldValue and withFieldValue', () => {
  const fields = allFields(steelProject).filter(({ path }) => !path.startsWith('instrument.scale.readings.'));

  it('give back what was put in, and leave the project before as it was', () => {
    const before = JSON.stringify(steelProject);
    fc.assert(
      fc.property(
        fc.constantFrom(...fields).chain((field) => fc.tuple(fc.constant(field), valueFor(field))),
        ([field, value]) => {
          const changed = withFieldValue(steelProject, field.path, value);
          expect(fieldValue(changed, field.path)).toBe(value);
          // Every other field keeps its value; a string's sources say that a figure of its own was changed.
          const told = field.path.replace(/^(strings\.\d+)\..*/, '$1.source');
          for (const other of fields)
            if (![field.path, told, 'instrument.spread.from'].includes(other.path))
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

describe('readings to other frets', () => {
  const both = withFieldValue(withFieldValue(steelProject, reading(0), 322.5), reading(0, 5), 161.8);

  it('stand beside those to the 12th, lowest fret first', () => {
    expect(scaleOf(both).readings).toEqual([
      { fret: 5, value: 161.8 },
      { fret: 12, value: 322.5 },
    ]);
    expect([fieldValue(both, reading(0, 5)), fieldValue(both, reading(1, 5)), fieldValue(both, reading(0))]).toEqual([
      161.8,
      null,
      322.5,
    ]);
  });

  it('leave those to the 12th alone when they are cleared', () => {
    expect(scaleOf(withFieldValue(both, reading(0, 5), null))).toMatchObject({
      from: 'readings',
      readings: [{ fret: 12, value: 322.5 }],
    });
  });
});

describe('figures that may be absent', () => {
  it.each(['compensation.own.s2', 'doubts.coreDiameter', 'limits.land'])('%s is gone once it is cleared', (path) => {
    const [last = ''] = path.split('.').slice(-1);
    const set = withFieldValue(steelProject, path, 0.5);
    const { doubts, limits, compensation } = set;
    expect({ ...doubts, ...limits, ...compensation.own }).toEqual({ [last]: 0.5 });
    expect(withFieldValue(set, path, null)).toEqual(steelProject);
    // Clearing what was never set changes nothing, and another figure stays.
    expect(withFieldValue(steelProject, path, null)).toEqual(steelProject);
    const two = withFieldValue(withFieldValue(set, 'compensation.own.s5', 3), path, null);
    expect(two.compensation.own).toEqual({ s5: 3 });
  });

  it('stand empty as null outside of those groups', () => {
    const read = withFieldValue(steelProject, 'height.straightedge', 1.2);
    expect(withFieldValue(read, 'height.straightedge', null).height).toEqual(steelProject.height);
    expect(withFieldValue(steelProject, 'instrument.boardRadius', null).instrument).toHaveProperty('boardRadius', null);
  });
});

it("a string's figure leaves the strings a list, in their order", () => {
  const { strings } = withFieldValue(steelProject, 'strings.0.diameter', 0.33);
  expect(Array.isArray(strings)).toBe(true);
  const source = `figures changed by the maker; before: ${steelProject.strings[0]?.source}`;
  expect(strings).toEqual([{ ...steelProject.strings[0], diameter: 0.33, source }, ...steelProject.strings.slice(1)]);
  const { strings: thicker } = withFieldValue(steelProject, 'strings.5.elastic.coreDiameter', 0.47);
  expect(thicker[5]?.elastic).toEqual({ ...steelProject.strings[5]?.elastic, coreDiameter: 0.47 });
  expect(thicker.slice(0, 5)).toEqual(steelProject.strings.slice(0, 5));
});

it('typing a spacing makes it the own one', () => {
  const edges = steelWith({ instrument: { spread: { from: 'edges', own: 54 } } });
  expect(withFieldValue(edges, 'instrument.spread.own', 56).instrument.spread).toEqual({ from: 'own', own: 56 });
});
