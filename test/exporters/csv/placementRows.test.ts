import { describe, expect, it } from 'vitest';
import { createDerive } from '../../../src/core/derive/createDerive';
import type { Project } from '../../../src/core/document/types';
import { CSV_STYLES, makeCsv } from '../../../src/exporters/csv/makeCsv';
import { placementRows } from '../../../src/exporters/csv/placementRows';
import { instrumentNamed } from '../../readback/makeTemplate';
import { unwrap } from '../pdf/unwrap';
import { handedProject } from '../wholeDrawing';
import { csvRecords } from './csvRecords';

const recordsOf = (project: Project, unit: 'mm' | 'in' = 'mm'): readonly Readonly<Record<string, string>>[] => {
  const rows = unwrap(placementRows(project, createDerive()(project), { unit, date: '2026-11-25' }));
  const [header = [], ...records] = csvRecords(makeCsv(rows, CSV_STYLES.comma), ',');
  for (const record of records) expect(record).toHaveLength(header.length);
  return records.map((record) => Object.fromEntries(header.map((name, index) => [name, record[index] ?? ''])));
};
const find = (records: ReturnType<typeof recordsOf>, figure: string) => {
  const found = records.find((record) => record.figure === figure);
  if (found === undefined) throw new Error(`there is no row ${figure}`);
  return found;
};

/** Six-string steel, scale 645, right hand: the figures worked by hand in test/reference/templates-steel.ts. */
const STEEL = instrumentNamed('steel');

describe('the placement numbers as a table', () => {
  it('are those worked by hand, each from each datum, units in the header', () => {
    const records = recordsOf(STEEL);
    expect(find(records, 'Break point, centre')).toMatchObject({
      group: 'placement',
      'from nut (mm)': '647.778',
      'from 12th fret (mm)': '325.278',
      'from nut face (mm)': '',
    });
    expect(find(records, 'Slot front, centre')['from nut (mm)']).toBe('646.177');
    expect(find(records, 'Bridge front, centre')['from nut (mm)']).toBe('638.777');
    expect(find(records, 'Pin row, centre')['from nut (mm)']).toBe('658.880');
    expect(find(records, 'Square line')).toMatchObject({
      'from nut (mm)': '620.000',
      'from 12th fret (mm)': '297.500',
    });
    // atan 0.0440972 = 2.52496°.
    expect(find(records, 'Slant, + bass farther back')['angle (degrees)']).toBe('2.525');
  });

  it('are in inches where the maker works in inches', () => {
    const records = recordsOf(STEEL, 'in');
    // 647.778125 / 25.4 = 25.503076, and the square line at 24 1/2.
    expect(find(records, 'Break point, centre')['from nut (in)']).toBe('25.5031');
    expect(find(records, 'Square line')['from nut (in)']).toBe('24.5000');
  });

  it('hold the pins, toward the treble side for either hand', () => {
    for (const hand of ['right', 'left'] as const) {
      const records = recordsOf(handedProject(STEEL, hand));
      const pins = records.filter(({ group, figure }) => group === 'hole' && figure?.startsWith('pin '));
      // Every 11.1 along the slant, cos = 1/1.00097181: 27.75 along is 27.72306 across.
      expect(pins.map((pin) => pin['from centreline, + treble (mm)'])).toEqual([
        '27.723',
        '16.634',
        '5.545',
        '-5.545',
        '-16.634',
        '-27.723',
      ]);
      expect(new Set(records.map((record) => record.hand))).toEqual(new Set([hand]));
    }
  });

  it('say of each row whose it is, with an ISO date', () => {
    for (const record of recordsOf({ ...STEEL, about: { ...STEEL.about, name: '=Wren, "14"' } })) {
      expect(record.instrument).toBe(`'=Wren, "14"`);
      expect(record.date).toBe('2026-11-25');
      expect(record.datum).toBe('front face of the nut');
    }
  });

  it('are refused with the reason where they could not be computed', () => {
    const { outline } = STEEL.bridge;
    if (outline.kind === 'drawn') throw new Error('expected a shape');
    const corner = { ...outline, parameters: { ...outline.parameters, corner: 999 } };
    const broken: Project = { ...STEEL, bridge: { ...STEEL.bridge, outline: corner } };
    const rows = placementRows(broken, createDerive()(broken), { unit: 'mm', date: '2026-11-25' });
    expect(rows.ok).toBe(false);
    expect(rows.ok ? [] : rows.issues.length).toBeGreaterThan(0);
  });
});
