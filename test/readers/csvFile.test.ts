import { execFileSync } from 'node:child_process';
import { writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { createDerive } from '../../src/core/derive/createDerive';
import { CSV_STYLES, makeCsv } from '../../src/exporters/csv/makeCsv';
import { placementRows } from '../../src/exporters/csv/placementRows';
import { unwrap } from '../exporters/pdf/unwrap';
import { instrumentNamed } from '../readback/makeTemplate';
import { temporaryFolder } from './temporaryFolder';

const script = fileURLToPath(new URL('csv_by_python.py', import.meta.url));

describe("Python's reading of a CSV", () => {
  const { fileNamed } = temporaryFolder();
  const steel = instrumentNamed('steel');
  const odd = { ...steel, about: { ...steel.about, name: '=Wren; "14", Größe\n2' } };

  // 647.778125 is worked by hand in test/reference/templates-steel.ts.
  it.each([
    ['comma', '647.778'],
    ['semicolon', '647.778'],
    ['decimal-comma', '647,778'],
  ] as const)('%s: as many cells in every row, names and figures as they are', (style, figure) => {
    const rows = unwrap(placementRows(odd, createDerive()(odd), { unit: 'mm', date: '2026-11-25' }));
    writeFileSync(fileNamed('one.csv'), makeCsv(rows, CSV_STYLES[style]));
    const { separator } = CSV_STYLES[style];
    const read: readonly (readonly string[])[] = JSON.parse(
      execFileSync('/usr/bin/python3', [script, fileNamed('one.csv'), separator], { encoding: 'utf8' }),
    );
    const [header = [], first = []] = read;
    expect(new Set(read.map(({ length }) => length))).toEqual(new Set([14]));
    expect(header[2]).toBe('from nut (mm)');
    expect([first[1], first[2]]).toEqual(['Break point, centre', figure]);
    expect(first[header.indexOf('instrument')]).toBe(`'=Wren; "14", Größe\n2`);
  });
});
