import { describe, expect, it } from 'vitest';
import type { ImportedOutlines } from '../../../src/core/ports';
import { readOutlines } from '../../../src/importers/readOutlines';
import { scaleChoices } from '../../../src/ui/import/scaleChoices';

const read = (head: string, width: number): ImportedOutlines => {
  const text = `<svg xmlns="http://www.w3.org/2000/svg" ${head}><rect width="${width}" height="100"/></svg>`;
  const result = readOutlines('drawing', text, { by: 'file' });
  if (!result.ok) throw new Error(result.issues[0]?.message);
  return result.value;
};

const shown = (found: ImportedOutlines): (readonly [string, string])[] =>
  scaleChoices(found).map(({ id, size }) => [id, size === null ? '' : size.across.toFixed(1)]);

describe('scaleChoices', () => {
  it('shows what each number of pixels to an inch leads to', () => {
    // 850.39 × 25.4 / 72 = 300.0, / 90 = 240.0, / 96 = 225.0.
    expect(shown(read('width="850.39px" height="200px" viewBox="0 0 850.39 200"', 850.39))).toEqual([
      ['dpi-72', '300.0'],
      ['dpi-90', '240.0'],
      ['dpi-96', '225.0'],
      ['length', ''],
    ]);
  });

  it('takes the size of the file, or one that is known better', () => {
    expect(shown(read('width="150mm" viewBox="0 0 300 200"', 300))).toEqual([
      ['file', '150.0'],
      ['length', ''],
    ]);
  });

  it('asks for a length first where a file fits any size', () => {
    expect(shown(read('viewBox="0 0 300 200"', 150))).toEqual([
      ['length', ''],
      ['unit-mm', '150.0'],
      ['unit-cm', '1500.0'],
      ['unit-in', '3810.0'],
    ]);
  });
});
