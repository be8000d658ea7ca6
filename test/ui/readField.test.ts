import { describe, expect, it } from 'vitest';
import type { LengthField, NumberField } from '../../src/core/document/fieldTypes';
import { readField } from '../../src/ui/fields/readField';

const LENGTH: LengthField = { kind: 'length', path: 'a', label: 'A', help: '', min: 0, max: 100 };
const SHARE: NumberField = {
  kind: 'number',
  path: 'b',
  label: 'B',
  help: '',
  min: 0,
  max: 1,
  whole: false,
  scale: 100,
  unit: '%',
};

describe('readField', () => {
  it('reads a length in the unit in use, a comma as a point', () => {
    expect(readField(LENGTH, '0,5', 'mm')).toEqual({ ok: true, value: 0.5 });
    expect(readField(LENGTH, '1/8', 'in')).toEqual({ ok: true, value: 3.175 });
  });

  it('takes an empty box only where none is allowed', () => {
    expect(readField(LENGTH, ' ', 'mm')).toMatchObject({ ok: false, issues: [{ code: 'length.unfinished' }] });
    expect(readField({ ...LENGTH, optional: true }, ' ', 'mm')).toEqual({ ok: true, value: null });
  });

  it('takes no number only where none is allowed', () => {
    expect(readField({ ...SHARE, optional: true }, ' ', 'mm')).toEqual({ ok: true, value: null });
  });

  it.each([
    ['−5', -0.05],
    ['3°', 0.03],
    ['50', 0.5],
    ['50 %', 0.5],
    ['37,5', 0.375],
    ['.5', 0.005],
  ])('reads %s as a share', (text, value) => {
    expect(readField(SHARE, text, 'mm')).toEqual({ ok: true, value });
  });

  it.each([
    ['', 'number.unfinished'],
    ['half', 'number.wrong'],
    ['1e3', 'number.wrong'],
    ['1,2,3', 'number.wrong'],
    ['Infinity', 'number.wrong'],
  ])('refuses "%s" as a number', (text, code) => {
    expect(readField(SHARE, text, 'mm')).toMatchObject({ ok: false, issues: [{ path: 'b', code }] });
  });

  it('takes words without the spaces around them', () => {
    expect(readField({ kind: 'text', path: 'c', label: 'C', help: '', maxLength: 9 }, '  Wren 14 ', 'mm')).toEqual({
      ok: true,
      value: 'Wren 14',
    });
  });
});
