import { describe, expect, it } from 'vitest';
import type { Field } from '../../../src/core/document/fieldTypes';
import type { FieldValue } from '../../../src/core/document/fieldValue';
import { validateField } from '../../../src/core/document/validateField';
import { validateProject } from '../../../src/core/document/validateProject';
import { steelProject, steelWith } from './steelProject';

const base = { path: 'a.b', label: 'Slot width', help: 'Wall to wall.' };
const length: Field = { ...base, kind: 'length', min: 0.8, max: 12 };
const optional: Field = { ...length, optional: true };
const share: Field = { ...base, kind: 'number', min: 0, max: 1, whole: false, scale: 100, unit: '%' };
const fret: Field = { ...base, kind: 'number', min: 8, max: 22, whole: true, scale: 1, unit: '' };
const choice: Field = {
  ...base,
  kind: 'choice',
  choices: [
    { value: 'round', label: 'round' },
    { value: 'square', label: 'square' },
  ],
};
const words: Field = { ...base, kind: 'text', maxLength: 5 };

describe('validateField', () => {
  it.each<[string, Field, FieldValue]>([
    ['the least length', length, 0.8],
    ['the greatest length', length, 12],
    ['an empty optional length', optional, null],
    ['a share', share, 0.5],
    ['a whole number', fret, 14],
    ['a choice', choice, 'square'],
    ['words up to the limit', words, 'fives'],
    ['no words', words, ''],
  ])('takes %s', (_, field, value) => expect(validateField(field, value)).toEqual([]));

  it.each<[string, Field, FieldValue, string]>([
    ['a length too short', length, 0.79, 'field.range'],
    ['a length too long', length, 12.01, 'field.range'],
    ['a length that is no number', length, Number.NaN, 'field.kind'],
    ['an endless length', length, Number.POSITIVE_INFINITY, 'field.kind'],
    ['words for a length', length, '3', 'field.kind'],
    ['an empty length', length, null, 'field.kind'],
    ['a share over 1', share, 1.1, 'field.range'],
    ['half a fret', fret, 12.5, 'field.whole'],
    ['a fret too high', fret, 23, 'field.range'],
    ['nothing for a number', fret, null, 'field.kind'],
    ['another choice', choice, 'oval', 'field.choice'],
    ['a number for a choice', choice, 1, 'field.choice'],
    ['words too long', words, 'sixsix', 'field.long'],
    ['a number for words', words, 5, 'field.kind'],
  ])('refuses %s', (_, field, value, code) => {
    const issues = validateField(field, value);
    expect(issues.map((each) => [each.path, each.code, each.severity])).toEqual([['a.b', code, 'error']]);
    expect(issues[0]?.message).toContain('Slot width');
  });

  it('says what was expected, in the reader’s unit and scale', () => {
    const inches = (mm: number) => `${mm / 25.4}″`;
    expect(validateField({ ...length, min: 25.4, max: 50.8 }, 1, inches)[0]?.message).toBe(
      'Slot width goes from 1″ to 2″.',
    );
    expect(validateField(share, 2)[0]?.message).toBe('Slot width goes from 0 to 100.');
    expect(validateField(choice, 'x')[0]?.message).toBe('Slot width is one of: round, square.');
  });
});

describe('validateProject', () => {
  it('finds nothing wrong with the plain one, with or without pins', () => {
    expect(validateProject(steelProject)).toEqual([]);
    expect(validateProject(steelWith({ bridge: { pins: null } }))).toEqual([]);
  });

  it('finds every value out of its own range, by path', () => {
    const { slot, pins } = steelProject.bridge;
    const issues = validateProject(
      steelWith({
        instrument: { widths: { nut: 19, twelfth: 57, last: null } },
        bridge: { slot: { ...slot, width: 13 }, pins: pins && { ...pins, hole: 0 } },
        compensation: { own: { s2: 16 } },
      }),
    );
    expect(issues.map(({ path }) => path).sort()).toEqual([
      'bridge.pins.hole',
      'bridge.slot.width',
      'compensation.own.s2',
      'instrument.widths.nut',
    ]);
  });

  it('leaves what two fields disagree on alone, so that edits in any order are possible', () => {
    const { slot } = steelProject.bridge;
    expect(validateProject(steelWith({ bridge: { slot: { ...slot, length: 10, width: 12 } } }))).toEqual([]);
  });
});
