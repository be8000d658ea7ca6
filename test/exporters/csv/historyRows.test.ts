import { describe, expect, it } from 'vitest';
import { newBuild } from '../../../src/core/document/newBuild';
import type { Project } from '../../../src/core/document/types';
import { demoProject } from '../../../src/core/kinds/demo';
import { historyRows } from '../../../src/exporters/csv/historyRows';
import { CSV_STYLES, makeCsv } from '../../../src/exporters/csv/makeCsv';
import { csvRecords } from './csvRecords';

const model = demoProject('model', '2026-03-01T09:00:00.000Z');
const [first] = model.strings;
const id = first?.id ?? '';

/** An instrument that was read twice: once taped, once strung. */
const instrument: Project = {
  ...model,
  about: { ...model.about, name: 'Wren 14' },
  build: {
    ...newBuild(),
    serial: 'No. 7',
    rounds: [
      {
        id: 'r1',
        at: '2026-03-01T10:15:00.000Z',
        stage: 'taped',
        readings: [{ id: 'a', line: 'twelfth-slot-treble', value: 317.5, tool: 'steel rule', sigma: 0.127 }],
        accepted: true,
      },
    ],
    stringUps: [
      {
        id: 's1',
        at: '2026-03-09T17:00:00.000Z',
        stage: 'first',
        crown: 'straight',
        tuner: 0.5,
        cents: { [id]: { 12: -1.25 }, gone: { 12: 3 } },
        action: { treble: 1.905, bass: null },
        relief: null,
        humidity: 45,
        meter: '=shop meter',
        note: 'dry, "new" strings',
        predicted: { [id]: 2.54 },
        stood: {},
      },
    ],
  },
};

const read = (projects: readonly Project[], unit: 'mm' | 'in') => {
  const text = makeCsv(historyRows(projects, unit), CSV_STYLES.comma);
  const [head = [], ...rows] = csvRecords(text, ',');
  // Only what is filled, by its header.
  return rows.map((row) =>
    Object.fromEntries(row.map((cell, at) => [head[at] ?? '', cell] as const).filter(([, cell]) => cell !== '')),
  );
};

const PLACE = { instrument: 'Wren 14', number: 'No. 7', what: 'place', 'taken (UTC)': '2026-03-01T10:15:00.000Z' };
const STRUNG = {
  instrument: 'Wren 14',
  number: 'No. 7',
  what: 'string-up',
  'taken (UTC)': '2026-03-09T17:00:00.000Z',
  stage: 'first',
  crown: 'straight',
  note: 'dry, "new" strings',
};

describe('historyRows', () => {
  it('has a row a figure, with its unit in the header', () => {
    expect(read([model, instrument], 'mm')).toEqual([
      {
        ...PLACE,
        stage: 'taped',
        figure: 'twelfth-slot-treble',
        'length (mm)': '317.500',
        'one sigma (mm)': '0.127',
        'read by': 'steel rule',
        'place accepted': 'yes',
      },
      {
        ...STRUNG,
        figure: 'pitch',
        string: first?.name,
        fret: '12',
        'pitch, + sharp (cents)': '-1.250',
        '± of the tuner, 19 of 20 (cents)': '0.500',
      },
      // A string that was taken off the project since keeps the name that it is known by.
      {
        ...STRUNG,
        figure: 'pitch',
        string: 'gone',
        fret: '12',
        'pitch, + sharp (cents)': '3.000',
        '± of the tuner, 19 of 20 (cents)': '0.500',
      },
      { ...STRUNG, figure: 'action, treble', 'length (mm)': '1.905' },
      // What a spreadsheet would compute is told apart by an apostrophe, as in every table.
      { ...STRUNG, figure: 'humidity', 'relative (%)': '45.0', 'read by': "'=shop meter" },
      { ...STRUNG, figure: 'setback as planned', string: first?.name, 'length (mm)': '2.540' },
    ]);
  });

  it('gives inches where they are asked for: 25.4 mm each', () => {
    const rows = read([instrument], 'in');
    expect(rows[0]).toMatchObject({ 'length (in)': '12.5000', 'one sigma (in)': '0.0050' });
    expect(rows.at(-1)).toMatchObject({ 'length (in)': '0.1000' });
  });

  it('has no rows for models', () => {
    expect(read([model], 'mm')).toEqual([]);
  });
});
