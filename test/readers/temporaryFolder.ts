import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll } from 'vitest';
import { makeTemplate, type Wanted } from '../readback/makeTemplate';

/** A folder for the tests of one file, gone after them; answers how to put a template's PDF, or another file, into it. */
export function temporaryFolder() {
  let folder = '';
  beforeAll(() => {
    folder = mkdtempSync(path.join(tmpdir(), 'saddlemark-readers-'));
  });
  afterAll(() => rmSync(folder, { recursive: true, force: true }));
  const fileNamed = (name: string): string => path.join(folder, name);
  const templateFile = (wanted: Wanted): string => {
    const file = fileNamed(`${wanted.instrument}-${wanted.paper}-${wanted.unit}.pdf`);
    writeFileSync(file, makeTemplate(wanted));
    return file;
  };
  return { fileNamed, templateFile };
}
